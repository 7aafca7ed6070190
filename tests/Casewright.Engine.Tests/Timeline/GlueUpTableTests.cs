using Casewright.Engine.Timeline;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;
using static Casewright.Engine.Tests.Timeline.SampleShop;

namespace Casewright.Engine.Tests.Timeline;

/// <summary>
/// Glue-up tables worked by hand. Times of common practice, no source: setting up 25, per joint squaring and mortising 10, gluing 7,
/// unclamping 4, flushing 5; clamps 60 minutes and cure 24 hours at 20 °C. Work from 8:00 to 12:00 and 13:00 to 15:30, from Monday.
/// </summary>
public class GlueUpTableTests
{
    // Three parts, two stations, one person. Setting up 8:00 to 8:25; 3 x 10 to 8:55. A on bench 1 8:55 to 9:02, clamped to 10:02; B on
    // bench 2 9:02 to 9:09, clamped to 10:09. A off 10:02 to 10:06; C on bench 1 10:06 to 10:13, clamped to 11:13; B off 10:13 to 10:17;
    // C off 11:13 to 11:17. C has cured at 10:13 on Tuesday. Flushing 3 x 5, one setting 3, six crosscuts of 1.2: 25.2, so 26 minutes: 10:39.
    [Fact]
    public void Three_parts_on_two_stations()
    {
        var schedule = Make(Job(1, Stations(3200, 3200)), 3);
        Assert.Equal(
            [
                "splice-setup/tenons/panel 2 08:00-08:25",
                "splice-prepare/tenons/panel/lot1 2 08:25-08:55",
                "glue/A 2 08:55-09:02 bench1 to 10:06",
                "glue/B 2 09:02-09:09 bench2 to 10:17",
                "unclamp/A 2 10:02-10:06",
                "glue/C 2 10:06-10:13 bench1 to 11:17",
                "unclamp/B 2 10:13-10:17",
                "unclamp/C 2 11:13-11:17",
                "trim/lot1 3 10:13-10:39",
            ],
            schedule.Tasks.Select(Line));
        Assert.True(schedule.Proven);
        Assert.Equal(schedule.Finish, schedule.LowerBound);

        // Stations: 71 + 75 + 71 minutes of 390.
        Assert.Equal(0.56m, schedule.StationDays);
    }

    // At 15 °C everything takes half as long again: clamps 90 minutes, cure 36 hours. A 8:55 to 9:02, off at 10:32; C 10:36 to 10:43, its
    // clamps are due at 12:13, in the break: off at 13:00. Cured on Tuesday at 22:43: trimmed on Wednesday at 8:00 to 8:26.
    [Fact]
    public void Cold_glue_waits_into_the_break_and_over_the_night()
    {
        var schedule = Make(Job(1, Stations(3200, 3200), celsius: 15), 3);
        Assert.Equal(["glue/A 2 08:55-09:02 bench1 to 10:36", "glue/B 2 09:02-09:09 bench2 to 10:47", "glue/C 2 10:36-10:43 bench1 to 13:04"], schedule.Tasks.Where(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)).Select(Line));
        Assert.Equal("trim/lot1 4 08:00-08:26", Line(schedule.Tasks[^1]));
    }

    // Draw connectors hold the joint: 28 minutes a joint without unclamping, so 28/22 of each step. Setting up 25 + 15: 8:40; 3 x 12.73 is
    // 38.2, so 39: 9:19; then 8.9, so 9 minutes each on the one bench, which is free again at once.
    [Fact]
    public void Connectors_free_the_station()
    {
        var schedule = Make(Job(1, Stations(3200)), 3, method: SpliceMethod.TenonsAndConnectors, holding: HoldingMethod.DrawConnectors);
        Assert.Equal(
            ["glue/A 2 09:19-09:28 bench1 to 09:28", "glue/B 2 09:28-09:37 bench1 to 09:37", "glue/C 2 09:37-09:46 bench1 to 09:46"],
            schedule.Tasks.Where(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)).Select(Line));
    }

    // The rule of thumb for 15 joints on 2 stations with 10 minutes loading and 5 unloading: 8 rounds of 75 minutes (common practice, no
    // source). One person serves both: rounds of the benches overlap, and the last joint comes off after 8 rounds.
    [Fact]
    public void Fifteen_joints_take_eight_rounds()
    {
        var job = Job(1, Stations(3200, 3200));
        var own = new StandardTimes { Own = [new() { Operation = Operation.PrepareSplice, Minutes = 6 }, new() { Operation = Operation.GlueSplice, Minutes = 10 }, new() { Operation = Operation.UnclampSplice, Minutes = 5 }, new() { Operation = Operation.FlushSplice, Minutes = 5 }] };
        job = job with { Shop = job.Shop with { Times = own, Hours = new() { Day = [new(new(0, 0), new(23, 59))] } } };
        var schedule = Make(job, 15);
        var loads = schedule.Tasks.Where(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)).ToList();
        Assert.Equal(8, loads.Count(t => t.Station == loads[0].Station));
        var first = loads.Where(t => t.Station == loads[0].Station).ToList();
        Assert.Equal(TimeSpan.FromMinutes(8 * 75), first[^1].StationUntil - first[0].Start);
    }

    // Two joints take 14 minutes, within 6 + 12 minutes of open and closed time; three would take 21.
    [Theory]
    [InlineData(1, "A B C")]
    [InlineData(2, "A+B C")]
    [InlineData(3, "A+B C")]
    public void A_loading_does_not_outrun_the_glue(int places, string loads)
    {
        var job = Job(1, [Stations(3200)[0] with { Places = places }]);
        Assert.Equal(loads, string.Join(' ', Make(job, 3).Tasks.Where(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)).Select(t => t.Id[5..])));
    }

    // Three joints in one part take 21 minutes, more than the 18 that the glue gives: one after the other, each handled after 3 hours.
    // Setting up to 8:25, 3 x 10 to 8:55, first glue to 9:02; not before 12:02: 13:00 to 13:07; not before 16:07: Tuesday 8:00.
    [Fact]
    public void A_part_with_too_many_joints_is_glued_in_turns()
    {
        var schedule = Make(Job(1, Stations(3200)), 1, joints: 3);
        Assert.Equal(
            ["glue/A/1 2 08:55-09:02", "glue/A/2 2 13:00-13:07", "glue/A/3 3 08:00-08:07"],
            schedule.Tasks.Where(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)).Select(t => Line(t).Split(" bench")[0]));
    }

    // Common practice, no source: factor 0.7 at 27 °C, 1 at 20, 1.5 at 15, 2.2 at 10; between them in proportion: 17.5 °C gives 1.25.
    [Theory]
    [InlineData(10, 132, 12)]
    [InlineData(15, 90, 18)]
    [InlineData(17.5, 75, 18)]
    [InlineData(20, 60, 18)]
    [InlineData(23.5, 51, 15)]
    [InlineData(27, 42, 12)]
    [InlineData(35, 42, 12)]
    public void Clamp_and_working_time_follow_the_temperature(double celsius, long clamp, long working)
    {
        var times = GlueTimes.At(new(), celsius);
        Assert.Equal(clamp, times.Clamp);
        Assert.Equal(celsius < 20 ? 18 : working, times.Working);
    }

    [Fact]
    public void Glue_below_its_limit_stops_the_timetable()
    {
        var problem = ProblemOf(Job(1, Stations(3200), celsius: 8.5), 1);
        Assert.Equal(("shop.temperature", "8.5 °C"), (problem.Path, problem.Found));
        Assert.Contains("10 °C", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_station_shorter_than_the_part_is_named()
    {
        var problem = ProblemOf(Job(1, Stations(2400)), 1);
        Assert.Equal(("shop.stations", "stations up to 2400 mm", "a station of at least 2500 mm"), (problem.Path, problem.Found, problem.Accepted));
    }

    [Fact]
    public void Nobody_to_do_the_work_is_a_problem() => Assert.Equal("shop.people", ProblemOf(Job(0, Stations(3200)), 1).Path);

    [Fact]
    public void A_tall_glue_up_with_end_clamps_is_not_for_one_person()
    {
        // Gluing up on Monday and trimming on Tuesday.
        var finding = Make(Job(1, Stations(3200)), 1, length: 2700).Findings.Single();
        Assert.Equal(("second-pair-of-hands", Severity.Stop, 2.0), (finding.Check, finding.Severity, finding.Value));
        Assert.Contains("2026-03-02, 2026-03-03", finding.Advice, StringComparison.Ordinal);

        // With a second person the clamps take both (7 minutes of work are 7 / 1.7 = 4.1, so 5); against stops one closes the joint alone.
        var clamps = Make(Job(2, Stations(3200)), 1, length: 2700).Tasks.Single(t => t.Id == "glue/A");
        Assert.Equal((2, 5), (clamps.Hands, clamps.Minutes));
        var stops = Make(Job(2, Stations(3200)), 1, length: 2700, holding: HoldingMethod.SpreaderAgainstStop).Tasks.Single(t => t.Id == "glue/A");
        Assert.Equal((1, 7), (stops.Hands, stops.Minutes));
    }

    [Fact]
    public void Too_few_clamps_are_named()
    {
        var job = Job(1, Stations(3200));
        job = job with { Shop = job.Shop with { Clamps = [new(ClampKind.LongBar, 1)] } };
        Assert.Equal(("shop.clamps", "1", "2 or more"), ProblemOf(job, 1) is var p ? (p.Path, p.Found, p.Accepted) : default);
    }

    [Fact]
    public void Clamps_that_nobody_counted_limit_nothing_but_are_mentioned()
    {
        var job = Job(1, Stations(3200), celsius: null);
        var schedule = Make(job with { Shop = job.Shop with { Clamps = [] } }, 1);
        Assert.Equal(["shop-temperature", "clamps-counted"], schedule.Findings.Select(f => f.Check));
    }

    // Two long bar clamps for two benches: the second glue-up waits for the first one's clamps. Two joints are prepared by 8:45; A is glued
    // 8:45 to 8:52 and comes off 9:52 to 9:56; then B.
    [Fact]
    public void Clamps_can_be_scarcer_than_stations()
    {
        var job = Job(1, Stations(3200, 3200));
        job = job with { Shop = job.Shop with { Clamps = [new(ClampKind.LongBar, 2)] } };
        Assert.StartsWith("glue/B 2 09:56-10:03", Line(Make(job, 2).Tasks.Single(t => t.Id == "glue/B")), StringComparison.Ordinal);
    }

    private static Schedule Make(
        Job job,
        int count,
        int length = 2500,
        SpliceMethod method = SpliceMethod.LooseTenons,
        HoldingMethod holding = HoldingMethod.EndClamps,
        int joints = 1)
    {
        var outcome = Run(job, count, length, method, holding, joints);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }

    private static Problem ProblemOf(Job job, int count)
    {
        var outcome = Run(job, count, 2500, SpliceMethod.LooseTenons, HoldingMethod.EndClamps, 1);
        return Assert.Single(outcome.Problems.GroupBy(p => p.Path, StringComparer.Ordinal).Select(g => g.First()));
    }

    private static Outcome<Schedule> Run(Job job, int count, int length, SpliceMethod method, HoldingMethod holding, int joints)
    {
        var (casework, cutting) = Splices(count, length, method, holding, joints);
        return TimelineStage.Schedule(job, casework, cutting, null, new() { Work = 20, LevelWork = 5 }, null, TestContext.Current.CancellationToken);
    }

    private static string Line(ScheduledTask task) =>
        $"{task.Id} {task.Start:%d HH:mm}-{task.Finish:HH:mm}" + (task.Station is null ? "" : $" {task.Station} to {task.StationUntil:HH:mm}");
}
