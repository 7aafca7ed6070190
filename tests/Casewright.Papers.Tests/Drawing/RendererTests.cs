using System.Text;
using System.Xml.Linq;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Drawing.Text;
using SkiaSharp;
using UglyToad.PdfPig;

namespace Casewright.Papers.Tests.Drawing;

public class RendererTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void PdfTextCanBeReadBackInPlaceWithItsFontEmbedded()
    {
        var bytes = PdfRenderer.ToBytes([Specimen()], Details);
        using var pdf = PdfDocument.Open(bytes);
        var page = pdf.GetPage(1);
        Assert.Equal(210 / 25.4 * 72, page.Width, 0.25);
        Assert.Equal(100 / 25.4 * 72, page.Height, 0.25);
        var words = page.GetWords().Select(word => word.Text).ToList();
        Assert.Contains("side", words, StringComparer.Ordinal);
        Assert.Contains("1975", words, StringComparer.Ordinal);
        Assert.Contains("3⁄4", string.Concat(page.Letters.Select(letter => letter.Value)), StringComparison.Ordinal);
        // The start of "left side" lies where the scene says: 10 mm from the left, baseline 20 mm from the top.
        var first = page.Letters.First(letter => letter.Value == "l");
        Assert.Equal(10 / 25.4 * 72, first.StartBaseLine.X, 0.5);
        Assert.Equal((100 - 20) / 25.4 * 72, first.StartBaseLine.Y, 0.3);
        Assert.All(page.Letters, letter => Assert.Contains("Barlow", letter.FontName, StringComparison.Ordinal));
        Assert.Contains("/FontFile2", Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        Assert.Empty(page.GetImages());
    }

    [Fact]
    public void TheSameSceneGivesTheSameBytes()
    {
        Assert.Equal(PdfRenderer.ToBytes([Specimen()], Details), PdfRenderer.ToBytes([Specimen()], Details));
        Assert.Equal(PngRenderer.ToBytes(Specimen(), 72), PngRenderer.ToBytes(Specimen(), 72));
        Assert.Equal(SvgRenderer.ToText(Specimen()), SvgRenderer.ToText(Specimen()));
    }

    [Fact]
    public void SvgHoldsRealTextTitlesAndGroups()
    {
        var svg = XDocument.Parse(SvgRenderer.ToText(Specimen()));
        Assert.Equal("210mm", svg.Root!.Attribute("width")!.Value);
        Assert.Equal("Specimen", svg.Root.Element(Svg + "title")!.Value);
        Assert.Equal("What the drawing board can do", svg.Root.Element(Svg + "desc")!.Value);
        var group = svg.Descendants(Svg + "g").Single(g => g.Attribute("id")?.Value == "part:C3-L");
        Assert.Equal("left side, case 3 <tall>", group.Element(Svg + "title")!.Value);
        var texts = svg.Descendants(Svg + "text").ToList();
        Assert.Contains(texts, text => text.Value == "left side");
        Assert.Contains(texts, text => text.Value == "1975 (77 3⁄4)");
        Assert.All(texts, text => Assert.StartsWith("'Barlow", text.Attribute("font-family")!.Value, StringComparison.Ordinal));
        Assert.Contains("@font-face", svg.Descendants(Svg + "style").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void SvgForPagesTakesItsColoursFromTheStyleSheet()
    {
        var svg = SvgRenderer.ToText(Specimen(), SvgOptions.Page);
        Assert.Contains("var(--chalk, #17557F)", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("@font-face", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void PngHasTheSizeAskedForAndInkOnIt()
    {
        using var picture = SKBitmap.Decode(PngRenderer.ToBytes(Specimen(), 254));
        Assert.Equal((2100, 1000), (picture.Width, picture.Height));
        // A point of the heavy line at y = 60 mm and a point of empty paper.
        Assert.Equal(SKColors.Black, picture.GetPixel(150, 600));
        Assert.Equal(SKColors.White, picture.GetPixel(2050, 950));
    }

    [Fact]
    public void APdfWithoutPagesIsRefused() => Assert.Throws<ArgumentException>(() => PdfRenderer.ToBytes([], Details));

    [Fact]
    public void TheSpecimenIsClean() => Assert.Empty(LayoutCheck.Faults(Specimen()));

    private static PdfDetails Details => new("Specimen", "test", new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc));

    internal static Scene Specimen()
    {
        var sketch = new Sketch();
        sketch.Text("left side", 10, 20, new Lettering(14));
        sketch.Text("1975 (77 3⁄4)", 60, 20, Lettering.Figure.Sized(18));
        sketch.Text("106 11⁄16", 110, 20, Lettering.Figure.Sized(18));
        sketch.Text("5 1⁄32  63⁄64  7⁄8", 145, 20, Lettering.Figure.Sized(18));
        sketch.Group("part:C3-L", "left side, case 3 <tall>", "part", g => g.Rectangle(new(10, 30, 150, 30), Pen.Object, Tone.Wood));
        sketch.Line(10, 60, 160, 60, Pen.Reference);
        DimensionLine.Horizontal(sketch, 10, 160, 72, 62, "1975 (77 3⁄4)", Lettering.Figure.Sized(14));
        DimensionLine.Vertical(sketch, 30, 60, 172, 160, "300", Lettering.Figure);
        DimensionLine.Vertical(sketch, 30, 36, 192, 180, "60", Lettering.Figure);
        Symbols.KeyedMark(sketch, 140, 45, 4);
        Symbols.Foot(sketch, 12, 86, 6);
        Symbols.TickBox(sketch, 40, 84);
        Symbols.Stop(sketch, 60, 86, 6);
        Symbols.Caution(sketch, 75, 86, 6);
        Symbols.Pass(sketch, 90, 86, 6);
        Symbols.Grain(sketch, 110, 86, 16);
        Symbols.Triangle(sketch, 60, 55, 40, 12);
        sketch.Add(Hatch.Lines([new(120, 80), new(140, 80), new(140, 92), new(120, 92)], 45, 1.5, Pen.Hair));
        sketch.Line(10, 35, 160, 35, Pen.SightLine);
        sketch.Add(new QrItem(new(175, 75), 20, "C3-L/a"));
        return sketch.ToScene(210, 100, "Specimen", "What the drawing board can do");
    }
}
