using System.Globalization;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Schemes;
using Casewright.Engine.Tests.Verifying;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Schemes;

namespace Casewright.Engine.Tests.Schemes;

/// <summary>The tables of docs/schemes.md, whose arithmetic stands there, are what the program says.</summary>
public class SchemeNoteTests
{
    [Theory]
    [InlineData("alcove-pair", "## Alcove pair")]
    [InlineData("display-wall", "## Display wall")]
    public void The_tables_of_the_note_are_those_of_the_program(string example, string heading)
    {
        var schemes = SchemeStage.Compare(Examples.Read(example), PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken).Value!.Schemes;
        var table = Table(heading);
        Assert.Equal(5, table.Count);
        foreach (var (figure, cells) in table)
            Assert.Equal(cells, schemes.Select(s => s.Figures is { } f ? Written(figure, f) : "–"));
    }

    // The archive takes too long to be planned here. What its table rests on is counted from the layout, and the sums are done again: of the
    // program's plan only the numbers of sheets are taken, 61 and 30 spliced, 12, 42 and 30 mixed, 62, 1 and 30 stacked.
    [Fact]
    public void The_table_of_the_archive_adds_up()
    {
        var job = Examples.Read("archive");
        var laid = LayoutStage.Lay(job).Value!;
        var table = Table("## Archive");
        var ways = new SchemeVariations(job, laid).All().ToDictionary(v => v.Kind);
        Assert.All(ways[SchemeKind.DesignedAway].Obstacles, o => Assert.Contains("320 mm over", o, StringComparison.Ordinal));
        Assert.Equal(2, ways[SchemeKind.DesignedAway].Obstacles.Count);

        var usable = Length.FromMillimetres(2440 - 10);
        var uprights = laid.Parts.Where(p => p.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel && p.Length > usable).ToList();
        Assert.Equal((40, 20, 1), (uprights.Count(p => p.Role == PartRole.Side), uprights.Count(p => p.Role == PartRole.Partition), uprights.Count(p => p.Role == PartRole.EndPanel)));
        Assert.Equal(["–", "0", "–", "61", "26"], table["splices"]);
        Assert.Equal(61, uprights.Count);

        // Nosings go five to a board: 5 · 562 + 4 · 3 = 2822 of 2980.
        Assert.Equal(64 * 5, laid.Parts.Count(p => p.Role == PartRole.Nosing));
        Assert.Equal(56 * 5, LayoutStage.Lay(ways[SchemeKind.Stacked].Job).Value!.Parts.Count(p => p.Role == PartRole.Nosing));
        decimal Material(int small, int large, int backs, int nosings) => (small * Price("birch-18-2440")) + (large * Price("birch-18-3050")) + (backs * Price("birch-6-2440")) + (nosings * Price("nosing-3000"));
        decimal Price(string id) => job.Stock.Sheets.FirstOrDefault(s => s.Id == id)?.Price ?? job.Stock.Boards.Single(b => b.Id == id).Price;
        string[] sums = ["–", Text(Material(62, 1, 30, 56)), "–", Text(Material(61, 0, 30, 64)), Text(Material(42, 12, 30, 64))];
        Assert.Equal(sums, table["material"]);
        Assert.Equal(["–", "93", "–", "91", "84"], table["sheets"]);

        static string Text(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
    }

    private static string Written(string figure, SchemeFigures figures) => figure switch
    {
        "sheets" => figures.Sheets.ToString(CultureInfo.InvariantCulture),
        "splices" => figures.Splices.ToString(CultureInfo.InvariantCulture),
        "material" => figures.Material.ToString("0.00", CultureInfo.InvariantCulture),
        "lines in view" => figures.LinesInView.ToString(CultureInfo.InvariantCulture),
        "price before tax" => figures.Net!.Value.ToString("0.00", CultureInfo.InvariantCulture),
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "The note has a figure that this test does not know."),
    };

    private static Dictionary<string, string[]> Table(string heading) => File.ReadAllLines(Note())
        .SkipWhile(l => l != heading)
        .SkipWhile(l => !l.StartsWith('|'))
        .TakeWhile(l => l.StartsWith('|'))
        .Skip(2)
        .Select(l => l.Trim('|').Split('|', StringSplitOptions.TrimEntries))
        .ToDictionary(c => c[0], c => c[1..], StringComparer.Ordinal);

    private static string Note()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        return Path.Combine(folder!.FullName, "docs", "schemes.md");
    }
}
