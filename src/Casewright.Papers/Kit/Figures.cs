using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>
/// Writes lengths as papers show them: the job's unit first, the other unit beside it. Inches have binary fractions that the
/// typesetter draws as real ones. A figure in the job's unit that had to be rounded starts with ≈; the other unit is always rounded,
/// and the papers say so at their foot.
/// </summary>
public sealed class Figures(UnitSystem units)
{
    private static readonly Length TenthMillimetre = Length.FromMillimetres(0.1m);

    /// <summary>Finest step of inches in a job in inches.</summary>
    public static readonly Length Sixtyfourth = Length.FromInches(0, 1, 64);

    private static readonly Length Thirtysecond = Length.FromInches(0, 1, 32);

    /// <summary>The job's unit.</summary>
    public UnitSystem Units => units;

    /// <summary>Short name of the job's unit.</summary>
    public string Unit => units == UnitSystem.Inches ? "in" : "mm";

    /// <summary>Short name of the other unit.</summary>
    public string OtherUnit => units == UnitSystem.Inches ? "mm" : "in";

    /// <summary>The foot note that explains the two units.</summary>
    public string FootNote => units == UnitSystem.Inches
        ? "Inches rule; millimetres in grey are rounded to 0.1."
        : "Millimetres rule; inches in grey are rounded to 1\u204432.";

    /// <summary>A length in the job's unit, without the unit's name.</summary>
    public string Main(Length length) => units == UnitSystem.Inches ? Inches(length, Sixtyfourth, true) : Millimetres(length, true);

    /// <summary>A length in the other unit, rounded, without the unit's name.</summary>
    public string Other(Length length) => units == UnitSystem.Inches ? Millimetres(length, false) : Inches(length, Thirtysecond, false);

    /// <summary>Both units in one text: 1975 (77 3⁄4).</summary>
    public string Both(Length length) => $"{Main(length)} ({Other(length)})";

    /// <summary>Both units in a sentence: 1975 mm (77 3⁄4 in).</summary>
    public string Said(Length length) => $"{Main(length)} {Unit} ({Other(length)} {OtherUnit})";

    /// <summary>A size in the job's unit: 1975 × 300.</summary>
    public string Size(params ReadOnlySpan<Length> sizes) => Join(sizes, Main);

    /// <summary>A size in the other unit.</summary>
    public string OtherSize(params ReadOnlySpan<Length> sizes) => Join(sizes, Other);

    private static string Join(ReadOnlySpan<Length> sizes, Func<Length, string> write)
    {
        var texts = new List<string>();
        foreach (var size in sizes)
            texts.Add(write(size));
        return string.Join(" × ", texts);
    }

    private static string Millimetres(Length length, bool mark)
    {
        var rounded = length.RoundTo(TenthMillimetre);
        return Mark(length, rounded, mark) + rounded.Millimetres.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');
    }

    private static string Inches(Length length, Length step, bool mark)
    {
        var rounded = length.RoundTo(step);
        var (whole, rest) = long.DivRem(rounded.Abs().Nanometres, Length.NanometresPerInch);
        var (over, under) = (rest / Sixtyfourth.Nanometres, 64L);
        while (over > 0 && over % 2 == 0)
            (over, under) = (over / 2, under / 2);
        var fraction = over == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{over}{TextLayout.FractionSlash}{under}");
        var digits = whole == 0 && over > 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}").TrimEnd();
        return Mark(length, rounded, mark) + (rounded < Length.Zero ? "−" : "") + digits;
    }

    private static string Mark(Length length, Length rounded, bool mark) => mark && length != rounded ? "≈" : "";
}
