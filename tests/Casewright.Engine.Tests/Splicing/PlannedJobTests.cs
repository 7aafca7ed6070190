using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Verifying;
using Casewright.Engine.Verifying;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Jobs planned from the layout on, each plan proven by the verifier, which shares no code with the planner.</summary>
public class PlannedJobTests
{
    [Fact]
    public void A_case_laid_out_by_hand_is_planned_as_cheaply_as_by_hand()
    {
        var plan = Plan(GoodPlan.GoodJob, GoodPlan.GoodCasework);

        // The hand plan costs 224.50: 2 + 1 sheets bought, 2 boards, 82 min at 45 an hour.
        Assert.True(plan.Bounds.Cost <= 224.50m, $"{plan.Bounds.Cost}");
        Assert.True(plan.Bounds.LowerBound <= plan.Bounds.Cost);
    }

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Inches)]
    public void Tall_cases_are_planned_in_both_unit_systems(UnitSystem units)
    {
        var plan = Plan(TallJobs.Wall(units, cases: 3));

        Assert.NotEmpty(plan.Splices);
    }

    [Fact]
    public void The_same_job_gives_the_same_plan()
    {
        var job = TallJobs.Wall(UnitSystem.Millimetres, cases: 2);

        Assert.Equal(Plan(job), Plan(job));
    }

    private static CutPlan Plan(Job job)
    {
        var casework = LayoutStage.Lay(job);
        Assert.True(casework.Succeeded, string.Join("\n", casework.Problems));
        return Plan(job, casework.Value);
    }

    private static CutPlan Plan(Job job, Casework casework)
    {
        var outcome = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        Assert.Equal("", string.Join("\n", PlanVerifier.Verify(job, casework, outcome.Value)));
        return outcome.Value;
    }
}
