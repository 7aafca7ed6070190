using System.Numerics;
using Casewright.Model.Measure;
using CsCheck;

namespace Casewright.Model.Tests.Measure;

/// <summary>Laws of lengths, tried on random ones; arithmetic is held against unbounded integers.</summary>
public sealed class LengthLawTests
{
    private static readonly Gen<Length> s_any = Gen.Long.Select(Length.FromNanometres);

    /// <summary>Lengths of rooms and parts, up to 100 m either way, in every kind of step that people use.</summary>
    private static readonly Gen<Length> s_usual = Gen.Select(Gen.Long[-6400, 6400], Gen.OneOf(1L, 1_000L, 100_000L, 1_000_000L, 396_875L, 1_587_500L, 25_400_000L))
        .Select((count, step) => Length.FromNanometres(count * step));

    private static readonly Gen<FractionStep> s_step = Gen.OneOf(FractionStep.Sixteenth, FractionStep.ThirtySecond, FractionStep.SixtyFourth);

    private static readonly Gen<UnitSystem> s_units = Gen.OneOf(UnitSystem.Inches, UnitSystem.Millimetres);

    [Fact]
    public void Sums_differences_and_multiples_are_exact_or_refused() => Gen.Select(s_any, s_any, Gen.Long[-1000, 1000]).Sample((a, b, n) =>
    {
        AssertExact((BigInteger)a.Nanometres + b.Nanometres, () => a + b);
        AssertExact((BigInteger)a.Nanometres - b.Nanometres, () => a - b);
        AssertExact((BigInteger)a.Nanometres * n, () => a * n);
        AssertExact(-(BigInteger)a.Nanometres, () => -a);
    });

    [Fact]
    public void Whole_division_and_its_rest_make_the_length_again() => Gen.Select(s_any, s_any.Where(b => b != Length.Zero)).Sample((a, b) =>
        a.Nanometres == long.MinValue || (b * (a / b)) + (a % b) == a && Int128.Abs((a % b).Nanometres) < Int128.Abs(b.Nanometres));

    [Fact]
    public void Order_agrees_with_the_sign_of_the_difference() => Gen.Select(s_usual, s_usual).Sample((a, b) =>
        (a < b) == ((a - b) < Length.Zero)
        && (a <= b) == !(b < a)
        && a.CompareTo(b) == -b.CompareTo(a)
        && Length.Min(a, b) + Length.Max(a, b) == a + b);

    [Fact]
    public void Rounding_gives_the_nearest_multiple_and_halves_go_away_from_zero() =>
        Gen.Select(s_usual, Gen.Long[1, 100_000_000].Select(Length.FromNanometres)).Sample((a, step) =>
        {
            var rounded = a.RoundTo(step);
            var floor = a.FloorTo(step);
            var ceiling = a.CeilingTo(step);
            var distance = (rounded - a).Abs();
            return rounded % step == Length.Zero
                && distance * 2 <= step
                && (distance * 2 != step || rounded.Abs() > a.Abs())
                && floor % step == Length.Zero && floor <= a && a - floor < step
                && ceiling % step == Length.Zero && ceiling >= a && ceiling - a < step
                && rounded.RoundTo(step) == rounded
                && -(-a).RoundTo(step) == rounded;
        });

    [Fact]
    public void Every_print_that_is_not_marked_as_rounded_reads_back_exactly_and_every_marked_one_is_refused() =>
        Gen.Select(s_usual, s_step, Gen.Int[0, 6], s_units).Sample((length, step, places, units) =>
        {
            AssertReadsBack(LengthFormat.FeetAndInches(length, step), length, InchStep(step), units);
            AssertReadsBack(LengthFormat.Inches(length, step), length, InchStep(step), units);
            AssertReadsBack(LengthFormat.Millimetres(length, places), length, Length.FromMillimetres(PowerOfTenth(places)), units);
            AssertReadsBack(LengthFormat.Usual(length, units), length, Length.FromMillimetres(1), units);
            if (places <= 5) // 0.000001 in is 25.4 nm, no whole number of nanometres
                AssertReadsBack(LengthFormat.DecimalInches(length, places), length, Length.FromInches(PowerOfTenth(places)), units);
        });

    [Fact]
    public void The_print_for_files_always_reads_back_exactly_whatever_the_unit_of_the_job() =>
        Gen.Select(Gen.OneOf(s_usual, s_any), s_units, s_units).Sample((length, written, read) =>
            length.Nanometres == long.MinValue || LengthReader.Read(LengthFormat.Exact(length, written), read).Value == length);

    [Fact]
    public void A_fraction_is_in_lowest_terms_and_its_parts_add_up() => Gen.Select(s_usual, s_step).Sample((length, step) =>
    {
        var f = InchFraction.InFeet(length, step);
        var whole = ((f.Feet ?? 0) * 12) + f.Inches;
        var value = Length.FromInches(whole, f.Numerator, f.Denominator);
        var signed = f.Negative ? -value : value;
        return (f.Feet is null || f.Inches < 12)
            && f.Numerator < f.Denominator
            && BigInteger.GreatestCommonDivisor(f.Numerator, f.Denominator) == 1
            && (int)step % f.Denominator == 0
            && f.Rounded == (signed != length)
            && (signed - length).Abs() * 2 <= InchStep(step);
    });

    [Fact]
    public void The_many_ways_of_writing_one_length_agree() =>
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 11], Gen.Int[1, 7]).Sample((feet, inches, eighths) =>
        {
            var expected = Length.FromInches((feet * 12) + inches, eighths, 8);
            var vulgar = "_⅛¼⅜½⅝¾⅞"[eighths];
            string[] texts =
            [
                $"{feet}' {inches} {eighths}/8\"", $"{feet}′{inches}{vulgar}″", $"{feet} ft {inches} {eighths}/8 in", $"{feet}'-{inches} {eighths}⁄8”",
                $"{(feet * 12) + inches} {eighths}/8", $"{(feet * 12) + inches}{vulgar} in", $"{(feet * 12) + inches}-{eighths}/8\"",
                FormattableString.Invariant($"{(feet * 12) + inches + (eighths / 8m)} in"), FormattableString.Invariant($"{expected.Millimetres} mm"),
                FormattableString.Invariant($"{expected.Millimetres / 10} cm"), FormattableString.Invariant($"{expected.Millimetres / 1000} m"),
                $"{feet}\u00A0feet {inches}\u202F{eighths} / 8 inches",
            ];
            foreach (var text in texts)
                Assert.Equal(expected, LengthReader.Read(text, UnitSystem.Inches).Value);
        });

    [Fact]
    public void Any_text_at_all_is_read_or_refused_and_never_throws()
    {
        var letters = Gen.OneOf(Gen.Char["0123456789 .,-/'\"½⅓″′mcfintMeol\u00A0−"], Gen.Char);
        Gen.Select(letters.Array[0, 24].Select(c => new string(c)), s_units).Sample((text, units) =>
        {
            var reading = LengthReader.Read(text, units);
            return reading.Value is null != reading.Refusal is null && (reading.Refusal is not { } r || (r.Reason.Length > 0 && r.Accepted.Length > 0));
        });
    }

    [Fact]
    public void The_pattern_of_the_schema_is_the_reader_s_own()
    {
        var letters = Gen.Char["0123456789  ./'\"½″fintmc-,"];
        Gen.OneOf(letters.Array[1, 10].Select(c => new string(c)), s_usual.Select(l => LengthFormat.Exact(l.Abs(), UnitSystem.Inches))).Sample(text =>
        {
            var matches = System.Text.RegularExpressions.Regex.IsMatch(text, LengthReader.UnsignedPattern);
            var reading = LengthReader.Read(text, UnitSystem.Inches);
            var isSigned = reading.Value is not null && text.TrimStart()[0] == '-';
            // What matches may still be refused for its value; what does not match is never read, signs aside.
            return isSigned || matches || reading.Value is null;
        });
    }

    private static decimal PowerOfTenth(int places) => Enumerable.Range(0, places).Aggregate(1m, (value, _) => value / 10);

    private static Length InchStep(FractionStep step) => Length.FromInches(0, 1, (int)step);

    private static void AssertReadsBack(string text, Length length, Length step, UnitSystem units)
    {
        if (!text.StartsWith('≈'))
        {
            Assert.Equal(length, LengthReader.Read(text, units).Value);
            return;
        }

        Assert.NotNull(LengthReader.Read(text, units).Refusal);
        var near = LengthReader.Read(text[2..], units).Value!.Value;
        Assert.NotEqual(length, near);
        Assert.True((near - length).Abs() * 2 <= step, $"{text} is more than half a step from {length}");
    }

    private static void AssertExact(BigInteger expected, Func<Length> compute)
    {
        if (expected < long.MinValue || expected > long.MaxValue)
            Assert.Throws<OverflowException>(() => compute());
        else
            Assert.Equal((long)expected, compute().Nanometres);
    }
}
