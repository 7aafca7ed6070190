using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using SkiaSharp;

namespace Casewright.Papers.Tests.Drawing;

public class TextLayoutTests
{
    private static readonly Lettering Words = new(10);
    private static readonly Lettering Numbers = new(10, FontFamily.BarlowCondensed, FontWeight.SemiBold);

    [Fact]
    public void EveryFaceIsEmbeddedWithTheNameAndWeightItClaims()
    {
        foreach (var (family, weight) in FontFace.Embedded)
        {
            using var data = SKData.CreateCopy(FontFace.Of(family, weight).File.Span);
            using var typeface = SKTypeface.FromData(data);
            // The renderer's own reading of the font's name and OS/2 tables.
            Assert.StartsWith(family == FontFamily.Barlow ? "Barlow" : "Barlow Condensed", typeface.FamilyName, StringComparison.Ordinal);
            Assert.Equal((int)weight, typeface.FontWeight);
        }
    }

    [Fact]
    public void TheLicenceOfTheFontsTravelsWithThem() => Assert.Contains("SIL OPEN FONT LICENSE", FontFace.Licence, StringComparison.OrdinalIgnoreCase);

    // Checked against another library's reading of the advance widths; a text without kerning pairs.
    [Theory]
    [InlineData("nnnnn")]
    [InlineData("HHHH")]
    public void WidthOfUnkernedTextIsTheSumOfItsAdvances(string text)
    {
        using var data = SKData.CreateCopy(FontFace.Of(FontFamily.Barlow, FontWeight.Regular).File.Span);
        using var typeface = SKTypeface.FromData(data);
        using var font = new SKFont(typeface, 1000) { Hinting = SKFontHinting.None, LinearMetrics = true };
        Assert.Equal(font.MeasureText(text) / 1000 * Words.SizeMillimetres, TextLayout.Width(text, Words), Words.SizeMillimetres / 1000);
    }

    [Fact]
    public void KerningDrawsPairsTogether() =>
        Assert.True(TextLayout.Width("AVAVAV", Words) < (3 * TextLayout.Width("A", Words)) + (3 * TextLayout.Width("V", Words)));

    [Fact]
    public void TabularFiguresAreAllOfOneWidth()
    {
        var widths = Enumerable.Range(0, 10).Select(digit => TextLayout.Width(new string((char)('0' + digit), 6), Numbers)).ToList();
        Assert.All(widths, width => Assert.Equal(widths[0], width, 1e-9));
        var plain = Numbers with { Family = FontFamily.Barlow };
        Assert.NotEqual(TextLayout.Width("111", plain), TextLayout.Width("444", plain), 0.01);
    }

    [Theory]
    [InlineData("3\u20444", "3", "4")]
    [InlineData("63\u204464", "63", "64")]
    [InlineData("1\u20443", "1", "3")]
    public void FractionsAreSetSmallAndNoWiderThanTheyWouldBeInFull(string text, string over, string under)
    {
        var layout = TextLayout.Of(text, Numbers);
        var pieces = layout.Pieces;
        Assert.Equal([over, "\u2044", under], pieces.Select(piece => piece.Text));
        Assert.True(pieces[0].Size < Numbers.SizeMillimetres && pieces[2].Size < Numbers.SizeMillimetres);
        Assert.True(pieces[0].Rise > 0);
        Assert.Equal(0, pieces[2].Rise);
        Assert.True(layout.Advance < TextLayout.Width(over + "/" + under, Numbers));
        // The numerator's top is the height of capitals, so the fraction stands no higher than the figures beside it.
        Assert.True(layout.Ink.Top >= TextLayout.Of("8", Numbers).Ink.Top - 0.1);
    }

    [Fact]
    public void WholeNumberAndFractionStandCloserThanWords()
    {
        var whole = TextLayout.Width("77", Numbers);
        var fraction = TextLayout.Width("3\u20444", Numbers);
        var both = TextLayout.Width("77 3\u20444", Numbers);
        Assert.InRange(both - whole - fraction, 0.05, TextLayout.Width(" ", Numbers));
    }

    [Fact]
    public void InkOfAnXStandsOnTheBaselineAndThatOfAPReachesUnderIt()
    {
        Assert.Equal(0, TextLayout.Of("x", Words).Ink.Bottom, 0.05);
        Assert.True(TextLayout.Of("p", Words).Ink.Bottom > 0.4);
    }

    [Fact]
    public void TurnedTextHasATurnedBox()
    {
        var flat = new TextItem("2710", new(100, 100), Numbers).Bounds;
        var upright = new TextItem("2710", new(100, 100), Numbers, Turn: -90).Bounds;
        Assert.Equal(flat.Width, upright.Height, 1e-9);
        Assert.Equal(flat.Height, upright.Width, 1e-9);
        Assert.True(upright.Top < 100 && upright.Right <= 100.2);
    }

    [Fact]
    public void WrappedLinesFitAndLoseNoWord()
    {
        const string Text = "Spacing is unequal on purpose: a piece flipped, reversed or of the other hand does not close.";
        var lines = WordWrap.Lines(Text, Words, 40);
        Assert.All(lines, line => Assert.True(TextLayout.Width(line, Words) <= 40.01));
        Assert.Equal(Text, string.Join(' ', lines));
    }

    [Fact]
    public void AWordWiderThanTheColumnIsBroken()
    {
        var lines = WordWrap.Lines(new string('W', 60), Words, 20);
        Assert.All(lines, line => Assert.True(TextLayout.Width(line, Words) <= 20.01));
        Assert.Equal(60, lines.Sum(line => line.Length));
    }

    [Fact]
    public void CharactersThatTheFontLacksAreSpelledOut()
    {
        Assert.Equal("alpha to 2 ≤ 3", Printable.Of("α → 2\u2009≤\u00A03"));
        Assert.Equal("?", Printable.Of("漢"));
        Assert.Equal("½ ¾ é ø ß Ł ≈ − × ′ ″ ² ³ µ ° √", Printable.Of("½ ¾ é ø ß Ł ≈ − × ′ ″ ² ³ µ ° √"));
    }
}
