using System.Text.RegularExpressions;
using Casewright.Engine.Checks;

namespace Casewright.Engine.Tests.Checks;

/// <summary>The engineering note names every check, and no check that is not there.</summary>
public partial class CheckNoteTests
{
    // Findings of the survey and of the layout, which the note names beside the checks.
    private static readonly string[] OfTheSurvey = ["survey-contradiction", "survey-openings", "scribe-blank"];
    private static readonly string[] OfTheLayout = ["filler-at-wall", "nailers"];

    [Fact]
    public void The_note_lists_each_check_with_its_formula_source_and_limits()
    {
        var note = File.ReadAllText(Path.Combine(Root(), "docs", "checks.md"));
        foreach (var sheet in CheckCatalogue.All.Select(c => c.Sheet))
        {
            var row = note.Split('\n').SingleOrDefault(l => l.StartsWith($"| `{sheet.Id}` |", StringComparison.Ordinal));
            Assert.NotNull(row);
            Assert.Contains(sheet.LooksAt, row, StringComparison.Ordinal);
            Assert.Contains(sheet.Formula, row, StringComparison.Ordinal);
            Assert.Contains(sheet.Source, row, StringComparison.Ordinal);
            Assert.All(sheet.Limits, l => Assert.Contains(l.Name, row, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_note_names_no_check_that_does_not_exist()
    {
        var note = File.ReadAllText(Path.Combine(Root(), "docs", "checks.md"));
        var known = CheckCatalogue.All.Select(c => c.Sheet.Id).Concat(OfTheLayout).Concat(OfTheSurvey).ToHashSet(StringComparer.Ordinal);
        foreach (var table in note.Split('\n').Where(l => l.StartsWith('|')))
            Assert.All(Ids().Matches(table).Select(m => m.Groups["id"].Value), id => Assert.Contains(id, known));
    }

    [Fact]
    public void All_forty_troubles_are_answered() => Assert.Equal(
        Enumerable.Range(1, 40),
        File.ReadLines(Path.Combine(Root(), "docs", "checks.md")).Select(l => Numbered().Match(l)).Where(m => m.Success).Select(m => int.Parse(m.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_test_that_the_note_names_is_there()
    {
        var tests = Directory.EnumerateFiles(Path.Combine(Root(), "tests"), "*Tests.cs", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension).ToHashSet(StringComparer.Ordinal);
        var rows = File.ReadLines(Path.Combine(Root(), "docs", "checks.md")).Where(l => l.StartsWith("| `", StringComparison.Ordinal) || Numbered().IsMatch(l)).ToList();
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            var named = TestNames().Matches(row).Select(m => m.Value).ToList();
            Assert.True(named.Count > 0, row);
            Assert.All(named, name => Assert.Contains(name, tests));
        }
    }

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException("The solution's folder is not above the tests.");
    }

    [GeneratedRegex("`(?<id>[a-z]+(-[a-z]+)+|nailers)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ids();

    [GeneratedRegex("[A-Z][A-Za-z]+Tests", RegexOptions.None, 1000)]
    private static partial Regex TestNames();

    [GeneratedRegex(@"^\| (?<number>\d+) \|", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Numbered();
}
