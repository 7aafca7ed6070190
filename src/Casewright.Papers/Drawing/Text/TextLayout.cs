using System.Text.RegularExpressions;

namespace Casewright.Papers.Drawing.Text;

/// <summary>A piece of a text set in one size: plain words, figures, or the parts of a fraction.</summary>
/// <param name="Text">What is set.</param>
/// <param name="X">Start on the baseline, in millimetres from the start of the text.</param>
/// <param name="Rise">How far the piece stands above the baseline, in millimetres.</param>
/// <param name="Size">Type size in millimetres.</param>
internal sealed record TextPiece(string Text, double X, double Rise, double Size)
{
    public required ushort[] Glyphs { get; init; }

    public required double[] GlyphStarts { get; init; }
}

/// <summary>
/// Sets a line of text: real fractions (figures on both sides of U+2044 FRACTION SLASH become a small numerator, a slash and a
/// small denominator, for any denominator), kerned words and figures otherwise.
/// </summary>
public sealed partial class TextLayout
{
    /// <summary>The character between numerator and denominator of a fraction that is to be typeset.</summary>
    public const char FractionSlash = '\u2044';

    private const double SmallFigure = 0.62;
    private const double CapHeight = 0.7;
    private const double GapBeforeFraction = 0.11;
    private const double SlashGap = 0.02;

    private readonly List<TextPiece> _pieces = [];
    private readonly FontFace _face;
    private readonly Lettering _lettering;
    private double _left = double.PositiveInfinity;
    private double _right = double.NegativeInfinity;
    private double _rise;
    private double _fall;

    private TextLayout(string text, Lettering lettering)
    {
        _lettering = lettering;
        _face = FontFace.Of(lettering.Family, lettering.Weight);
        SetAll(text);
        if (double.IsInfinity(_left))
            (_left, _right) = (0, Advance);
    }

    /// <summary>Where the next text would start, in millimetres.</summary>
    public double Advance { get; private set; }

    /// <summary>The box of the ink around the start of the baseline at (0, 0), in millimetres.</summary>
    public Box Ink => new(_left, -_rise, _right - _left, _rise + _fall);

    internal IReadOnlyList<TextPiece> Pieces => _pieces;

    /// <summary>Sets a line of text.</summary>
    public static TextLayout Of(string text, Lettering lettering) => new(Printable.Of(text), lettering);

    /// <summary>Width of a line of text, in millimetres.</summary>
    public static double Width(string text, Lettering lettering) => Of(text, lettering).Advance;

    private void SetAll(string text)
    {
        var at = 0;
        foreach (Match fraction in Fractions().Matches(text))
        {
            var before = text[at..fraction.Index];
            SetPlain(before);
            var follows = before.TrimEnd(' ');
            if (follows.Length > 0 && follows.Length == before.Length - 1 && char.IsDigit(follows[^1]))
                Advance += (GapBeforeFraction * _lettering.SizeMillimetres) - Shaped(" ").Advance * _lettering.SizeMillimetres;
            SetFraction(fraction.Groups["over"].Value, fraction.Groups["under"].Value);
            at = fraction.Index + fraction.Length;
        }

        SetPlain(text[at..]);
    }

    private void SetFraction(string numerator, string denominator)
    {
        var size = _lettering.SizeMillimetres;
        var small = size * SmallFigure;
        Append(numerator, small, CapHeight * (size - small));
        Advance += SlashGap * size;
        Append(FractionSlash.ToString(), size, 0);
        Advance += SlashGap * size;
        Append(denominator, small, 0);
    }

    private void SetPlain(string text)
    {
        if (text.Length > 0)
            Append(text, _lettering.SizeMillimetres, 0);
    }

    private void Append(string text, double size, double rise)
    {
        var shaped = Shaped(text);
        _pieces.Add(new(text, Advance, rise, size) { Glyphs = shaped.Glyphs, GlyphStarts = [.. shaped.Offsets.Select(x => x * size)] });
        Cover(shaped, Advance, size, rise);
        Advance += shaped.Advance * size;
    }

    private void Cover(ShapedText shaped, double start, double size, double rise)
    {
        if (shaped.Right <= shaped.Left)
            return;
        _left = Math.Min(_left, start + (shaped.Left * size));
        _right = Math.Max(_right, start + (shaped.Right * size));
        _rise = Math.Max(_rise, (shaped.Rise * size) + rise);
        _fall = Math.Max(_fall, (shaped.Fall * size) - rise);
    }

    private ShapedText Shaped(string text) => _face.Shape(text);

    [GeneratedRegex("(?<over>[0-9]+)\u2044(?<under>[0-9]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Fractions();
}
