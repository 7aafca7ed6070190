using System.Globalization;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout;

/// <summary>Lengths in messages.</summary>
internal static class LengthText
{
    /// <summary>Decimal inches or millimetres.</summary>
    public static string Usual(Length length, UnitSystem units) => units == UnitSystem.Inches
        ? length.Inches.ToString("0.####", CultureInfo.InvariantCulture) + " in"
        : length.Millimetres.ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
