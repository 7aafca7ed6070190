using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Splicing;
using Casewright.Engine.Tests.Layout;
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

    /// <summary>A crown of 5400 from boards of 4000: one joint, in the middle of an upright 18 thick that stands every 900.</summary>
    [Fact]
    public void A_crown_longer_than_its_boards_is_joined_over_an_upright()
    {
        var (job, casework) = TallJobs.Crowned();

        var joint = Assert.Single(Plan(job, casework).Splices);

        Assert.Equal(SampleRuns.Mm(9), SampleRuns.Mm(joint.Position.Millimetres % 900));
        Assert.Equal($"upright-{(int)joint.Position.Millimetres / 900}", joint.CoveredBy);
    }

    /// <summary>
    /// A desk top of 3000 on uprights at 0, 1000, 2000 and 2982, each 18 thick. A tenon reaches 22 into each piece and 5 more are kept,
    /// less than the 30 of the rule; a joint may therefore lie no further than 60 from an upright (and 1/8 of the length, 375, from an end).
    /// </summary>
    [Fact]
    public void A_level_part_is_joined_on_or_beside_an_upright()
    {
        var (job, casework) = TallJobs.Desk();
        var options = SplicingOptions.For(job, casework);
        Assert.True(options.Succeeded, string.Join("\n", options.Problems));
        var joints = options.Value.Materials.SelectMany(m => m.Demands).Single(d => d.Id == "top").Options.SelectMany(o => o.Joints).ToArray();

        Assert.NotEmpty(joints);
        Assert.All(joints, x => Assert.True((x >= SampleRuns.Mm(940) && x <= SampleRuns.Mm(1078)) || (x >= SampleRuns.Mm(1940) && x <= SampleRuns.Mm(2078)), $"{x}"));
        Plan(job, casework);
    }

    /// <summary>
    /// A strip of trim 20 m long from boards of 4 m needs 4 joints at least (5 · 4 = 20, and nothing is left for a kerf or trim);
    /// one of 40 m needs 9, more than the shop's 6.
    /// </summary>
    [Fact]
    public void A_part_of_many_pieces_is_joined_as_often_as_it_must_be_and_no_oftener_than_allowed()
    {
        var (job, casework) = TallJobs.Crowned(20_000);
        job = job with { Shop = job.Shop with { Splicing = job.Shop.Splicing with { MostJoints = 6, ShortestShare = 20 } } };
        var joints = Plan(job, casework).Splices.Count;
        Assert.InRange(joints, 4, 6);

        var (tooLong, casework40) = TallJobs.Crowned(40_000);
        tooLong = tooLong with { Shop = job.Shop };
        var outcome = CuttingStage.Plan(tooLong, casework40, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("shop.splicing", Assert.Single(outcome.Problems).Path);
    }

    private static Casework Laid(Job job)
    {
        var casework = LayoutStage.Lay(job);
        Assert.True(casework.Succeeded, string.Join("\n", casework.Problems));
        return casework.Value;
    }

    private static CutPlan Plan(Job job) => Plan(job, Laid(job));

    private static CutPlan Plan(Job job, Casework casework)
    {
        var outcome = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        var broken = PlanVerifier.Verify(job, casework, outcome.Value);
        Assert.True(broken.Count == 0, string.Join("\n", broken));
        return outcome.Value;
    }
}
