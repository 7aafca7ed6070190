using Casewright.Engine.Layout;
using Casewright.Model.Files;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Every cut-out is drawn to scale and measured from two edges of its part.</summary>
public class CutOutDrawingTests
{
    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void TheSocketInTheBackIsMeasuredFromFootAndEdge(PaperSize size)
    {
        var plan = Laid();
        var back = plan.Parts.Single(p => p.Machining.OfType<CutOut>().Any());
        var cut = back.Machining.OfType<CutOut>().Single();
        var page = Assert.Single(DrillingLayouts.Pages(plan, new(size, new(2026, 1, 1))), p => p.Key == "cut:" + back.Id);
        var leaves = new Scene(300, 300, "", "", page.Body).Leaves.ToList();
        var texts = new Scene(300, 300, "", "", page.Body).Texts.Select(t => t.Text).ToList();

        // The socket lies 450 up and 420 along, 146 by 86, with 3 of play; the back's lower left corner is at its place in the room.
        var low = back.Place.LowCorner(back.Length, back.Width, back.Thickness);
        Assert.Equal((447m - low.Y.Millimetres, 417m - low.X.Millimetres), (cut.X.Millimetres, cut.Y.Millimetres));
        Assert.Contains(cut.X.Millimetres.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture), texts);
        Assert.Contains(cut.Y.Millimetres.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture), texts);

        // To scale: the outline and the opening have the proportions of the part.
        var boxes = leaves.OfType<PathItem>().Where(p => p.Closed).Select(p => Box.Around(p.Points)).OrderByDescending(b => b.Height).ToList();
        var scale = boxes[0].Height / (double)back.Length.Millimetres;
        Assert.Contains(boxes, b => Math.Abs(b.Width - (152 * scale)) < 1e-6 && Math.Abs(b.Height - (92 * scale)) < 1e-6
            && Math.Abs(boxes[0].Bottom - b.Bottom - ((double)cut.X.Millimetres * scale)) < 1e-6);
        Assert.Empty(LayoutCheck.Faults(new(page.Format.Width, page.Format.Height, "", "", page.Body)));
    }

    private static Plan Laid()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder!.FullName, "examples", "crooked-music-room.json"))).Value!;
        var casework = LayoutStage.Lay(job).Value!;
        return new() { Job = job, Cases = casework.Cases, Parts = casework.Parts, Cutting = new() { Pieces = [], Splices = [], Sheets = [], Boards = [], Materials = [], Bounds = new() { Cost = 0, LowerBound = 0, Sheets = 0, SheetsLowerBound = 0, Proven = true } }, Findings = [] };
    }
}
