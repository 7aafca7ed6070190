using Casewright.Bench.Scheduling;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Model.Collections;
using CsCheck;

namespace Casewright.Engine.Tests.Timeline.Scheduling;

public class SchedulingSolverTests
{
    private static readonly SchedulingEffort Effort = new() { Work = 5, LevelWork = 0 };

    // Two days of 8:00 to 12:00 and 13:00 to 15:30, then two more.
    private static WorkAxis Days(int count) => new(Enumerable.Range(0, count).SelectMany(d =>
        new[] { new WorkStretch((d * 1440) + 480, (d * 1440) + 720), new WorkStretch((d * 1440) + 780, (d * 1440) + 930) }));

    // Optimal makespans: PSPLIB table j30opt (Demeulemeester and Herroelen); instances of Kolisch and Sprecher, EJOR 1997.
    [Theory]
    [InlineData("j301_1", 43)]
    [InlineData("j3010_1", 42)]
    [InlineData("j3025_1", 93)]
    [InlineData("j3029_1", 85)]
    [InlineData("j3041_1", 86)]
    [InlineData("j3045_1", 82)]
    public void Published_optima_are_found_and_proven(string instance, long optimum)
    {
        var file = Path.Combine(ReferenceFolder.Require("rcpsp"), "j30", instance + ".sm");
        var problem = ProjectFile.Read(File.ReadAllText(file));
        var solution = Solve(problem, Effort with { Work = 30 });
        Assert.Equal((optimum, optimum, true), (solution.Makespan, solution.LowerBound, solution.Proven));
    }

    // Glue at 8:00 takes 10 minutes; an hour under clamps ends at 9:10; unloading takes 5: 9:15. The one station is then loaded again.
    // A second part: 9:15 to 9:25, clamped until 10:25, off at 10:30. Working minutes from 8:00: 150.
    [Fact]
    public void A_station_is_kept_from_loading_to_unloading()
    {
        var solution = Solve(TwoGlueUps(stations: 1, people: 1, lag: 60));
        Assert.Equal(150, solution.Makespan);
        Assert.True(solution.Proven);
    }

    // With two stations one person loads the second at 8:10 to 8:20; the first comes off at 9:10 to 9:15, the second at 9:20 to 9:25.
    [Fact]
    public void Clamps_work_while_the_person_loads_the_next_station() => Assert.Equal(85, Solve(TwoGlueUps(2, 1, 60)).Makespan);

    // A cure of 20 hours from 8:10 ends at 4:10 in the night: unloaded at 8:00 the next morning, which is working minute 390.
    // One station: the second part is loaded at 8:05 to 8:15 and comes off at 8:00 of the third day, 780 to 785.
    [Fact]
    public void A_cure_runs_on_through_the_night() => Assert.Equal(785, Solve(TwoGlueUps(1, 1, 20 * 60)).Makespan);

    // 200 minutes begun at 8:00 leave 40 until noon. An unbroken 60 must wait for 13:00 (minute 240), a breakable one goes on over the break.
    [Theory]
    [InlineData(true, 260)]
    [InlineData(false, 300)]
    public void Unbroken_work_does_not_straddle_a_break(bool breakable, long finish)
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(2),
            Tasks = [new() { Id = "saw", Duration = 200 }, new() { Id = "glue", Duration = 60, Breakable = breakable }],
            Resources = [],
            Links = [new(0, 1)],
        };
        Assert.Equal(finish, Solve(problem).Makespan);
    }

    // Spreading takes 230 minutes, and the clamps, 15 minutes without interruption, must be begun within 30 minutes of clock time. Begun at
    // 8:00 it ends at 11:50: 10 minutes are too few before noon, and 13:00 is 70 minutes away. An end at 12:00 is still an hour from 13:00.
    // So the spreading must end after the break, at 13:01 at the earliest (working minute 241): it begins at minute 11, at 8:11.
    [Fact]
    public void Open_time_is_a_most_that_work_must_keep()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(2),
            Tasks = [new() { Id = "spread", Duration = 230 }, new() { Id = "clamp", Duration = 15, Breakable = false }],
            Resources = [],
            Links = [new(0, 1, 0, 30)],
        };
        var solution = Solve(problem);
        Assert.Equal((11, 241, 256), (solution.Tasks[0].Start, solution.Tasks[1].Start, solution.Makespan));
    }

    [Fact]
    public void What_cannot_be_is_proven_so()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(2),
            Tasks = [new() { Id = "spread", Duration = 10 }, new() { Id = "clamp", Duration = 10, Release = 2000 }],
            Resources = [],
            Links = [new(0, 1, 120, 60)],
        };
        Assert.Equal(new SchedulingOutcome(null, true), SchedulingSolver.Solve(problem, Effort, null, TestContext.Current.CancellationToken));
    }

    // Two people away on the second day, half an hour of work left over from the first: it waits for the third day.
    [Fact]
    public void Nobody_works_on_a_day_off()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(3),
            Tasks = [new() { Id = "a", Duration = 390, Crew = [new(1, [0])] }, new() { Id = "b", Duration = 30, Crew = [new(1, [0])] }],
            Resources = [new("people", 1) { Away = [new(1440, 2880)] }],
        };
        Assert.Equal(780 + 30, Solve(problem).Makespan);
    }

    // The lead needs the one joiner; the second pair of hands may be either. Two such tasks of 60 minutes cannot overlap.
    [Fact]
    public void A_second_pair_of_hands_may_be_anybodys_but_not_the_same()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(1),
            Tasks = [new() { Id = "a", Duration = 60, Crew = [new(1, [0]), new(1, [0, 1])] }, new() { Id = "b", Duration = 60, Crew = [new(1, [0, 1])] }],
            Resources = [new("joiner", 1), new("helper", 1)],
        };
        var solution = Solve(problem);
        Assert.Equal(120, solution.Makespan);
        Assert.Equal([new CrewShare(0, 1), new CrewShare(1, 1)], solution.Tasks[0].Crew);
    }

    // Six tasks of 60 minutes behind a drying time that fills the second day: the finish is the same however the first day's work lies,
    // and the even load spreads the free tasks over both days: 180 minutes a day at best, instead of 360 and 0.
    [Fact]
    public void Load_is_evened_without_moving_the_finish()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(3),
            Tasks =
            [
                .. Enumerable.Range(0, 6).Select(i => new SchedulingTask { Id = "t" + i, Duration = 60, Crew = [new(1, [0])] }),
                new() { Id = "last", Duration = 10, Release = 2880, Crew = [new(1, [0])] },
            ],
            Resources = [new("people", 2)],
            DayStarts = [0, 390, 780],
        };
        var solution = Solve(problem, Effort with { LevelWork = 5 });
        Assert.Equal(790, solution.Makespan);
        var loads = new[] { 0L, 390, 780 }.Select(d => solution.Tasks.Where(t => t.Start >= d && t.Start < d + 390).Sum(t => t.End - t.Start)).ToArray();

        // The third day holds the 10 minutes that cannot be earlier; there is no room beside it before the finish.
        Assert.Equal([180, 180, 10], loads);
    }

    [Fact]
    public void Random_problems_give_schedules_that_keep_every_rule_and_repeat()
    {
        RandomProblem.Sample(
            problem =>
            {
                var effort = Effort with { Work = 0.5, LevelWork = 0.2 };
                var outcome = SchedulingSolver.Solve(problem, effort, null, TestContext.Current.CancellationToken);
                Assert.Equal(outcome, SchedulingSolver.Solve(problem, effort, null, TestContext.Current.CancellationToken));

                // Some have no schedule: a task may need the station that the hold ending with it still keeps.
                if (outcome.Infeasible)
                {
                    Assert.Null(ListScheduler.Schedule(problem));
                    return;
                }

                Assert.NotNull(outcome.Solution);
                Assert.Empty(ScheduleVerifier.Check(problem, outcome.Solution));
                Assert.True(outcome.Solution.LowerBound <= outcome.Solution.Makespan);
                Assert.InRange(WorkBound.Of(problem), 0, outcome.Solution.Makespan);
            },
            iter: 40,
            threads: 1);
    }

    // Stock comes at 8:00 of the second day, working minute 390. Six tasks of 60 minutes are 180
    // for two people; then 30 of one of them: 390 + 180 + 30.
    [Fact]
    public void Work_behind_a_late_delivery_bounds_the_finish()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(4),
            Tasks =
            [
                .. Enumerable.Range(0, 6).Select(i => new SchedulingTask { Id = "t" + i, Duration = 60, Release = 1440 + 480, Crew = [new(1, [0])] }),
                new() { Id = "last", Duration = 30, Crew = [new(1, [0])] },
            ],
            Resources = [new("people", 2)],
            Links = [.. Enumerable.Range(0, 6).Select(i => new TaskLink(i, 6))],
        };
        Assert.Equal(600, WorkBound.Of(problem));
        Assert.Equal(600, Solve(problem).Makespan);
    }

    [Fact]
    public void The_list_schedule_keeps_every_rule() => RandomProblem.Sample(
        problem =>
        {
            if (ListScheduler.Schedule(problem) is { } first)
                Assert.Empty(ScheduleVerifier.Check(problem, first));
        },
        iter: 300);

    // Floor for two cases, kept from the assembly until the lot is carried out; the cases of the second lot take longer, so their chains are
    // the longer ones: a and b 60 and 10, c and d 100 each, 10 to carry a lot out. Taking the longest first, c and d would stand on all the
    // floor for ever, for their lot goes after the first. By hand: a to 60, carried out at 70, c and d to 170, carried out at 180.
    [Fact]
    public void The_lot_that_goes_first_has_the_floor_first()
    {
        var problem = new SchedulingProblem
        {
            Axis = Days(3),
            Tasks = [.. new[] { ("a", 60), ("b", 10), ("c", 100), ("d", 100), ("out1", 10), ("out2", 10) }.Select(t => new SchedulingTask { Id = t.Item1, Duration = t.Item2 })],
            Resources = [new("floor", 2)],
            Holds = [new(0, 4, 1, [0]), new(1, 4, 1, [0]), new(2, 5, 1, [0]), new(3, 5, 1, [0])],
            Links = [new(0, 4), new(1, 4), new(2, 5), new(3, 5), new(4, 5)],
        };
        Assert.Equal(180, ListScheduler.Schedule(problem)?.Makespan);
        Assert.Equal(180, Solve(problem).Makespan);
    }

    [Fact]
    public void A_search_called_off_keeps_the_first_answer()
    {
        using var off = new CancellationTokenSource();
        off.Cancel();
        var outcome = SchedulingSolver.Solve(TwoGlueUps(1, 1, 60), Effort, null, off.Token);
        Assert.NotNull(outcome.Solution);
        Assert.False(outcome.Solution.Proven);
    }

    private static readonly Gen<SchedulingProblem> RandomProblem =
        from count in Gen.Int[2, 9]
        from durations in Gen.Long[0, 120].Array[count]
        from breakable in Gen.Bool.Array[count]
        from hands in Gen.Int[0, 2].Array[count]
        from lags in Gen.Long[0, 900].Array[count]
        from before in Gen.Int[0, 100].Array[count]
        from releases in Gen.Long[0, 2000].Array[count]
        from people in Gen.Int[2, 3]
        select new SchedulingProblem
        {
            Axis = Days(40),
            Tasks = Enumerable.Range(0, count).Select(t => new SchedulingTask
            {
                Id = "t" + t,
                Duration = durations[t],
                Breakable = breakable[t],
                Release = releases[t],
                Crew = hands[t] switch { 0 => [], 1 => [new(1, [0, 1])], _ => [new(1, [0]), new(1, [0, 1])] },
            }).ToValueList(),
            Resources = [new("joiners", people - 1), new("helpers", 1) { Away = [new(1440, 2880)] }, new("short station", 1), new("long station", 1)],
            Links = Enumerable.Range(1, count - 1).Select(t => new TaskLink(before[t] % t, t, lags[t])).ToValueList(),
            Holds = Enumerable.Range(1, count - 1).Where(t => t % 2 == 0).Select(t => new ResourceHold(before[t] % t, t, 1, t % 4 == 0 ? [3] : [2, 3])).ToValueList(),
            DayStarts = Enumerable.Range(0, 40).Select(d => d * 390L).ToValueList(),
        };

    private static SchedulingProblem TwoGlueUps(int stations, int people, long lag) => new()
    {
        Axis = Days(4),
        Tasks =
        [
            new() { Id = "glue a", Duration = 10, Breakable = false, Crew = [new(1, [0])] },
            new() { Id = "unclamp a", Duration = 5, Breakable = false, Crew = [new(1, [0])] },
            new() { Id = "glue b", Duration = 10, Breakable = false, Crew = [new(1, [0])] },
            new() { Id = "unclamp b", Duration = 5, Breakable = false, Crew = [new(1, [0])] },
        ],
        Resources = [new("people", people), new("stations", stations)],
        Links = [new(0, 1, lag), new(2, 3, lag)],
        Holds = [new(0, 1, 1, [1]), new(2, 3, 1, [1])],
        Orders = [new(0, 2)],
    };

    private static SchedulingSolution Solve(SchedulingProblem problem, SchedulingEffort? effort = null)
    {
        var solution = SchedulingSolver.Solve(problem, effort ?? Effort, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        Assert.Empty(ScheduleVerifier.Check(problem, solution));
        return solution;
    }
}
