using Casewright.Engine.Checks;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>A finding's advice, applied as its words say, makes the check pass: for every check, in both units.</summary>
public class AdviceLawTests
{
    private static readonly IReadOnlyList<AdviceCase> Cases = [.. ShelfAdvice.All, .. SpliceAdviceCases.All, .. BuildingAdvice.All, .. OtherAdvice.All];

    public static TheoryData<string, UnitSystem> Named()
    {
        var data = new TheoryData<string, UnitSystem>();
        foreach (var each in Cases)
        {
            data.Add($"{each.Check}: {each.Of}", UnitSystem.Millimetres);
            data.Add($"{each.Check}: {each.Of}", UnitSystem.Inches);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Named))]
    public void Advice_applied_makes_the_check_pass(string name, UnitSystem units)
    {
        var one = Cases.Single(c => $"{c.Check}: {c.Of}" == name);
        var failing = Of(one.Check, one.Failing with { Units = units }).Where(f => f.Subject == one.Subject && Fails(f)).ToList();
        Assert.True(failing.Count > 0, $"{one.Subject} does not fail: " + string.Join(" | ", Of(one.Check, one.Failing with { Units = units }).Select(f => $"{f.Subject} {f.Severity} {f.Message}")));
        var told = new Told(failing[0], units);
        var mended = one.Mended(told).Select(b => b with { Units = units }).ToList();
        Assert.True(mended.Count > 0, "No way was found in: " + told.Advice);
        foreach (var after in mended.Select((b, i) => (Bookcase: b, Way: i)))
        {
            var worst = Of(one.Check, after.Bookcase).Where(f => f.Subject == one.Subject).Select(f => f.Severity).DefaultIfEmpty(Severity.Pass).Max();
            Assert.True(worst == one.After, $"way {after.Way} of '{told.Advice}' gives: " + string.Join(" | ", Of(one.Check, after.Bookcase).Where(f => f.Subject == one.Subject).Select(f => f.Message)));
        }
    }

    [Fact]
    public void What_the_job_cannot_record_names_the_act_and_the_reason()
    {
        foreach (var act in ShopActs.All)
        {
            var finding = Of(act.Check, act.Failing).Single(f => f.Subject == act.Subject);
            Assert.True(finding.Severity == Severity.Caution, $"{act.Check}: {finding.Severity} {finding.Message}");
            Assert.Contains(act.Act, finding.Advice, StringComparison.Ordinal);
            Assert.NotEmpty(act.Why);
        }
    }

    [Fact]
    public void Every_check_is_held_to_its_advice_or_says_why_not()
    {
        var held = Cases.Select(c => c.Check).Concat(ShopActs.All.Select(a => a.Check)).Concat(ShopActs.NeverFail.Keys).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(CheckCatalogue.All.Select(c => c.Sheet.Id).Order(StringComparer.Ordinal), held.Order(StringComparer.Ordinal));
    }

    private static bool Fails(Finding finding) => finding.Severity is Severity.Stop or Severity.Caution;

    private static List<Finding> Of(string check, Bookcase bookcase) => [.. CheckCatalogue.All.Single(c => c.Sheet.Id == check).Run(bookcase.Context)];
}
