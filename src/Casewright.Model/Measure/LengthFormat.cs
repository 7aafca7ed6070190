using System.Globalization;

namespace Casewright.Model.Measure;

/// <summary>Prints lengths. A print that had to be rounded begins with ≈; every other print reads back as exactly the same length.</summary>
public static class LengthFormat
{
    private const string RoundedMark = "≈ ";

    /// <summary>Feet, inches and a fraction: <c>9' 10 5/8"</c>.</summary>
    public static string FeetAndInches(Length length, FractionStep step = FractionStep.SixtyFourth) => InchFraction.InFeet(length, step).ToString();

    /// <summary>Inches and a fraction: <c>118 5/8"</c>.</summary>
    public static string Inches(Length length, FractionStep step = FractionStep.SixtyFourth) => InchFraction.InInches(length, step).ToString();

    /// <summary>Decimal inches: <c>118.625"</c>.</summary>
    /// <param name="length">The length.</param>
    /// <param name="places">Most decimals, 0 to 6; trailing zeros are left out.</param>
    public static string DecimalInches(Length length, int places = 4) => Decimals(length, Length.NanometresPerInch, places, "\"");

    /// <summary>Millimetres: <c>3013 mm</c>, <c>18.3 mm</c>.</summary>
    /// <param name="length">The length.</param>
    /// <param name="places">Most decimals, 0 to 6; trailing zeros are left out.</param>
    public static string Millimetres(Length length, int places = 1) => Decimals(length, Length.NanometresPerMillimetre, places, " mm");

    /// <summary>The usual print of a unit system: feet and inches to 1/32, or millimetres to 0.1.</summary>
    public static string Usual(Length length, UnitSystem units) =>
        units == UnitSystem.Inches ? FeetAndInches(length, FractionStep.ThirtySecond) : Millimetres(length);

    /// <summary>
    /// A print that names its unit and is never rounded, for files: <c>118 5/8 in</c>, <c>0.703 in</c> or <c>3013 mm</c>.
    /// Inches are used where a fraction down to 1/64 or four decimals hold the length; else millimetres, which always do.
    /// </summary>
    public static string Exact(Length length, UnitSystem units)
    {
        if (units == UnitSystem.Inches && InchFraction.InInches(length, FractionStep.SixtyFourth) is { Rounded: false } fraction)
            return fraction.ToString().TrimEnd('"') + " in";
        if (units == UnitSystem.Inches && length.Nanometres % (Length.NanometresPerInch / 10_000) == 0)
            return length.Inches.ToString("0.####", CultureInfo.InvariantCulture) + " in";
        return length.ToString();
    }

    private static string Decimals(Length length, long unit, int places, string mark)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(places);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(places, 6);
        var value = length.Nanometres / (decimal)unit;
        var rounded = decimal.Round(value, places, MidpointRounding.AwayFromZero);
        var text = rounded.ToString("0.######", CultureInfo.InvariantCulture) + mark;
        return rounded * unit == length.Nanometres ? text : RoundedMark + text;
    }
}
