using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Nudges;
using Casewright.Engine.Tests.Verifying;
using Casewright.Model.Design;
using Casewright.Model.Files;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Schemes;

namespace Casewright.Engine.Tests.Nudges;

/// <summary>
/// The savings that a seasoned maker would find on the examples, each put a little out first, so that the arithmetic says what must come.
/// </summary>
public class ExampleNudgeTests
{
    // A plinth of 90 makes sides of 2584 − 60 − 90 = 2434, 4 over the 2430 that a sheet gives: every side is joined; the partition
    // between the dados is 2434 − 2 · 17.8 + 2 · 5.5 = 2409.4 and fits. 4 mm on the base and the left alcove is whole again.
    [Fact]
    public void A_base_raised_by_four_millimetres_takes_the_joints_out_of_an_alcove()
    {
        var job = With(Examples.Read("alcove-pair"), 0, r => r with { Base = r.Base with { Height = Mm(90) } });
        var nudge = Find(job, 2, n => n.Job.Runs[0].Base.Height == Mm(94));

        // Two sides.
        Assert.Equal(2, nudge.Splices);
        Assert.True(nudge is { Money: > 0, Hours: > 0 });
        Assert.Contains(nudge.Costs, c => c.Contains("4 mm higher", StringComparison.Ordinal));
    }

    // The same alcove from above: its crown laps 12, so the cases come down by 4 behind it and 8 are left. Nothing else is seen to change.
    [Fact]
    public void Cases_come_down_behind_the_lap_of_the_crown()
    {
        var job = With(Examples.Read("alcove-pair"), 0, r => r with { Base = r.Base with { Height = Mm(90) } });
        var nudge = Find(job, 2, n => n.Job.Runs[0].Head.CrownLap == Mm(8));
        Assert.Equal((2, Mm(64)), (nudge.Splices, nudge.Job.Runs[0].Head.Gap));
        Assert.Equal(["4 mm less height inside Left alcove"], nudge.Costs);
    }

    // A plinth of 80 makes sides of 2444, 14 over. The lap of 12 has 6 to give, so the crown must be 8 higher: 78, which laps 12 + 8 − 14 = 6 and
    // still reaches 2584. Its boards cost 19.00 · 78 / 70 = 21.17.
    [Fact]
    public void A_higher_crown_lets_the_cases_end_below_the_sheet()
    {
        var job = With(Examples.Read("alcove-pair"), 0, r => r with { Base = r.Base with { Height = Mm(80) } });
        var nudge = Find(job, 3, n => n.Change.StartsWith("crown of Left alcove 8 mm higher", StringComparison.Ordinal));
        var head = nudge.Job.Runs[0].Head;
        Assert.Equal((Mm(74), Mm(6), Mm(78)), (head.Gap, head.CrownLap, nudge.Job.Stock.Material(head.Crown!).BoardWidth));
        Assert.Equal(21.17m, nudge.Job.Stock.Boards.Single(b => b.Material == head.Crown).Price);
        Assert.Equal(2, nudge.Splices);
        Assert.True(JobFile.Read(JobFile.Write(nudge.Job)).Succeeded);

        // With a crown of 90 in the catalogue that one is taken, and laps 12 + 20 − 14 = 18.
        var crown = job.Stock.Material("crown-70") with { Id = "crown-90", Name = "Poplar crown 90 x 20", BoardWidth = Mm(90) };
        var board = job.Stock.Boards.Single(b => b.Material == "crown-70") with { Id = "crown-90-2400", Material = "crown-90" };
        var offered = job with { Stock = job.Stock with { Materials = job.Stock.Materials.Add(crown), Boards = job.Stock.Boards.Add(board) } };
        var other = Find(offered, 3, n => n.Job.Runs[0].Head.Crown == "crown-90");
        Assert.Equal(Mm(18), other.Job.Runs[0].Head.CrownLap);
    }

    // Strips of four: (1210 + 3) / 4 − 3 = 300.25 for sides, so with 8 of lipping 308. At 314 the sides are 306 and only three strips come
    // out of a sheet; 6 mm less deep gives the fourth back.
    [Fact]
    public void A_depth_just_over_the_rip_count_step_is_brought_under_it()
    {
        var job = Both(Examples.Read("alcove-pair"), r => r with { Depth = Mm(314) });
        var plan = Planner.Plan(job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!;
        var candidate = new NudgeCandidates(plan).All().First(c => c.Words.Contains("less deep", StringComparison.Ordinal));
        var sides = Planner.Plan(candidate.Job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!.Parts
            .Where(p => p.Run == "left" && p.Role == Model.Parts.PartRole.Side);
        Assert.All(sides, s => Assert.Equal(4, (Mm(1210) + Mm(3)) / (s.Width + Mm(3))));
    }

    // Fixed shelves of the left alcove are 504.3 + 11 and loose ones 504.3 long: four to a strip of 2430. Five would be (2430 + 3) / 5 − 3 =
    // 483.6: 20.7 a bay, so 21, and two bays make 42: 21 on each filler.
    [Fact]
    public void Fillers_a_little_wider_give_one_more_shelf_a_strip()
    {
        var plan = Planner.Plan(Examples.Read("alcove-pair"), null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!;
        var candidates = new NudgeCandidates(plan).All().Where(c => c.Words.StartsWith("fillers of Left alcove", StringComparison.Ordinal)).ToList();
        Assert.Contains(candidates, c => c.Job.Runs[0].Left.Filler == Mm(51) && c.Job.Runs[0].Right.Filler == Mm(51));
        var loose = Planner.Plan(candidates.First(c => c.Job.Runs[0].Left.Filler == Mm(51)).Job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!.Parts
            .Where(p => p.Run == "left" && p.Role == Model.Parts.PartRole.AdjustableShelf);
        Assert.All(loose, s => Assert.Equal(5, (Mm(2430) + Mm(3)) / (s.Length + Mm(3))));
    }

    // 18 in of display wall 15 1/2 over the sheet cannot be nudged away; whatever is found brings no stop.
    [Fact]
    public void No_nudge_brings_a_stop_and_none_is_told_twice()
    {
        var job = Examples.Read("display-wall");
        var found = Search(job, 6);
        var before = Stops(job);
        Assert.All(found, n => Assert.Empty(Stops(n.Job).Except(before)));
        Assert.Equal(found.Count, found.Select(n => n.Job).Distinct().Count());
        Assert.Equal(found.Count, found.DistinctBy(n => (n.Sheets, n.Splices, n.Hours, n.Days, n.Money, n.Costs)).Count());
    }

    // A promise that is kept to the day as stated: a change that finishes later would break it, and is not offered however much it saves.
    [Fact]
    public void A_change_that_breaks_a_stop_is_not_offered()
    {
        var job = Examples.Read("alcove-pair");
        var plan = Planner.Plan(job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!;
        var cheaper = plan with { Estimate = plan.Estimate! with { Net = plan.Estimate.Net - 500 } };
        var stopped = cheaper with { Findings = [new() { Check = "deadline", Severity = Severity.Stop, Subject = job.Name, Message = "late", Source = "", Standing = Standing.Arithmetic }, .. plan.Findings] };
        Assert.NotNull(NudgeSearch.Nudge(new("x", job), plan, cheaper));
        Assert.Null(NudgeSearch.Nudge(new("x", job), plan, stopped));
    }

    private static Nudge Find(Job job, int most, Func<Nudge, bool> wanted)
    {
        var found = Search(job, most);
        return Assert.Single(found, n => wanted(n));
    }

    private static IReadOnlyList<Nudge> Search(Job job, int most)
    {
        var outcome = NudgeSearch.Search(job, most, PlanningEffort.Quick, null, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value.Nudges;
    }

    private static IEnumerable<(string, string)> Stops(Job job) => Planner.Plan(job, null, PlanningEffort.Quick, TestContext.Current.CancellationToken).Plan!.Findings
        .Where(f => f.Severity == Severity.Stop).Select(f => (f.Check, f.Subject));

    private static Job With(Job job, int run, Func<Run, Run> change) =>
        job with { Runs = [.. job.Runs.Select((r, i) => i == run ? change(r) : r)] };

    private static Job Both(Job job, Func<Run, Run> change) => job with { Runs = [.. job.Runs.Select(change)] };

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
