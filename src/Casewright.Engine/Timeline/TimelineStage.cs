using System.Globalization;
using Casewright.Engine.Timeline.Calendars;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>The timetable of a job: tasks derived from the plan, put in order on the shop's working hours.</summary>
public static class TimelineStage
{
    /// <summary>Temperature that the published times of glues hold for, in °C; taken when nobody stated the shop's.</summary>
    public const double UsualTemperature = 20;

    /// <summary>Schedules a planned job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">Its cases and parts.</param>
    /// <param name="cutting">What is cut from what, and the splices.</param>
    /// <param name="progress">What is done so far; null at the beginning.</param>
    /// <param name="effort">How hard to try; null for the usual effort.</param>
    /// <param name="watch">Is told of better schedules; may be null.</param>
    /// <param name="cancel">Ends the search early with the best schedule so far.</param>
    /// <returns>The schedule, or what keeps the shop from doing the work.</returns>
    public static Outcome<Schedule> Schedule(
        Job job,
        Casework casework,
        CutPlan cutting,
        ShopProgress? progress = null,
        SchedulingEffort? effort = null,
        ISchedulingProgress? watch = null,
        CancellationToken cancel = default)
    {
        var problems = ShopProblems.BeforeWork(job).ToList();
        if (problems.Count > 0)
            return Outcome<Schedule>.Failed(problems);
        var start = (job.StartOn ?? job.Date)!.Value;
        var glue = GlueTimes.At(job.Shop.Glue, job.Shop.Temperature ?? UsualTemperature);
        var list = WorkBreakdown.Derive(new(job, casework, cutting, start, glue));
        problems.AddRange(ShopProblems.OfWork(job, list));
        problems.AddRange(ProgressProblems.Of(list, progress));
        if (list.Tasks.Count == 0)
            problems.Add(new("runs", "There is nothing to make, so there is nothing to schedule.", "", "a run with cases"));
        if (problems.Count > 0)
            return Outcome<Schedule>.Failed(problems);
        var outcome = Solve(job, list, progress, effort ?? new(), watch, cancel);
        if (outcome.Problem is { } problem)
            return Outcome<Schedule>.Failed([problem]);
        var schedule = new ScheduleWriter(job, cutting, outcome.Timeline!, outcome.Solution!).Write();
        schedule = schedule with { Remedies = Remedies(job, list, schedule, progress, effort ?? new(), cancel).ToValueList() };
        return Outcome<Schedule>.Of(schedule with { Findings = Notes(job, list, schedule).ToValueList() });
    }

    private static (TimelineProblem? Timeline, SchedulingSolution? Solution, Problem? Problem) Solve(
        Job job, WorkList list, ShopProgress? progress, SchedulingEffort effort, ISchedulingProgress? watch, CancellationToken cancel)
    {
        var start = (job.StartOn ?? job.Date)!.Value;
        if (ShopCalendar.From(job.Shop.Hours, start, AxisLength(job, list)) is not { } calendar)
        {
            var daysOff = string.Create(CultureInfo.InvariantCulture, $"{job.Shop.Hours.DaysOff.Count} days off");
            return (null, null, new("shop.hours", $"No day is worked in the three years from {start:yyyy-MM-dd}.", daysOff, "working days that are not all days off"));
        }

        var timeline = new TimelineProblem(job.Shop, list, calendar, progress);
        var outcome = SchedulingSolver.Solve(timeline.Problem, effort, watch, cancel);
        return outcome.Solution is { } solution ? (timeline, solution, null) : (null, null, NoSchedule(outcome));
    }

    /// <summary>When the promise cannot be met: the finish with one change of the shop at a time, with a part of the effort.</summary>
    private static IEnumerable<DeadlineRemedy> Remedies(
        Job job, WorkList list, Schedule schedule, ShopProgress? progress, SchedulingEffort effort, CancellationToken cancel)
    {
        if (job.FinishBy is not { } deadline || DateOnly.FromDateTime(schedule.Finish) <= deadline)
            yield break;
        foreach (var (what, shop) in ShopChanges.Of(job.Shop))
        {
            var outcome = Solve(job with { Shop = shop }, list, progress, effort with { Work = effort.Work / 4, LevelWork = 0 }, null, cancel);
            if (outcome.Solution is not { } solution)
                continue;
            var finish = DateOnly.FromDateTime(outcome.Timeline!.Calendar.Moment(outcome.Timeline.Calendar.Axis.ClockAtEnd(solution.Makespan)));
            if (finish < DateOnly.FromDateTime(schedule.Finish))
                yield return new(what, finish, finish <= deadline);
        }
    }

    /// <summary>Working time that the axis must reach: the work done by one person, and twice the days that all lags would take one after the other.</summary>
    private static long AxisLength(Job job, WorkList list)
    {
        var day = Math.Max(1, job.Shop.Hours.Day.Sum(s => (long)(s.To - s.From).TotalMinutes));
        var work = list.Tasks.Sum(t => (long)t.Minutes(job.Shop.Times));
        var arrival = list.Tasks.Max(t => t.NotBefore is { } date ? date.DayNumber - (job.StartOn ?? job.Date)!.Value.DayNumber : 0);
        return (2 * work) + ((120 + arrival) * day);
    }

    private static Problem NoSchedule(SchedulingOutcome outcome) => outcome.Infeasible
        ? new("shop", "No timetable keeps all the rules of the shop.", "proven", "more floor places, stations or clamps, or people who are away less")
        : new("shop", "No timetable was found within the effort allowed.", "", "more effort, or fewer limits on floor, stations and clamps");

    private static IEnumerable<Finding> Notes(Job job, WorkList list, Schedule schedule)
    {
        if (job.Shop.Temperature is null && list.Tasks.Any(t => t.RunsOn.Count > 0))
            yield return NotStated("shop-temperature", "shop", "Nobody stated how warm the shop is: glue times are those of 20 °C.", "State the temperature; colder glue stays in the clamps longer.");
        var uncounted = list.Holds.Select(h => h.Need.Clamps).OfType<ClampKind>().Distinct().Order().Where(k => job.Shop.Clamps.All(c => c.Kind != k)).Select(HoldingGear.Name).ToList();
        if (uncounted.Count > 0)
            yield return NotStated("clamps-counted", "shop", $"Nobody counted the {string.Join(" and ", uncounted)}: the timetable does not look whether there are enough.", "Count the clamps by kind.");
        if (schedule.Tasks.Where(t => t.Hands > t.People.Count && !t.Done).ToList() is { Count: > 0 } two)
            yield return SecondHands(two);
        if (job.FinishBy is { } deadline)
            yield return Deadline(job, schedule, deadline);
    }

    private static Finding SecondHands(List<ScheduledTask> tasks)
    {
        var days = tasks.Select(t => DateOnly.FromDateTime(t.Start)).Distinct().Order().Select(d => d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        return new()
        {
            Check = "second-pair-of-hands",
            Severity = Severity.Stop,
            Subject = tasks[0].Id,
            Message = string.Create(CultureInfo.InvariantCulture, $"{tasks.Count} tasks need two pairs of hands and the shop has one person, such as '{tasks[0].Name}'."),
            Value = tasks.Count,
            Limit = 0,
            Unit = "tasks",
            Source = "common practice: two people for sheets over 35 kg, cases over 40 kg, anything over 2.6 m",
            Standing = Standing.CommonPractice,
            Advice = $"Get help on {string.Join(", ", days)}; or use draw connectors or a spreader against stops for tall glue-ups, and smaller cases.",
        };
    }

    private static Finding Deadline(Job job, Schedule schedule, DateOnly deadline)
    {
        var finish = DateOnly.FromDateTime(schedule.Finish);
        var late = WorkingDaysLate(job.Shop.Hours, deadline, finish);
        return new()
        {
            Check = "deadline",
            Severity = late > 0 ? Severity.Stop : Severity.Pass,
            Subject = job.Name,
            Message = late > 0
                ? string.Create(CultureInfo.InvariantCulture, $"The work is finished on {finish:yyyy-MM-dd}, {late} working days after the promise of {deadline:yyyy-MM-dd}.")
                : $"The work is finished on {finish:yyyy-MM-dd}; the promise is {deadline:yyyy-MM-dd}.",
            Value = late,
            Limit = 0,
            Unit = "working days late",
            Source = "least finish of the timetable",
            Standing = Standing.Arithmetic,
            Advice = late > 0 ? Advice(schedule, late) : "",
        };
    }

    private static string Advice(Schedule schedule, int late)
    {
        var earlier = string.Create(CultureInfo.InvariantCulture, $"Begin {late} working days earlier");
        var meets = schedule.Remedies.Where(r => r.Meets).Select(r => r.What).ToList();
        return meets.Count == 0
            ? earlier + "; no single change of the shop would meet it."
            : $"{earlier}, or one of: {string.Join("; ", meets)}.";
    }

    private static int WorkingDaysLate(WorkingHours hours, DateOnly deadline, DateOnly finish) =>
        finish <= deadline ? 0 : Enumerable.Range(deadline.DayNumber + 1, finish.DayNumber - deadline.DayNumber).Count(d => hours.Works(DateOnly.FromDayNumber(d)));

    private static Finding NotStated(string check, string subject, string message, string advice) => new()
    {
        Check = check,
        Severity = Severity.NotChecked,
        Subject = subject,
        Message = message,
        Source = "missing input",
        Standing = Standing.Arithmetic,
        Advice = advice,
    };
}
