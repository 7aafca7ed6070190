using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Nudges;
using Casewright.Engine.Tests.Layout;
using Casewright.Engine.Tests.Timeline;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using static Casewright.Engine.Tests.Timeline.SampleShop;

namespace Casewright.Engine.Tests.Nudges;

public class NudgeSearchTests
{
    // Sides of 2460 on 2430 usable: six joints. A maker lowers the cases by the 30 that are over, and none is left.
    [Fact]
    public void The_few_millimetres_that_save_all_the_joints_are_found()
    {
        var found = Search(Bookcases(2460, 300), 3);
        var nudge = found.Nudges.FirstOrDefault(n => n.Change == "cases of a end 30 mm lower");
        Assert.True(nudge is not null, string.Join('\n', found.Nudges.Select(n => n.Change)));
        Assert.Equal(6, nudge.Splices);
        Assert.True(nudge.Money > 0 && nudge.Hours > 0);
        Assert.Equal(Mm(2430), nudge.Job.Runs[0].Head.Height);
    }

    // Three strips of 401.3 or four of 300.25 come out of 1210 usable with 3 mm kerf: (1210 + 3) / 4 - 3. Sides 305 deep give three.
    [Fact]
    public void A_depth_just_over_a_rip_count_step_is_tried()
    {
        var job = Bookcases(2000, 305);
        var plan = Planner.Plan(job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan;
        Assert.NotNull(plan);
        var deepest = plan.Parts.Where(p => p.Role == Model.Parts.PartRole.Side).Max(p => p.Width);
        var candidate = new NudgeCandidates(plan).All().First(c => c.Words.Contains("less deep", StringComparison.Ordinal));
        var less = job.Runs[0].Depth - candidate.Job.Runs[0].Depth;
        Assert.Equal((4, 3), ((Mm(1213) / (deepest - less + Mm(3))), (Mm(1213) / (deepest + Mm(3)))));
        Assert.True(less - Mm(1) < deepest - Mm(300.25m));
    }

    [Fact]
    public void Nudges_are_ranked_bounded_and_folded()
    {
        var found = Search(Bookcases(2460, 300), 5);
        Assert.InRange(found.Tried, 1, 5);
        Assert.Equal(found.Nudges.OrderByDescending(n => n.Money), found.Nudges);
        Assert.Equal(found.Nudges.Count, found.Nudges.DistinctBy(n => (n.Sheets, n.Splices, n.Hours, n.Days, n.Money, n.Costs)).Count());
        Assert.All(found.Nudges, n => Assert.True(n.Money > 0 || n.Sheets > 0));
        Assert.Equal(found, Search(Bookcases(2460, 300), 5));
    }

    private static NudgeList Search(Job job, int most)
    {
        var outcome = NudgeSearch.Search(job, most, PlanningEffort.Quick, null, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }

    private static Job Bookcases(int height, int depth)
    {
        var run = SampleRuns.Plain(UnitSystem.Millimetres, Mm(2400), Mm(height), Mm(depth)) with { Division = new() { Bays = 3, BaysPerCase = 1 } };
        return SampleRuns.Job(UnitSystem.Millimetres, run) with { StartOn = Monday, Shop = SampleShop.Job(2, Stations(3200, 3200)).Shop };
    }
}
