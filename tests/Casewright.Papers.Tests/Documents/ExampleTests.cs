using Casewright.Engine;
using Casewright.Model.Files;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;
using Casewright.Papers.Spreadsheets;

namespace Casewright.Papers.Tests.Documents;

/// <summary>The papers of the example jobs, planned by the program itself.</summary>
public class ExampleTests
{
    [Theory]
    [InlineData("alcove-pair", PaperSize.A4)]
    [InlineData("alcove-pair", PaperSize.Letter)]
    [InlineData("display-wall", PaperSize.Letter)]
    [InlineData("display-wall", PaperSize.A4)]
    [InlineData("stair-wall", PaperSize.A4)]
    [InlineData("stair-wall", PaperSize.Letter)]
    [InlineData("crooked-music-room", PaperSize.Letter)]
    [InlineData("crooked-music-room", PaperSize.A4)]
    public void EveryPageOfTheExamplesIsClean(string example, PaperSize size)
    {
        var packet = Packet.Of(PlanOf(example), new(size, new(2026, 1, 1)));
        var faults = packet.Pages.SelectMany(page => LayoutCheck
            .Faults(page.Scene, page.Document == DocumentKind.Labels ? null : new PageFormat(size, page.Scene.Width > page.Scene.Height).Printed)
            .Select(fault => $"page {page.Number}, {page.Document} {page.Key}: {fault}"));
        Assert.Equal("", string.Join('\n', faults.Take(20)));
    }

    [Theory]
    [InlineData("alcove-pair")]
    [InlineData("display-wall")]
    public void NothingOfThePlanIsMissingFromThePapers(string example)
    {
        var plan = PlanOf(example);
        var index = new PlanIndex(plan);
        var pages = Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1))).Pages;
        string TextOf(DocumentKind kind) => string.Join('\n', pages.Where(page => page.Document == kind).SelectMany(page => page.Scene.Texts).Select(text => text.Text));
        var (parts, layouts, boards, labels) = (TextOf(DocumentKind.PartList), TextOf(DocumentKind.SheetLayouts), TextOf(DocumentKind.BoardCuts), TextOf(DocumentKind.Labels));
        var groups = PartGroups.Of(index).Select(group => group.Parts.Select(part => part.Id).ToList()).ToList();
        Assert.All(groups, group => Assert.Contains(OneLine(CodeList.Of(group)), OneLine(parts), StringComparison.Ordinal));
        Assert.All(groups, group => Assert.Equal(group.Order(StringComparer.Ordinal), CodeListTests.Expand(CodeList.Of(group))));
        Assert.Equal(plan.Parts.Select(part => part.Id).Order(StringComparer.Ordinal), groups.SelectMany(group => group).Order(StringComparer.Ordinal));
        Assert.All(plan.Cutting.Pieces, piece => Assert.Contains(index.CodeOf(piece), piece.FromBoard ? boards : layouts, StringComparison.Ordinal));
        Assert.All(plan.Cutting.Pieces, piece => Assert.Contains(index.CodeOf(piece), labels, StringComparison.Ordinal));
        Assert.All(plan.Cutting.Splices, splice => Assert.Contains(
            pages, page => page.Document == DocumentKind.SpliceCards && (page.Key == splice.Id || page.Scene.Texts.Any(text => text.Text.Contains(splice.Part, StringComparison.Ordinal)))));
    }

    // Marks must not run over hardware: no stroke of the triangle may enter a mortise or a connector's hole, and none may be missing.
    [Fact]
    public void EveryGluedSpliceOfTheDisplayWallHasItsTriangleClearOfHardware()
    {
        var plan = PlanOf("display-wall");
        var glued = plan.Cutting.Splices.Where(splice => splice.Tenons.Count > 0).Select(splice => splice.Id).ToHashSet(StringComparer.Ordinal);
        Assert.NotEmpty(glued);
        foreach (var page in SpliceCards.Pages(plan, new(PaperSize.Letter, new(2026, 1, 1))).Where(page => glued.Contains(page.Key)))
        {
            var leaves = new Scene(300, 300, "", "", page.Body).Leaves.ToList();
            var triangles = leaves.OfType<PathItem>().Where(path => path.Pen == Pen.Hidden && path.Points.Count == 3).ToList();
            var hardware = leaves.OfType<PathItem>().Where(path => path.Fill == Tone.Ink).Select(path => path.Bounds)
                .Concat(leaves.OfType<CircleItem>().Where(circle => circle.Radius > 1).Select(circle => circle.Bounds)).ToList();
            Assert.Equal(2, triangles.Count);
            Assert.All(triangles, triangle => Assert.DoesNotContain(hardware, box => triangle.Bounds.Overlaps(box)));
        }
    }

    [Theory]
    [InlineData("alcove-pair")]
    [InlineData("display-wall")]
    public void ListsHoldEveryPartAndPiece(string example)
    {
        var plan = PlanOf(example);
        Assert.Equal(plan.Parts.Select(part => part.Id), PlanLists.Parts(plan).Rows.Select(row => (string)row[0]!));
        Assert.Equal(plan.Cutting.Pieces.Select(piece => piece.Id), PlanLists.Pieces(plan).Rows.Select(row => (string)row[0]!));
        Assert.Equal(
            plan.Cutting.Sheets.Sum(sheet => sheet.Cost) + plan.Cutting.Boards.Sum(board => board.Cost), BuyingList.Lines(plan).Where(line => line.Stock.Length > 0).Sum(line => line.Cost ?? 0));
    }

    // The lines of a cell are wrapped where there is a space.
    private static string OneLine(string text) => text.Replace("\n", " ", StringComparison.Ordinal);

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, Lazy<Plan>> Plans = new(StringComparer.Ordinal);

    internal static Plan PlanOf(string example) => Plans.GetOrAdd(example, name => new(() => Make(name))).Value;

    private static Plan Make(string example)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder!.FullName, "examples", example + ".json")));
        Assert.True(job.Succeeded, string.Join('\n', job.Problems));
        var result = Planner.Plan(job.Value!);
        Assert.True(result.Plan is not null, string.Join('\n', result.Problems));
        return result.Plan!;
    }
}
