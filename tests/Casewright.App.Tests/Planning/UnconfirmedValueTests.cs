using System.Globalization;
using System.Text.RegularExpressions;
using Casewright.App.Commands;
using Casewright.Engine.Checks;
using Casewright.Model.Findings;

namespace Casewright.App.Tests.Planning;

/// <summary>Values that could not be confirmed are never printed as those of a code: neither the code nor its figures, in any finding or calculation of any example.</summary>
public partial class UnconfirmedValueTests
{
    private const string Absent = "The reference folder (shared/reference/engineering.md beside or above the repository) is absent.";

    private static readonly string[] Examples =
        [.. Repository.Examples.Select(e => Path.GetFileNameWithoutExtension(e)!)];

    [Fact]
    public void No_example_names_a_code_that_was_not_confirmed_or_gives_its_figures()
    {
        var (codes, figures) = Unconfirmed();
        Assert.SkipUnless(codes.Count > 0, Absent);
        Assert.NotEmpty(figures);
        foreach (var example in Examples)
        {
            var plan = PlannedExamples.Of(example).Plan!;
            foreach (var finding in plan.Findings)
            {
                using var sheet = new StringWriter();
                CalculationText.Write(sheet, plan, finding);
                var text = sheet.ToString();
                Assert.All(codes, code => Assert.DoesNotContain(code, text, StringComparison.OrdinalIgnoreCase));
                Assert.DoesNotContain(figures, f => text.Contains(f.Said, StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void No_limit_that_a_shop_may_edit_has_its_usual_value_from_them()
    {
        var (codes, figures) = Unconfirmed();
        Assert.SkipUnless(codes.Count > 0, Absent);
        foreach (var limit in CheckCatalogue.All.SelectMany(c => c.Sheet.Limits))
        {
            Assert.All(codes, code => Assert.DoesNotContain(code, limit.Source, StringComparison.OrdinalIgnoreCase));
            if (limit.Standing is Standing.Published or Standing.FromMemory)
                Assert.DoesNotContain(figures, f => f.Unit == limit.Unit && Math.Abs(f.Value - limit.Usual) < 1e-9);
        }
    }

    // The codes that the list of unconfirmed values names, and the figures with units of every line that gives one of them from memory.
    private static (List<string> Codes, List<(double Value, string Unit, string Said)> Figures) Unconfirmed()
    {
        if (Engineering() is not { } path)
            return ([], []);
        var lines = File.ReadAllLines(path);
        var list = lines.Single(l => l.StartsWith("**Do not print as code values**", StringComparison.Ordinal));
        var codes = Codes().Matches(list).Select(m => m.Value).ToList();
        var numbers = codes.Select(c => c.Split(' ', '/')[^1]).ToList();
        var tagged = lines.Where(l => l != list && l.Contains("[memory", StringComparison.Ordinal) && numbers.Exists(n => l.Contains(n, StringComparison.Ordinal)));
        var figures = tagged.SelectMany(l => Figures().Matches(l)).Select(m => (double.Parse(m.Groups["value"].Value, CultureInfo.InvariantCulture), Unit(m), m.Value));
        return (numbers, [.. figures.Distinct()]);
    }

    // Strengths follow the first one without their unit; ratios have none.
    private static string Unit(Match figure) => figure.Groups["unit"].Value is "MPa" || figure.Value.Contains(" / ", StringComparison.Ordinal) ? "N/mm²" : figure.Groups["unit"].Value;

    private static string? Engineering()
    {
        for (var folder = new DirectoryInfo(Repository.Root); folder is not null; folder = folder.Parent)
        {
            var path = Path.Combine(folder.FullName, "shared", "reference", "engineering.md");
            if (File.Exists(path))
                return path;
        }

        return null;
    }

    [GeneratedRegex(@"(EN|ANSI)[ /](NISO )?[A-Z]?[0-9][0-9.\-]*|BIFMA", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Codes();

    [GeneratedRegex(@"(?<value>[0-9]+(\.[0-9]+)?) ?(?<unit>kg/dm²|kg/dm³|MPa)|L/(?<value>[0-9]+)(?<unit>)|(?<value>[0-9]+\.[0-9])(?<unit>) / [0-9] [0-9]{3}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Figures();
}
