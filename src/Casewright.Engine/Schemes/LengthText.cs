using Casewright.Model.Measure;

namespace Casewright.Engine.Schemes;

/// <summary>Lengths in the words of schemes and nudges: inches with a fraction, to 1/32, or millimetres, to 0.1.</summary>
internal static class LengthText
{
    public static string Of(Length length, UnitSystem units) => units == UnitSystem.Inches
        ? LengthFormat.Exact(length.RoundTo(Length.FromInches(0, 1, 32)), units)
        : LengthFormat.Millimetres(length);
}
