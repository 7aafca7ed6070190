using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Tests.Drawing;

public class LayoutCheckTests
{
    private static readonly Lettering Words = new(12);

    [Fact]
    public void AGoodPageHasNoFaults()
    {
        var sketch = new Sketch().Text("left side", 10, 20, Words).Text("right side", 10, 30, Words).Line(10, 22, 90, 22, Pen.Rule);
        Assert.Empty(Faults(sketch));
    }

    [Fact]
    public void TextOverTheEdgeIsFound() => Assert.Contains(LayoutFaultKind.Outside, Kinds(new Sketch().Text("left side", 95, 20, Words)));

    [Fact]
    public void ALineOverTheEdgeIsFound() => Assert.Contains(LayoutFaultKind.Outside, Kinds(new Sketch().Line(10, 10, 101, 10, Pen.Thin)));

    [Fact]
    public void TextOnTextIsFound() =>
        Assert.Equal([LayoutFaultKind.TextsOverlap], Kinds(new Sketch().Text("left side", 10, 20, Words).Text("foot", 20, 21, Words)));

    [Fact]
    public void TurnedTextOnTextIsFound() =>
        Assert.Equal([LayoutFaultKind.TextsOverlap], Kinds(new Sketch().Text("left side", 10, 20, Words).Text("2710", 20, 25, Words, turn: -90)));

    [Fact]
    public void ALineThroughTextIsFoundUnlessTheTextIsBacked()
    {
        Assert.Equal([LayoutFaultKind.LineThroughText], Kinds(new Sketch().Line(5, 18.5, 60, 18.5, Pen.Thin).Text("left side", 10, 20, Words)));
        Assert.Empty(Faults(new Sketch().Line(5, 18.5, 60, 18.5, Pen.Thin).Text("left side", 10, 20, Words, backed: true)));
        Assert.NotEmpty(Faults(new Sketch().Text("left side", 10, 20, Words, backed: true).Line(5, 18.5, 60, 18.5, Pen.Thin)));
    }

    [Fact]
    public void ASlantingLineThatPassesTheCornerIsNoFault()
    {
        var box = new TextItem("left side", new(10, 20), Words).Bounds;
        Assert.Empty(Faults(new Sketch().Text("left side", 10, 20, Words).Line(box.Right - 2, box.Top - 3, box.Right + 4, box.Top + 2.5, Pen.Thin)));
        Assert.NotEmpty(Faults(new Sketch().Text("left side", 10, 20, Words).Line(box.Right - 6, box.Top - 1, box.Right + 2, box.Bottom + 1, Pen.Thin)));
    }

    [Fact]
    public void SmallTypeIsFound() => Assert.Equal([LayoutFaultKind.TooSmall], Kinds(new Sketch().Text("left", 10, 20, Words.Sized(8))));

    [Fact]
    public void CharactersWithoutAGlyphAreFound() => Assert.Equal([LayoutFaultKind.MissingGlyph], Kinds(new Sketch().Text("漢", 10, 20, Words)));

    [Fact]
    public void TextsInsideGroupsCount() =>
        Assert.Equal([LayoutFaultKind.TextsOverlap], Kinds(new Sketch().Group("a", "a", "part", inner => inner.Text("one", 10, 20, Words)).Text("one", 10, 20, Words)));

    private static IReadOnlyList<LayoutFault> Faults(Sketch sketch) => LayoutCheck.Faults(sketch.ToScene(100, 50, "test", "a test"));

    private static List<LayoutFaultKind> Kinds(Sketch sketch) => [.. Faults(sketch).Select(fault => fault.Kind)];
}
