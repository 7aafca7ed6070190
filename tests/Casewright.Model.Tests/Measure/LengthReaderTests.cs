using Casewright.Model.Measure;

namespace Casewright.Model.Tests.Measure;

/// <summary>
/// Values are worked by hand from the international inch, 25.4 mm exactly (yard and pound agreement of 1959; NIST Handbook 44,
/// appendix C: 1 in = 25.4 mm, 1 ft = 304.8 mm), so 5/8 in = 15.875 mm and 1/64 in = 0.396875 mm.
/// </summary>
public sealed class LengthReaderTests
{
    [Theory]
    // 118.625 in × 25.4 = 3013.075 mm
    [InlineData("118 5/8", 3013.075)]
    [InlineData("118 5/8 in", 3013.075)]
    [InlineData("118 5/8\"", 3013.075)]
    [InlineData("118-5/8\"", 3013.075)]
    [InlineData("118.625 in", 3013.075)]
    [InlineData("118.625", 3013.075)]
    [InlineData("9' 10 5/8\"", 3013.075)]
    [InlineData("9'10 5/8", 3013.075)]
    [InlineData("9'-10 5/8\"", 3013.075)]
    [InlineData("9' - 10 5/8\"", 3013.075)]
    [InlineData("9 ft 10 5/8 in", 3013.075)]
    [InlineData("9ft10.625in", 3013.075)]
    [InlineData("9 feet 10⅝ inches", 3013.075)]
    [InlineData("9′ 10⅝″", 3013.075)]
    [InlineData("9’ 10 5⁄8”", 3013.075)]
    [InlineData("9\u00A0ft\u00A010\u00A05/8\u202Fin", 3013.075)]
    [InlineData("  9'  10 5 / 8 \"  ", 3013.075)]
    [InlineData("9' 10 5/8''", 3013.075)]
    [InlineData("10''", 254.0)]
    [InlineData("9 ft 10 in", 2997.2)] // 118 in
    [InlineData("9'", 2743.2)]
    [InlineData("9 ft.", 2743.2)]
    [InlineData("9.5 ft", 2895.6)] // 114 in
    [InlineData("9 1/2 ft", 2895.6)]
    [InlineData("1/3 ft", 101.6)] // 4 in, exact though a third
    [InlineData("½", 12.7)]
    [InlineData("¾ in", 19.05)]
    [InlineData("2½", 63.5)]
    [InlineData("2 ½ inch", 63.5)]
    [InlineData("2-½", 63.5)]
    [InlineData("9/8 in", 28.575)]
    [InlineData("1/64", 0.396875)]
    [InlineData(".5 in", 12.7)]
    [InlineData("0", 0.0)]
    [InlineData("0 mm", 0.0)]
    [InlineData("-0 in", 0.0)]
    [InlineData("-1/2 in", -12.7)]
    [InlineData("−9' 6\"", -2895.6)]
    [InlineData("- 3 mm", -3.0)]
    [InlineData("3013 mm", 3013.0)]
    [InlineData("3013MM", 3013.0)]
    [InlineData("3.013 m", 3013.0)]
    [InlineData("3,013 m", 3013.0)]
    [InlineData("301.3 cm", 3013.0)]
    [InlineData("301,3 cm", 3013.0)]
    [InlineData("17,8 mm", 17.8)]
    [InlineData("0,703 in", 17.8562)]
    [InlineData("0.703 in", 17.8562)]
    [InlineData("2440 millimetres", 2440.0)]
    [InlineData("2.44 meters", 2440.0)]
    [InlineData("12 1/2 mm", 12.5)]
    public void Reads_what_people_write_in_a_job_in_inches(string text, double millimetres)
    {
        var reading = LengthReader.Read(text, UnitSystem.Inches);
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), reading.Value);
        Assert.Null(reading.Refusal);
    }

    [Theory]
    [InlineData("2440", 2440.0)]
    [InlineData("17.8", 17.8)]
    [InlineData("17,8", 17.8)]
    [InlineData("3/4 in", 19.05)]
    [InlineData("8'", 2438.4)]
    [InlineData("96\"", 2438.4)]
    public void Reads_bare_numbers_in_the_unit_of_the_job(string text, double millimetres)
    {
        var reading = LengthReader.Read(text, UnitSystem.Millimetres);
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), reading.Value);
        Assert.Equal(text.Any(c => !char.IsAsciiDigit(c) && c is not '.' and not ','), reading.HasUnit);
    }

    [Theory]
    [InlineData("118 5/8", LengthRefusalKind.Ambiguous)] // in millimetres, a bare fraction most likely means inches
    [InlineData("½", LengthRefusalKind.Ambiguous)]
    [InlineData("1,234", LengthRefusalKind.Ambiguous)]
    [InlineData("2,440 mm", LengthRefusalKind.Ambiguous)]
    [InlineData("1/3 in", LengthRefusalKind.NotExact)]
    [InlineData("⅓ in", LengthRefusalKind.NotExact)]
    [InlineData("0.0000001 in", LengthRefusalKind.NotExact)]
    [InlineData("0.0000001 mm", LengthRefusalKind.NotExact)]
    [InlineData("999999999999 m", LengthRefusalKind.OutOfRange)]
    [InlineData("", LengthRefusalKind.NotALength)]
    [InlineData("   ", LengthRefusalKind.NotALength)]
    [InlineData("in", LengthRefusalKind.NotALength)]
    [InlineData("12 inn", LengthRefusalKind.NotALength)]
    [InlineData("12 yd", LengthRefusalKind.NotALength)]
    [InlineData("12 5/0 in", LengthRefusalKind.NotALength)]
    [InlineData("12 9/8 in", LengthRefusalKind.NotALength)]
    [InlineData("9' 14\"", LengthRefusalKind.NotALength)]
    [InlineData("9.5' 3\"", LengthRefusalKind.NotALength)]
    [InlineData("2 440 mm", LengthRefusalKind.NotALength)]
    [InlineData("1,234.5 mm", LengthRefusalKind.NotALength)]
    [InlineData("1 m 20 cm", LengthRefusalKind.NotALength)]
    [InlineData("12 + 3 mm", LengthRefusalKind.NotALength)]
    [InlineData("+12 mm", LengthRefusalKind.NotALength)]
    [InlineData("1e3 mm", LengthRefusalKind.NotALength)]
    [InlineData("12.5 1/2 in", LengthRefusalKind.NotALength)]
    [InlineData("12. mm", LengthRefusalKind.NotALength)]
    [InlineData("--12 mm", LengthRefusalKind.NotALength)]
    [InlineData("12 mm\n", LengthRefusalKind.NotALength)]
    [InlineData("12 mm 3", LengthRefusalKind.NotALength)]
    [InlineData("≈ 12 mm", LengthRefusalKind.NotALength)]
    [InlineData("١٢ mm", LengthRefusalKind.NotALength)]
    [InlineData("0x10 mm", LengthRefusalKind.NotALength)]
    public void Refuses_what_is_doubtful_inexact_or_no_length_and_says_what_is_accepted(string text, LengthRefusalKind kind)
    {
        var reading = LengthReader.Read(text, UnitSystem.Millimetres);
        Assert.Null(reading.Value);
        Assert.Equal(kind, reading.Refusal!.Kind);
        Assert.NotEmpty(reading.Refusal.Reason);
        Assert.NotEmpty(reading.Refusal.Accepted);
        Assert.StartsWith(text.Length > 3 ? text[..3] : text, reading.Refusal.Found, StringComparison.Ordinal);
        Assert.False(LengthReader.TryRead(text, UnitSystem.Millimetres, out _));
    }

    [Fact]
    public void A_refusal_of_an_inexact_length_names_the_nearest_that_can_be_measured()
    {
        // 1/3 in = 21.33/64 in, so 21/64 in is nearest.
        Assert.Contains("21/64\"", LengthReader.Read("1/3 in", UnitSystem.Inches).Refusal!.Accepted, StringComparison.Ordinal);
        Assert.Contains("12.3 mm", LengthReader.Read("12.3456789 mm", UnitSystem.Inches).Refusal!.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_unit_is_named()
    {
        Assert.Contains("'inn'", LengthReader.Read("12 inn", UnitSystem.Inches).Refusal!.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_without_end_is_refused_and_shown_short()
    {
        var refusal = LengthReader.Read(new string('9', 1_000_000), UnitSystem.Inches).Refusal!;
        Assert.Equal(LengthRefusalKind.NotALength, refusal.Kind);
        Assert.True(refusal.Found.Length <= 64);
    }
}
