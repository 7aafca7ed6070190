using Casewright.Engine.Timeline.Learning;
using Casewright.Model.Collections;
using Casewright.Model.Timeline;
using static Casewright.Engine.Tests.Timeline.SampleShop;

namespace Casewright.Engine.Tests.Timeline.Learning;

/// <summary>What a shop logs proposes its own times, by hand arithmetic; nothing changes before it is adopted.</summary>
public class TimeLearningTests
{
    // Rips: job A 40 in 100 minutes is 2.5, job B 20 in 36 is 1.8, job C 10 in 30 and 10 in 50 is 80/20 = 4. The median is 2.5, whatever C did.
    [Fact]
    public void The_median_of_the_jobs_is_proposed_with_their_number()
    {
        var times = new StandardTimes { Logs = [Log("A", 40, 100), Log("B", 20, 36), Log("C", 10, 30), Log("C", 10, 50)] };
        var proposal = Assert.Single(TimeLearning.Proposals(times));
        Assert.Equal(new TimeProposal(Operation.TableRip, 2, 2.5m, 3, 1.8m, 4, Usual: true), proposal);

        // Not silently: the plan's time is the usual one until somebody adopts the proposal.
        Assert.Equal(2, times.Minutes(Operation.TableRip));
        var adopted = TimeLearning.Adopt(times, proposal);
        Assert.Equal((2.5m, 3), (adopted.Minutes(Operation.TableRip), adopted.Own.Single().Jobs));
        Assert.Empty(TimeLearning.Proposals(adopted));
    }

    // Between two jobs the median lies in the middle: (1.8 + 2.6) / 2 = 2.2. Shops report 1.5 to 3; nine minutes a rip are outside.
    [Fact]
    public void Two_jobs_are_averaged_and_what_is_unusual_is_marked()
    {
        Assert.Equal(2.2m, TimeLearning.Proposals(new() { Logs = [Log("A", 10, 18), Log("B", 10, 26)] }).Single().Proposed);
        Assert.False(TimeLearning.Proposals(new() { Logs = [Log("A", 10, 90)] }).Single().Usual);
    }

    // A task of 4 rips at 2 and one setting at 3 is planned with 11 minutes. It took 22: everything twice, so 16 for the rips and 6 for the
    // setting. With two at it, hands-on minutes count both: planned 2 x 7, and 14 logged mean the standard time was right.
    [Fact]
    public void A_logged_task_is_shared_out_by_what_it_was_planned_with()
    {
        var alone = Task("rip/a", 11, 1);
        var logs = LogsOf(alone, 22);
        Assert.Equal([(Operation.FenceSetting, 1m, 6m), (Operation.TableRip, 4m, 16m)], logs.Select(l => (l.Operation, l.Quantity, l.Minutes)));
        Assert.Equal([3m, 8m], LogsOf(Task("rip/a", 7, 2), 14).Select(l => l.Minutes));
    }

    [Fact]
    public void Logging_a_job_again_replaces_what_it_said_before()
    {
        var times = TimeLearning.With(new() { Logs = [Log("A", 10, 20), Log("B", 10, 30)] }, "A", [Log("A", 10, 25)]);
        Assert.Equal([("B", 30m), ("A", 25m)], times.Logs.Select(l => (l.Job, l.Minutes)));
    }

    private static ValueList<LoggedTime> LogsOf(ScheduledTask task, decimal handsOn)
    {
        var job = Job(1, Stations(3200));
        var record = new WorkRecord(task.Id, task.Start, task.Finish) { HandsOn = handsOn };
        var open = new WorkRecord("other", task.Start, null) { HandsOn = 5 };
        var schedule = new Schedule { Start = task.Start, Finish = task.Finish, LowerBound = task.Finish, Proven = true, Gap = 0, Tasks = [task], Load = [], WorkMinutes = 11, StationDays = 0, WorkingDays = 1 };
        return TimeLearning.LogsOf(job with { Progress = new(task.Finish, [record, open]) }, schedule);
    }

    private static ScheduledTask Task(string id, int minutes, int hands)
    {
        var start = Monday.ToDateTime(new(8, 0));
        return new()
        {
            Id = id,
            Name = id,
            Phase = WorkPhase.Breakdown,
            Start = start,
            Finish = start.AddMinutes(minutes),
            Spans = [new(start, start.AddMinutes(minutes))],
            Minutes = minutes,
            Hands = hands,
            People = ["p1"],
            Work = [new(Operation.TableRip, 4, 2), new(Operation.FenceSetting, 1, 3), new(Operation.Crosscut, 0, 1.2m)],
        };
    }

    private static LoggedTime Log(string job, decimal quantity, decimal minutes) => new() { Job = job, Operation = Operation.TableRip, Quantity = quantity, Minutes = minutes };
}
