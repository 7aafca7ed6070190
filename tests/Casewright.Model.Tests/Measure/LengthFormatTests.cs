using Casewright.Model.Measure;

namespace Casewright.Model.Tests.Measure;

public sealed class LengthFormatTests
{
    private static Length Inches(long whole, long numerator = 0, long denominator = 1) => Length.FromInches(whole, numerator, denominator);

    [Fact]
    public void Feet_and_inches_are_printed_as_on_a_drawing()
    {
        Assert.Equal("9' 10 5/8\"", LengthFormat.FeetAndInches(Inches(118, 5, 8)));
        Assert.Equal("9' 0\"", LengthFormat.FeetAndInches(Inches(108)));
        Assert.Equal("9' 1/2\"", LengthFormat.FeetAndInches(Inches(108, 1, 2)));
        Assert.Equal("11 63/64\"", LengthFormat.FeetAndInches(Inches(11, 63, 64)));
        Assert.Equal("1' 0\"", LengthFormat.FeetAndInches(Inches(12)));
        Assert.Equal("5/8\"", LengthFormat.FeetAndInches(Inches(0, 5, 8)));
        Assert.Equal("0\"", LengthFormat.FeetAndInches(Length.Zero));
        Assert.Equal("-9' 10 5/8\"", LengthFormat.FeetAndInches(-Inches(118, 5, 8)));
    }

    [Fact]
    public void Inches_only_and_decimals()
    {
        Assert.Equal("118 5/8\"", LengthFormat.Inches(Inches(118, 5, 8)));
        Assert.Equal("118.625\"", LengthFormat.DecimalInches(Inches(118, 5, 8)));
        Assert.Equal("-0.5\"", LengthFormat.DecimalInches(-Inches(0, 1, 2)));
        Assert.Equal("≈ 0.0156\"", LengthFormat.DecimalInches(Inches(0, 1, 64))); // 1/64 = 0.015625
        Assert.Equal("0.015625\"", LengthFormat.DecimalInches(Inches(0, 1, 64), 6));
    }

    [Fact]
    public void Millimetres_to_a_tenth()
    {
        Assert.Equal("3013 mm", LengthFormat.Millimetres(Length.FromMillimetres(3013)));
        Assert.Equal("18.3 mm", LengthFormat.Millimetres(Length.FromMillimetres(18.3m)));
        Assert.Equal("≈ 3013.1 mm", LengthFormat.Millimetres(Inches(118, 5, 8))); // 3013.075
        Assert.Equal("3013.075 mm", LengthFormat.Millimetres(Inches(118, 5, 8), 3));
        Assert.Equal("≈ 0 mm", LengthFormat.Millimetres(Length.FromMillimetres(-0.04m)));
    }

    [Fact]
    public void A_rounded_print_is_marked_and_rounds_halves_away_from_zero()
    {
        // 32.5/32 in lies half way between 1 and 1 1/32.
        Assert.Equal("≈ 1 1/32\"", LengthFormat.Inches(Inches(1, 1, 64), FractionStep.ThirtySecond));
        Assert.Equal("≈ -1 1/32\"", LengthFormat.Inches(-Inches(1, 1, 64), FractionStep.ThirtySecond));
        Assert.Equal("≈ 1' 0\"", LengthFormat.FeetAndInches(Inches(11, 63, 64), FractionStep.Sixteenth));
        Assert.Equal("≈ 23/32\"", LengthFormat.Inches(Length.FromMillimetres(18.3m), FractionStep.ThirtySecond)); // 18.3 / 25.4 × 32 = 23.06
        Assert.Equal("≈ 0\"", LengthFormat.Inches(Length.FromMillimetres(-0.1m), FractionStep.Sixteenth));
    }

    [Fact]
    public void The_parts_of_a_fraction_are_there_for_setting_it()
    {
        Assert.Equal(new InchFraction(false, 9, 10, 5, 8, false), InchFraction.InFeet(Inches(118, 5, 8), FractionStep.SixtyFourth));
        Assert.Equal(new InchFraction(false, null, 118, 5, 8, false), InchFraction.InInches(Inches(118, 5, 8), FractionStep.SixtyFourth));
        Assert.Equal(new InchFraction(true, null, 0, 1, 64, false), InchFraction.InInches(-Inches(0, 1, 64), FractionStep.SixtyFourth));
        Assert.Equal(new InchFraction(false, null, 3, 0, 1, false), InchFraction.InInches(Inches(3), FractionStep.SixtyFourth));
    }

    [Fact]
    public void Files_name_the_unit_and_are_never_rounded()
    {
        Assert.Equal("118 5/8 in", LengthFormat.Exact(Inches(118, 5, 8), UnitSystem.Inches));
        Assert.Equal("0.703 in", LengthFormat.Exact(Length.FromInches(0.703m), UnitSystem.Inches));
        Assert.Equal("3 mm", LengthFormat.Exact(Length.FromMillimetres(3), UnitSystem.Inches));
        Assert.Equal("3013.075 mm", LengthFormat.Exact(Inches(118, 5, 8), UnitSystem.Millimetres));
        Assert.Equal("0 in", LengthFormat.Exact(Length.Zero, UnitSystem.Inches));
        Assert.Equal("0.000001 mm", LengthFormat.Exact(Length.FromNanometres(1), UnitSystem.Inches));
    }

    [Fact]
    public void The_largest_lengths_are_printed_too()
    {
        foreach (var nanometres in new[] { long.MaxValue, long.MinValue })
        {
            var length = Length.FromNanometres(nanometres);
            Assert.NotEmpty(LengthFormat.FeetAndInches(length));
            Assert.NotEmpty(LengthFormat.Millimetres(length));
            Assert.NotEmpty(LengthFormat.Exact(length, UnitSystem.Inches));
        }
    }
}
