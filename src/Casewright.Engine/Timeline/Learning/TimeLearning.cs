using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Learning;

/// <summary>
/// The shop's own times out of what it logged: each job gives one figure for an operation, minutes by units, and the median of the jobs
/// is proposed, so that one bad day moves nothing. A proposal changes no plan before it is adopted.
/// </summary>
public static class TimeLearning
{
    private const int Places = 2;

    /// <summary>
    /// The logged hands-on minutes of tasks that are done, shared out to the operations of each task in proportion to the times it was
    /// planned with.
    /// </summary>
    /// <param name="job">The job with its progress.</param>
    /// <param name="schedule">Its timetable, which says what the tasks are made of.</param>
    public static ValueList<LoggedTime> LogsOf(Job job, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(schedule);
        var tasks = schedule.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        return (job.Progress?.Records ?? [])
            .Where(r => r is { Finish: not null, HandsOn: > 0 } && tasks.ContainsKey(r.Task))
            .SelectMany(r => Shares(job.Shop.Times, tasks[r.Task], r.HandsOn!.Value))
            .GroupBy(x => x.Operation)
            .OrderBy(g => g.Key)
            .Select(g => new LoggedTime { Job = job.Name, Operation = g.Key, Quantity = g.Sum(x => x.Quantity), Minutes = g.Sum(x => x.Minutes) })
            .ToValueList();
    }

    /// <summary>The times with the logs of a job; what was logged of the same job before is replaced.</summary>
    public static StandardTimes With(StandardTimes times, string job, ValueList<LoggedTime> logs)
    {
        ArgumentNullException.ThrowIfNull(times);
        return times with { Logs = times.Logs.Where(l => l.Job != job).Concat(logs).ToValueList() };
    }

    /// <summary>What the logs speak for, operation by operation; those that agree with what is planned with already are left out.</summary>
    public static ValueList<TimeProposal> Proposals(StandardTimes times)
    {
        ArgumentNullException.ThrowIfNull(times);
        return times.Logs
            .GroupBy(l => l.Operation)
            .OrderBy(g => g.Key)
            .Select(g => Proposal(times, g.Key, g))
            .Where(p => p.Proposed != p.Now || JobsBehind(times, p.Operation) != p.Jobs)
            .ToValueList();
    }

    /// <summary>The times with a proposal taken as the shop's own.</summary>
    public static StandardTimes Adopt(StandardTimes times, TimeProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(proposal);
        var own = new ShopTime { Operation = proposal.Operation, Minutes = proposal.Proposed, Jobs = proposal.Jobs };
        return times with { Own = times.Own.Where(t => t.Operation != own.Operation).Append(own).OrderBy(t => t.Operation).ToValueList() };
    }

    private static TimeProposal Proposal(StandardTimes times, Operation operation, IEnumerable<LoggedTime> logs)
    {
        var jobs = logs
            .GroupBy(l => l.Job, StringComparer.Ordinal)
            .Select(j => Math.Round(j.Sum(l => l.Minutes) / j.Sum(l => l.Quantity), Places, MidpointRounding.AwayFromZero))
            .Order()
            .ToList();
        var median = Math.Max(0.01m, Math.Round((jobs[(jobs.Count - 1) / 2] + jobs[jobs.Count / 2]) / 2, Places, MidpointRounding.AwayFromZero));
        var usual = StandardTimes.UsualOf(operation);
        return new(operation, times.Minutes(operation), median, jobs.Count, jobs[0], jobs[^1], median >= usual.Least && median <= usual.Most);
    }

    private static int JobsBehind(StandardTimes times, Operation operation) => times.Own.FirstOrDefault(t => t.Operation == operation)?.Jobs ?? 0;

    /// <summary>Factors of a method, of a clear finish and of two people at once are taken out again, since the next plan puts them on.</summary>
    private static IEnumerable<(Operation Operation, decimal Quantity, decimal Minutes)> Shares(StandardTimes times, ScheduledTask task, decimal handsOn)
    {
        var planned = (decimal)task.Minutes * task.Hands;
        return task.Work.Where(w => w.Quantity > 0 && planned > 0).Select(w => (w.Operation, w.Quantity, w.Quantity * times.Minutes(w.Operation) * handsOn / planned));
    }
}
