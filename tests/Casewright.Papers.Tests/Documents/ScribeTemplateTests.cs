using Casewright.Engine.Layout;
using Casewright.Engine.Surveying;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Stock;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Scribe templates are true to size: a millimetre of the wall is a millimetre of paper.</summary>
public class ScribeTemplateTests
{
    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void TheEdgeOfTheLeftFillerIsDrawnAtFullSize(PaperSize size)
    {
        var plan = Laid();
        var scribe = SurveyStage.Read(plan.Job, new(plan.Cases, plan.Parts, [])).Runs[0].Fillers[0].Scribe;
        var pages = ScribeTemplates.Pages(plan, new(size, new(2026, 1, 1))).Where(page => page.Key == "A-XL").ToList();
        var leaves = pages.SelectMany(page => new Scene(300, 300, "", "", page.Body).Leaves).ToList();
        var lines = leaves.OfType<LineItem>().Where(line => line.Pen == Pen.Reference).ToList();
        var edges = leaves.OfType<PathItem>().Where(path => !path.Closed).ToList();

        // 13 strips for 2405 mm: together they are as long as the filler, and none is longer than 200.
        Assert.Equal(13, lines.Count);
        Assert.Equal((double)scribe.Length.Millimetres, lines.Sum(line => Math.Abs(line.From.Y - line.To.Y)), 1e-6);
        Assert.All(lines, line => Assert.True(Math.Abs(line.From.Y - line.To.Y) <= 200.0001));

        // By hand at the foot: 100 up the end stands 8.07 in at the front, 15.07 at most: 30 + 15.07 − 8.07 = 37 left; the line at 20.
        Assert.Equal(17, edges[0].Points[0].X - lines[0].From.X, 0.02);
        for (var i = 0; i < lines.Count; i++)
            Assert.All(edges[i].Points, point => Assert.InRange(point.X - lines[i].From.X, (double)scribe.Narrowest.Millimetres - 20 - 0.001, (double)scribe.Widest.Millimetres - 20 + 0.001));

        // Neighbouring strips meet: the last width of one is the first of the next.
        for (var i = 1; i < lines.Count; i++)
            Assert.Equal(edges[i - 1].Points[^1].X - lines[i - 1].From.X, edges[i].Points[0].X - lines[i].From.X, 1e-6);
        Assert.All(pages, page => Assert.Contains(
            new Scene(300, 300, "", "", page.Body).Leaves.OfType<LineItem>(), line => line.From.Y == line.To.Y && Math.Abs(line.To.X - line.From.X - 100) < 1e-9));
    }

    [Fact]
    public void TheInstallSheetTellsEveryStationAndTheAccessSheetEveryCase()
    {
        var plan = Laid();
        string Text(IEnumerable<PageDraft> pages) => string.Join('\n', pages.SelectMany(page => new Scene(300, 300, "", "", page.Body).Texts).Select(text => text.Text));
        var install = Text(InstallSheet.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))));

        // Base of 100; the left front corner lies 16 below the highest floor point.
        Assert.Contains("116", install, StringComparison.Ordinal);
        Assert.Contains("Order of work", install, StringComparison.Ordinal);
        Assert.Contains("licensed", install, StringComparison.Ordinal);
        var access = Text(AccessSheet.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))));

        // 100 + √(2405² + 330²) + 10 = 2537.5 on its base.
        Assert.Contains("2537.5", access, StringComparison.Ordinal);
        Assert.Contains("stairs with landing", access, StringComparison.Ordinal);
    }

    /// <summary>
    /// A crown 70 high over cases that end 45 under the lowest ceiling, lapping 12: its lower edge is 57 under it. Of the blank of 70 stand
    /// 57 where the ceiling is lowest and 57 + (1560 − 1550) = 67 in the left corner; ceiling readings of the example, the lower of back and front.
    /// </summary>
    [Fact]
    public void TheEdgeOfTheCrownIsDrawnAgainstTheCeiling()
    {
        var plan = Laid("crown");
        var scribe = SurveyStage.Read(plan.Job, new(plan.Cases, plan.Parts, [])).Runs[0].Scribes.First(s => s.Against == "ceiling");
        var edges = ScribeTemplates.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))).Where(page => page.Key == scribe.Part)
            .SelectMany(page => new Scene(300, 300, "", "", page.Body).Leaves).OfType<PathItem>().Where(path => !path.Closed).ToList();

        Assert.Equal(57, (double)scribe.Narrowest.Millimetres, 0.05);
        Assert.InRange((double)scribe.Widest.Millimetres, 66, 67.001);
        Assert.Equal((int)Math.Ceiling((double)scribe.Length.Millimetres / 200), edges.Count);

        // The templates lie on a line at 45, two steps of 5 inside the narrowest, rounded down to 5.
        Assert.Equal(12, edges.SelectMany(e => e.Points).Min(p => p.X) - XOfLine(plan, scribe.Part), 0.05);
    }

    private static double XOfLine(Plan plan, string part) => ScribeTemplates.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))).Where(page => page.Key == part)
        .SelectMany(page => new Scene(300, 300, "", "", page.Body).Leaves).OfType<LineItem>().Where(line => line.Pen == Pen.Reference).Min(line => line.From.X);

    private static Plan Laid(string? crown = null)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder!.FullName, "examples", "crooked-music-room.json"))).Value!;
        if (crown is not null)
        {
            var board = new Material { Id = crown, Name = crown, Kind = MaterialKind.Hardwood, Nominal = Length.FromMillimetres(20), BoardWidth = Length.FromMillimetres(70), HasGrain = true };
            job = job with
            {
                Runs = [job.Runs[0] with { Head = job.Runs[0].Head with { Crown = crown, CrownLap = Length.FromMillimetres(12) } }, .. job.Runs.Skip(1)],
                Stock = job.Stock with { Materials = [.. job.Stock.Materials, board] },
            };
        }

        var casework = LayoutStage.Lay(job).Value!;
        return new() { Job = job, Cases = casework.Cases, Parts = casework.Parts, Cutting = new() { Pieces = [], Splices = [], Sheets = [], Boards = [], Materials = [], Bounds = new() { Cost = 0, LowerBound = 0, Sheets = 0, SheetsLowerBound = 0, Proven = true } }, Findings = [] };
    }
}
