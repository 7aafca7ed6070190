using System.Globalization;
using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing;

/// <summary>Prints measures and counts for problems and findings.</summary>
internal static class Words
{
    /// <summary>A length as the job's unit system prints it.</summary>
    public static string Of(Length length, UnitSystem units) => LengthFormat.Usual(length, units);

    /// <summary>A printer for the unit of the job.</summary>
    public static Func<Length, string> In(UnitSystem units) => length => Of(length, units);

    /// <summary>The first name and how many more there are: "left side, case 3 and 11 alike".</summary>
    public static string Alike(string first, int count) =>
        count <= 1 ? first : string.Create(CultureInfo.InvariantCulture, $"{first} and {count - 1} alike");
}
