using Casewright.Engine.Checks;
using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Files;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Checks;

public class CheckStageTests
{
    private static readonly int[] Order = [(int)Severity.Stop, (int)Severity.Caution, (int)Severity.NotChecked, (int)Severity.Pass];

    [Fact]
    public void Ids_are_plain_words_and_unique()
    {
        var ids = CheckCatalogue.All.Select(c => c.Sheet.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Matches("^[a-z]+(-[a-z]+)*$", id));
        Assert.All(CheckCatalogue.All, c => Assert.NotEmpty(c.Sheet.LooksAt));
        Assert.All(CheckCatalogue.All, c => Assert.NotEmpty(c.Sheet.Source));
    }

    [Fact]
    public void Defaults_of_limits_are_the_usual_values()
    {
        var limits = new Casewright.Model.Shop.CheckLimits();
        foreach (var limit in CheckCatalogue.All.SelectMany(c => c.Sheet.Limits))
            Assert.Equal(limit.Usual, limit.Setting(limits), 1e-3 * Math.Abs(limit.Usual));
    }

    [Fact]
    public void Every_check_speaks_stops_first_and_the_same_each_time()
    {
        var bookcase = new Bookcase { Bays = 2, Width = 1854, Splices = [Bookcase.TenonSplice("L", 1000), Bookcase.TenonSplice("F1.1", 456)] };
        var findings = CheckStage.Run(bookcase.Job, bookcase.Casework, bookcase.Plan);
        Assert.Equal(CheckCatalogue.All.Select(c => c.Sheet.Id).Order(), findings.Select(f => f.Check).Distinct().Order());
        Assert.Equal(findings.Select(f => Array.IndexOf(Order, (int)f.Severity)).Order(), findings.Select(f => Array.IndexOf(Order, (int)f.Severity)));
        Assert.Equal(findings, CheckStage.Run(bookcase.Job, bookcase.Casework, bookcase.Plan));
    }

    [Fact]
    public void Nothing_but_a_pass_goes_without_advice_and_every_finding_ends_its_sentence()
    {
        var bookcase = new Bookcase { Load = null, Bays = 2, Width = 1854, Thickness = 12, Splices = [Bookcase.TenonSplice("L", 1190), Bookcase.TenonSplice("F1.1", 456)] };
        foreach (var finding in CheckStage.Run(bookcase.Job, bookcase.Casework, bookcase.Plan))
        {
            Assert.Equal(finding.Severity == Severity.Pass, finding.Advice.Length == 0);
            Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
            Assert.DoesNotContain("  ", finding.Message + finding.Advice, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_unconfirmed_code_is_named_as_a_source()
    {
        // Not confirmed, so never printed as code values: EN 16121, EN 14749, Z39.73, BIFMA, EN 12369, A208.
        var text = string.Join("\n", CheckCatalogue.All.SelectMany(c => c.Sheet.Limits.Select(l => l.Source).Append(c.Sheet.Source)));
        foreach (var code in (string[])["16121", "14749", "Z39.73", "BIFMA", "12369", "A208"])
            Assert.DoesNotContain(code, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Inches)]
    public void The_starter_job_is_checked_from_its_file(UnitSystem units)
    {
        var job = JobFile.Read(StarterJob.Text(units));
        Assert.True(job.Succeeded);
        var casework = LayoutStage.Lay(job.Value);
        Assert.True(casework.Succeeded);
        var findings = CheckStage.Run(job.Value, casework.Value, null);
        var shelves = findings.Where(f => f.Check == "shelf-sag" && f.Value is not null).ToList();
        Assert.NotEmpty(shelves);

        // Bays of about 700 mm: a shelf of 18 mm birch sags 1 mm or so; nothing in the file's layout is misread by a factor.
        Assert.All(shelves, f => Assert.InRange(f.Value!.Value, 0.2, 3));
        Assert.DoesNotContain(findings, f => f.Check is "dado-web" or "pin-holes-meet" or "handed-sides" or "run-in-tightest-width" or "edging-deducted" && f.Severity == Severity.Stop);
    }

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Inches)]
    public void The_second_look_agrees_with_the_planner_about_where_the_starter_is_spliced(UnitSystem units)
    {
        var job = JobFile.Read(StarterJob.Text(units)).Value!;
        var plan = Planner.Plan(job, cancellation: TestContext.Current.CancellationToken).Plan!;
        var findings = CheckStage.Run(job, new(plan.Cases, plan.Parts, []), plan.Cutting);
        Assert.NotEmpty(plan.Cutting.Splices);
        foreach (var id in (string[])["splice-clear-of-dado", "splice-clear-of-pins", "splice-clear-of-hardware", "splice-access-face", "back-joint", "tenon-walls", "splice-stub", "part-over-sheet", "grain-direction"])
            Assert.All(findings.Where(f => f.Check == id), f => Assert.True(f.Severity == Severity.Pass, $"{f.Check} {f.Subject}: {f.Message}"));

        // Sides 2.6 m long and joined with tenons are not to be carried flat.
        Assert.Contains(findings, f => f.Check == "splice-handling" && f.Severity == Severity.Caution && f.Advice.Contains("on edge", StringComparison.Ordinal));
    }
}
