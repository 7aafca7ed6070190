using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Nudges;
using Casewright.Engine.Tests.Layout;
using Casewright.Engine.Tests.Timeline;
using Casewright.Model.Findings;
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
        Assert.All(found.Nudges, n => Assert.True(n.Money >= 0 && (n.Money > 0 || n.Sheets > 0 || n.Splices > 0)));
        Assert.Equal(found, Search(Bookcases(2460, 300), 5));
    }

    // Four strips of 300.25 come out of 1210: (1210 + 3) / 4 - 3; of 305 three. The six sides, 2000 long, take a strip each. Top, bottom, a
    // fixed and two loose shelves of three cases are 15 pieces of 764 to 776, three to a strip of 2430: five strips. Eleven strips are four
    // sheets of three strips, or three sheets of four.
    [Fact]
    public void A_depth_at_a_rip_count_step_saves_a_sheet()
    {
        var found = Search(Bookcases(2000, 305), 3);
        var nudge = found.Nudges.FirstOrDefault(n => n.Change == "a 5 mm less deep");
        Assert.True(nudge is not null, string.Join('\n', found.Nudges.Select(n => n.Change)));
        Assert.True(nudge is { Sheets: 1, Money: >= 80 }, nudge.ToString());
        Assert.Contains("shelves of a 5 mm less deep", nudge.Costs);
    }

    // A shelf bends with the third power of its thickness: at 24 mm (18 / 24)^3 = 0.42 of what it does at 18.
    [Fact]
    public void A_thicker_material_that_mends_a_sagging_shelf_is_offered_although_it_costs_more()
    {
        var job = Bookcases(2000, 300);
        var run = job.Runs[0] with { Tiers = [new() { Interior = new() { Fixed = 2, LoadPerMetre = 150 } }] };
        var thick = job.Stock.Material("panel") with { Id = "panel-24", Name = "panel 24", Nominal = Mm(24), Measured = Mm(24) };
        var sheet = job.Stock.Sheets[0] with { Id = "p24", Material = "panel-24", Price = 120 };
        job = job with { Runs = [run], Stock = job.Stock with { Materials = job.Stock.Materials.Add(thick), Sheets = job.Stock.Sheets.Add(sheet) } };
        var sag = Planner.Plan(job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!.Findings.First(f => f is { Check: "shelf-sag", Severity: Severity.Stop });
        Assert.InRange(sag.Value!.Value / sag.Limit!.Value, 1, 2.3);

        var nudge = Search(job, 24).Nudges.First(n => n.Change == "panel 24 instead of panel in a");
        Assert.Contains(sag.Message, nudge.Mends);
        Assert.True(nudge.Money < 0);
        Assert.Contains(nudge.Costs, c => c.StartsWith("the heaviest case weighs", StringComparison.Ordinal));
    }

    // Saws, glue and floor of a job in inches are in inches: the sides of 96 in on 95 1/2 usable come down by a half.
    [Fact]
    public void A_job_in_inches_is_changed_by_fractions()
    {
        var run = SampleRuns.Plain(UnitSystem.Inches, SampleRuns.In(90), SampleRuns.In(96), SampleRuns.In(12)) with { Division = new() { Bays = 3, BaysPerCase = 1 } };
        var job = SampleRuns.Job(UnitSystem.Inches, run) with { StartOn = Monday, Shop = SampleShop.Job(2, Stations(3200, 3200)).Shop };
        job = job with { Shop = job.Shop with { Saw = job.Shop.Saw with { Kerf = SampleRuns.In(0.125m), EdgeTrim = SampleRuns.In(0.25m) } } };
        Assert.Contains("cases of a end 1/2 in lower", Search(job, 1).Nudges.Select(n => n.Change));
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
