using System.Globalization;
using System.Text;

namespace Casewright.Model.Measure;

/// <summary>A length in feet, inches and a binary fraction in lowest terms, taken apart so that papers can set a real fraction.</summary>
/// <param name="Negative">Whether the length is below zero.</param>
/// <param name="Feet">Whole feet, not negative; null when the length is given in inches only.</param>
/// <param name="Inches">Whole inches left, not negative; below 12 when there are feet.</param>
/// <param name="Numerator">Above the line; 0 when there is no fraction.</param>
/// <param name="Denominator">Below the line: 1 without a fraction, else 2, 4, 8, 16, 32 or 64.</param>
/// <param name="Rounded">Whether the length was rounded to get here.</param>
public readonly record struct InchFraction(bool Negative, long? Feet, long Inches, int Numerator, int Denominator, bool Rounded)
{
    /// <summary>The length in feet and inches, rounded to the step where it must be; halves go away from zero. Below one foot, feet are left out.</summary>
    public static InchFraction InFeet(Length length, FractionStep step)
    {
        var inches = InInches(length, step);
        return inches.Inches < 12 ? inches : inches with { Feet = inches.Inches / 12, Inches = inches.Inches % 12 };
    }

    /// <summary>The length in inches only, rounded to the step where it must be; halves go away from zero.</summary>
    public static InchFraction InInches(Length length, FractionStep step)
    {
        var denominator = (int)step;
        var unit = Length.NanometresPerInch / denominator;
        var magnitude = Int128.Abs(length.Nanometres);
        var steps = (long)(((magnitude * 2) + unit) / ((Int128)unit * 2));
        var rounded = magnitude != (Int128)steps * unit;
        var numerator = (int)(steps % denominator);
        var common = numerator == 0 ? denominator : 1 << int.TrailingZeroCount(numerator);
        return new(length.Nanometres < 0 && steps > 0, null, steps / denominator, numerator / common, denominator / common, rounded);
    }

    /// <summary>The length as text, such as <c>9' 10 5/8"</c>, with ≈ before it when it was rounded. What is not rounded reads back exactly.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        if (Rounded)
            text.Append("≈ ");
        if (Negative)
            text.Append('-');
        if (Feet is { } feet)
            text.Append(feet.ToString(CultureInfo.InvariantCulture)).Append("' ");
        if (Inches > 0 || Numerator == 0)
            text.Append(Inches.ToString(CultureInfo.InvariantCulture));
        if (Numerator > 0)
            text.Append(Inches > 0 ? " " : "").Append(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
        return text.Append('"').ToString();
    }
}
