using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;

namespace Casewright.Model.Measure;

/// <summary>
/// Reads lengths as people write them: <c>9' 10 5/8"</c>, <c>118 5/8 in</c>, <c>118.625 in</c>, <c>9 ft 10 in</c>, <c>3013 mm</c>,
/// <c>301.3 cm</c>, <c>3,013 m</c>, <c>2440</c>. The value is exact or the text is refused; nothing is rounded.
/// </summary>
/// <remarks>
/// A number without a unit is read in the job's unit, but a fraction without a unit is refused in a job in millimetres, where it would
/// most likely have meant inches. A comma is a decimal comma; before exactly three digits it might mark thousands, so there it is
/// refused, unless a lone 0 stands before it or the unit is metres. Thousands are not marked at all.
/// </remarks>
public static partial class LengthReader
{
    private const int LongestText = 64;

    // Every class is spelled out, without flags, so that the same pattern serves the JSON Schema (ECMA-262 regular expressions).
    private const string SpaceChar = @"[ \t\u00A0\u2000-\u200A\u202F]";
    private const string Space = SpaceChar + "*";
    private const string Dash = @"[\-\u2010-\u2013\u2212]";
    private const string Slash = @"[/\u2044\u2215]";
    private const string FootUnit = @"(?:['\u2018\u2019\u2032\u02B9\u00B4]|[fF][tT]\.?|[fF][oO][oO][tT]|[fF][eE][eE][tT])";
    private const string InchUnit =
        @"(?:[""\u201C\u201D\u2033\u02BA]|''|\u2032\u2032|\u2019\u2019|[iI][nN]\.?|[iI][nN][cC][hH](?:[eE][sS])?)";

    private const string MetricUnit = @"(?:[mM][mM]|[cC][mM]|[mM]|(?:milli|centi)?met(?:re|er)s?)";
    private const string Decimal = @"(?<decimal>[0-9]{1,15}(?:[.,][0-9]{1,12})?|[.,][0-9]{1,12})";
    private const string Whole = "(?<whole>[0-9]{1,15})";
    private const string Ratio = "(?<numerator>[0-9]{1,6})" + Space + Slash + Space + "(?<denominator>[0-9]{1,6})";
    private const string Vulgar = @"(?<vulgar>[\u00BC-\u00BE\u2150-\u215E])";
    private const string Gap = "(?:" + Space + Dash + Space + "|" + SpaceChar + "+)";
    private const string Mixed = "(?:" + Whole + Gap + ")?" + Ratio + "|(?:" + Whole + Gap + "?)?" + Vulgar;
    private const string Measure = "(?:" + Decimal + "|" + Mixed + ")";
    private const string FeetFirst = "(?<feet>[0-9]{1,9})" + Space + FootUnit
        + "(?:" + Space + "(?:" + Dash + Space + ")?" + Measure + "(?:" + Space + InchUnit + ")?)?";

    private const string OneUnit = Measure + "(?:" + Space + "(?<unit>" + InchUnit + "|" + FootUnit + "|" + MetricUnit + "))?";
    private const string Unsigned = "(?:" + FeetFirst + "|" + OneUnit + ")" + Space + "$";

    private static readonly (char Sign, int Numerator, int Denominator)[] s_vulgarFractions =
    [
        ('¼', 1, 4), ('½', 1, 2), ('¾', 3, 4), ('⅐', 1, 7), ('⅑', 1, 9), ('⅒', 1, 10), ('⅓', 1, 3), ('⅔', 2, 3), ('⅕', 1, 5),
        ('⅖', 2, 5), ('⅗', 3, 5), ('⅘', 4, 5), ('⅙', 1, 6), ('⅚', 5, 6), ('⅛', 1, 8), ('⅜', 3, 8), ('⅝', 5, 8), ('⅞', 7, 8),
    ];

    /// <summary>A regular expression (ECMA-262) of lengths without a sign, for the JSON Schema. It says how a length is written, not how large it may be.</summary>
    public static string UnsignedPattern { get; } = GroupNames().Replace("^" + Space + Unsigned, "(?:");

    /// <summary>Reads a length.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="units">Unit of a number that names none.</param>
    public static LengthReading Read(string text, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > LongestText || text.Contains('\n', StringComparison.Ordinal))
            return Refuse(LengthRefusalKind.NotALength, "This is too long for a length.", text, units);
        var match = Pattern().Match(text);
        return match.Success ? Evaluate(match, text, units) : Diagnose(text, units);
    }

    /// <summary>Reads a length when the text is one.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="units">Unit of a number that names none.</param>
    /// <param name="length">The exact length, or zero.</param>
    /// <returns>Whether the text was a length.</returns>
    public static bool TryRead(string text, UnitSystem units, out Length length)
    {
        var value = Read(text, units).Value;
        length = value ?? Length.Zero;
        return value is not null;
    }

    /// <summary>What is accepted as a length in a job of this unit, in words with examples.</summary>
    public static string Accepted(UnitSystem units) => units == UnitSystem.Inches
        ? "a length such as 118 5/8, 118 5/8 in, 9' 10 5/8\", 9 ft 10 in, 118.625 in or 3013 mm"
        : "a length such as 3013, 3013 mm, 301.3 cm, 3.013 m or 118 5/8 in";

    [GeneratedRegex("^" + Space + "(?<sign>" + Dash + Space + ")?" + Unsigned, RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"\(\?<[a-z]+>", RegexOptions.CultureInvariant)]
    private static partial Regex GroupNames();

    [GeneratedRegex(@"(?<word>\p{L}+)\.?\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex LastWord();

    private static LengthReading Evaluate(Match match, string text, UnitSystem units)
    {
        var hasFeet = match.Groups["feet"].Success;
        var hasUnit = hasFeet || match.Groups["unit"].Success;
        var unit = match.Groups["unit"].Success ? NanometresOf(match.Groups["unit"].Value)
            : hasFeet || units == UnitSystem.Inches ? Length.NanometresPerInch : Length.NanometresPerMillimetre;
        if (Doubt(match, unit, hasUnit, units) is { } doubt)
            return Refuse(LengthRefusalKind.Ambiguous, doubt, text, units);
        if (Nonsense(match) is { } nonsense)
            return Refuse(LengthRefusalKind.NotALength, nonsense, text, units);

        var (numerator, denominator) = Quantity(match);
        if (hasFeet && numerator >= 12 * denominator)
            return Refuse(LengthRefusalKind.NotALength, "After feet, the inches must be fewer than 12.", text, units);
        if (hasFeet)
            numerator += BigInteger.Parse(match.Groups["feet"].Value, CultureInfo.InvariantCulture) * 12 * denominator;
        var nanometres = BigInteger.DivRem(numerator * unit, denominator, out var rest);
        if (!rest.IsZero)
            return RefuseInexact(text, numerator, denominator, unit);
        if (nanometres > long.MaxValue)
            return Refuse(LengthRefusalKind.OutOfRange, "This length is beyond anything that can be built.", text, units);
        var length = Length.FromNanometres((long)nanometres);
        return new() { Value = match.Groups["sign"].Success ? -length : length, HasUnit = hasUnit };
    }

    private static long NanometresOf(string unit) => char.ToUpperInvariant(unit[0]) switch
    {
        'M' when unit.Length > 1 && char.ToUpperInvariant(unit[1]) is 'M' or 'I' => Length.NanometresPerMillimetre,
        'C' => 10 * Length.NanometresPerMillimetre,
        'M' => 1000 * Length.NanometresPerMillimetre,
        'F' => 12 * Length.NanometresPerInch,
        'I' or '"' or '\u201C' or '\u201D' or '\u2033' or '\u02BA' => Length.NanometresPerInch,
        _ => unit.Length == 2 ? Length.NanometresPerInch : 12 * Length.NanometresPerInch,
    };

    private static string? Doubt(Match match, long unit, bool hasUnit, UnitSystem units)
    {
        var isFraction = match.Groups["numerator"].Success || match.Groups["vulgar"].Success;
        if (isFraction && !hasUnit && units == UnitSystem.Millimetres)
            return "A fraction without a unit in a job in millimetres: it could be inches.";
        var digits = match.Groups["decimal"].Value;
        var comma = digits.IndexOf(',', StringComparison.Ordinal);
        var marksThousands = comma > 0 && digits.Length - comma == 4 && digits[..comma] != "0" && unit != 1000 * Length.NanometresPerMillimetre;
        return marksThousands ? "The comma could be a decimal comma or a mark of thousands." : null;
    }

    private static string? Nonsense(Match match)
    {
        if (!match.Groups["numerator"].Success)
            return null;
        var numerator = int.Parse(match.Groups["numerator"].Value, CultureInfo.InvariantCulture);
        var denominator = int.Parse(match.Groups["denominator"].Value, CultureInfo.InvariantCulture);
        if (denominator == 0)
            return "A fraction cannot have 0 below the line.";
        return match.Groups["whole"].Success && numerator >= denominator
            ? "After a whole number, the fraction must be smaller than 1."
            : null;
    }

    private static (BigInteger Numerator, BigInteger Denominator) Quantity(Match match)
    {
        if (match.Groups["decimal"].Success)
            return DecimalQuantity(match.Groups["decimal"].Value.Replace(',', '.'));
        var whole = match.Groups["whole"].Success ? BigInteger.Parse(match.Groups["whole"].Value, CultureInfo.InvariantCulture) : 0;
        if (match.Groups["vulgar"].Success)
        {
            var (_, above, below) = Array.Find(s_vulgarFractions, f => f.Sign == match.Groups["vulgar"].Value[0]);
            return ((whole * below) + above, below);
        }

        if (!match.Groups["numerator"].Success)
            return (0, 1);
        var denominator = int.Parse(match.Groups["denominator"].Value, CultureInfo.InvariantCulture);
        return ((whole * denominator) + int.Parse(match.Groups["numerator"].Value, CultureInfo.InvariantCulture), denominator);
    }

    private static (BigInteger Numerator, BigInteger Denominator) DecimalQuantity(string digits)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var places = point < 0 ? 0 : digits.Length - point - 1;
        var all = digits.Replace(".", "", StringComparison.Ordinal);
        return (BigInteger.Parse(all, CultureInfo.InvariantCulture), BigInteger.Pow(10, places));
    }

    private static LengthReading RefuseInexact(string text, BigInteger numerator, BigInteger denominator, long unit)
    {
        var isMetric = unit % Length.NanometresPerInch != 0;
        var step = isMetric ? Length.NanometresPerMillimetre / 10 : Length.NanometresPerInch / 64;
        var steps = ((numerator * unit * 2) + (denominator * step)) / (denominator * step * 2);
        var near = steps * step <= long.MaxValue ? Length.FromNanometres((long)(steps * step)) : Length.Zero;
        var suggestion = isMetric ? LengthFormat.Millimetres(near) : LengthFormat.Inches(near, FractionStep.SixtyFourth);
        var accepted = isMetric
            ? $"at most six decimals of a millimetre; the nearest tenth is {suggestion}"
            : $"fractions in halves, quarters ... 64ths, or decimals; the nearest 64th is {suggestion}";
        return new()
        {
            Refusal = new(
                LengthRefusalKind.NotExact,
                "This length is not a whole number of nanometres and would have to be rounded.",
                Shorten(text),
                accepted),
        };
    }

    private static LengthReading Diagnose(string text, UnitSystem units)
    {
        if (string.IsNullOrWhiteSpace(text))
            return Refuse(LengthRefusalKind.NotALength, "There is no length here.", text, units);
        if (!text.Any(c => char.IsAsciiDigit(c) || s_vulgarFractions.Any(f => f.Sign == c)))
            return Refuse(LengthRefusalKind.NotALength, "There is no number here.", text, units);
        if (text[0] == '≈')
            return Refuse(LengthRefusalKind.NotALength, "The mark ≈ says that this figure was rounded; the exact one is needed.", text, units);
        if (LastWord().Match(text) is { Success: true } last && !IsUnit(last.Groups["word"].Value))
            return Refuse(LengthRefusalKind.NotALength, $"'{Shorten(last.Groups["word"].Value)}' is no unit of length known here.", text, units);
        return Refuse(LengthRefusalKind.NotALength, "This is not written as a length.", text, units);
    }

    private static bool IsUnit(string word) => Pattern().IsMatch("1 " + word);

    private static LengthReading Refuse(LengthRefusalKind kind, string reason, string text, UnitSystem units) =>
        new() { Refusal = new(kind, reason, Shorten(text), Accepted(units)) };

    private static string Shorten(string text) => text.Length <= LongestText ? text : text[..(LongestText - 4)] + " ...";
}
