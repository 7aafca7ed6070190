using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Kit;

public class TableTests
{
    private static readonly Column[] Columns =
        [new("", Fixed: 6), new("Code", Fixed: 30, Lettering: Lettering.ListCode), new("Name", 2), new("Length", Fixed: 30, Anchor: Anchor.End, Lettering: Lettering.Figure)];

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void ALongTableRepeatsItsHeadLosesNoRowAndOverflowsNothing(PaperSize size)
    {
        var flow = Flow(size);
        var rows = Enumerable.Range(1, 90)
            .Select(i => Row.Of(Cell.TickBox, new($"C{i}-L"), new(string.Concat(Enumerable.Repeat("left side with a long name ", (i % 4) + 1))), new($"{1000 + i}", Second: "39 3⁄8")))
            .ToList();
        Table.Draw(flow, Columns, rows);
        var pages = Pagination.Number(flow.Finish(), "A job with a name that is far too long for the stamp at the right of the page", 3, new(2026, 11, 25));
        Assert.True(pages.Count > 2);
        foreach (var page in pages)
        {
            Assert.Empty(LayoutCheck.Faults(page.Scene, new PageFormat(size, false).Printed));
            Assert.Contains(page.Scene.Texts, text => text.Text == "Code");
            Assert.Contains(page.Scene.Texts, text => text.Text == $"page {page.Number} of {pages.Count}");
            Assert.Contains(page.Scene.Texts, text => text.Text == "revision 3 · 25 Nov 2026");
        }

        var codes = pages.SelectMany(page => page.Scene.Texts).Select(text => text.Text).Where(text => text.StartsWith('C') && text.EndsWith("-L", StringComparison.Ordinal));
        Assert.Equal(Enumerable.Range(1, 90).Select(i => $"C{i}-L"), codes, StringComparer.Ordinal);
    }

    [Fact]
    public void AHeadingIsNotLeftAloneAtTheFootOfAPage()
    {
        var flow = Flow(PaperSize.A4);
        var rows = Enumerable.Range(0, 60).SelectMany(i => (Row[])[Row.Heading($"group {i}"), Row.Of(Cell.TickBox, new($"A{i}"), new($"row {i}"), new("1"))]).ToList();
        Table.Draw(flow, Columns, rows);
        foreach (var page in Pagination.Number(flow.Finish(), "job", 1, new(2026, 1, 2)))
        {
            var texts = page.Scene.Texts.Select(text => text.Text).ToList();
            Assert.All(Enumerable.Range(0, 60).Where(i => texts.Contains($"group {i}", StringComparer.Ordinal)), i => Assert.Contains($"row {i}", texts, StringComparer.Ordinal));
        }
    }

    [Fact]
    public void WordsThatDoNotFitAreCutWithDots()
    {
        var lettering = new Lettering(10);
        var cut = Fitting.Cut("a name that is far too long", lettering, 20);
        Assert.EndsWith("...", cut, StringComparison.Ordinal);
        Assert.True(TextLayout.Width(cut, lettering) <= 20);
        Assert.Equal("short", Fitting.Cut("short", lettering, 20));
    }

    private static PageFlow Flow(PaperSize size) => new(new()
    {
        Document = DocumentKind.PartList,
        Format = new(size, false),
        Heading = new("Part list", "every part"),
        Description = "Every part.",
        Body = [],
    });
}
