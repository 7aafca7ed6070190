using System.Globalization;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Schemes;
using Casewright.Engine.Tests.Verifying;
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
