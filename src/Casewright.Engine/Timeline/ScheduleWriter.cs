using Casewright.Engine.Timeline.Crews;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>Turns a solved problem back into dates, names and places.</summary>
internal sealed class ScheduleWriter(Job job, CutPlan cutting, TimelineProblem timeline, SchedulingSolution solution)
{
    private readonly IReadOnlyList<ValueList<string>> _people = CrewRoster.Assign(solution, timeline.Crews);
    private readonly Dictionary<string, List<(HoldNeed Need, string? Station, long To)>> _kept = Kept(timeline, solution);

    private WorkAxis Axis => timeline.Calendar.Axis;

    public Schedule Write()
    {
        var tasks = timeline.List.Tasks.Select(Task).OrderBy(t => t.Start).ThenBy(t => t.Finish).ThenBy(t => t.Id, StringComparer.Ordinal).ToValueList();
        var finish = tasks.Max(t => t.Finish);
        var bound = timeline.Calendar.Moment(Axis.ClockAtEnd(Math.Max(1, solution.LowerBound)));
        return new()
        {
            Start = tasks.Min(t => t.Start),
            Finish = finish,
            LowerBound = bound < finish ? bound : finish,
            Proven = solution.Proven,
            Gap = solution.Makespan == 0 ? 0 : Math.Max(0, solution.Makespan - solution.LowerBound) / (double)solution.Makespan,
            Tasks = tasks,
            Load = Load(tasks).ToValueList(),
            WorkMinutes = tasks.Sum(t => t.Minutes * t.Hands),
            StationDays = StationDays(),
            WorkingDays = WorkingDays(tasks.Min(t => t.Start), finish),
            LoadShelvesFrom = LoadShelvesFrom(tasks, finish),
            Orders = Orders(tasks).ToValueList(),
        };
    }

    private ScheduledTask Task(TaskDraft draft)
    {
        var after = timeline.List.Links.Where(l => l.After == draft.Id).Select(l => l.Before).Distinct(StringComparer.Ordinal).ToValueList();
        if (timeline.IndexOf(draft.Id) is not { } t)
            return Done(draft, timeline.Record(draft.Id)!, after);
        var place = solution.Tasks[t];
        var spans = timeline.Calendar.Spans(place.Start, place.End).ToValueList();
        var kept = _kept.GetValueOrDefault(draft.Id, []);
        var end = Axis.ClockAtEnd(place.End);
        var station = kept.FirstOrDefault(k => k.Station is not null);
        return new()
        {
            Id = draft.Id,
            Name = draft.Name,
            Phase = draft.Phase,
            Start = timeline.Record(draft.Id)?.Start ?? spans[0].From,
            Finish = spans[^1].To,
            Spans = spans,
            Minutes = (int)(place.End - place.Start),
            Hands = draft.Hands,
            People = _people[t],
            Work = draft.Work.Where(w => w.Quantity > 0).ToValueList(),
            Station = station.Station,
            StationUntil = station.Station is null ? null : timeline.Calendar.Moment(Axis.ClockAtEnd(station.To)),
            Clamps = kept.Where(k => k.Need.Clamps is not null)
                .Select(k => new ClampUse(k.Need.Clamps!.Value, k.Need.Count, timeline.Calendar.Moment(Axis.ClockAtEnd(k.To))))
                .ToValueList(),
            RunsOn = draft.RunsOn.Select(r => new RunningOn(r.What, timeline.Calendar.Moment(end + r.Minutes))).ToValueList(),
            Parts = draft.Parts.ToValueList(),
            Splices = draft.Splices.ToValueList(),
            After = after,
        };
    }

    private ScheduledTask Done(TaskDraft draft, WorkRecord record, ValueList<string> after)
    {
        var finish = record.Finish!.Value;
        return new()
        {
            Id = draft.Id,
            Name = draft.Name,
            Phase = draft.Phase,
            Start = record.Start,
            Finish = finish,
            Spans = [new(record.Start, finish)],
            Minutes = draft.Minutes(job.Shop.Times),
            Hands = draft.Hands,
            People = [],
            Work = draft.Work.Where(w => w.Quantity > 0).ToValueList(),
            RunsOn = draft.RunsOn.Select(r => new RunningOn(r.What, finish.AddMinutes(r.Minutes))).ToValueList(),
            Parts = draft.Parts.ToValueList(),
            Splices = draft.Splices.ToValueList(),
            After = after,
            Done = true,
        };
    }

    /// <summary>What each task keeps, with the station's name and the working time at which it is free again.</summary>
    private static Dictionary<string, List<(HoldNeed Need, string? Station, long To)>> Kept(TimelineProblem timeline, SchedulingSolution solution)
    {
        var kept = new Dictionary<string, List<(HoldNeed, string?, long)>>(StringComparer.Ordinal);
        var stations = new StationRoster();
        var holds = timeline.Problem.Holds;
        foreach (var h in Enumerable.Range(0, holds.Count).OrderBy(h => solution.Tasks[holds[h].First].Start).ThenBy(h => h))
        {
            var (from, to) = (solution.Tasks[holds[h].First].Start, solution.Tasks[holds[h].Last].End);
            var station = timeline.StationOf(solution.HoldChoices[h]) is { } place ? stations.Take(place, from, to) : null;
            var draft = timeline.HoldDrafts[h];
            if (!kept.TryGetValue(draft.First, out var list))
                kept[draft.First] = list = [];
            list.Add((draft.Need, station, to));
        }

        return kept;
    }

    private static IEnumerable<PersonDay> Load(ValueList<ScheduledTask> tasks) => tasks
        .Where(t => !t.Done)
        .SelectMany(t => t.People.SelectMany(person => t.Spans.Select(span => (Person: person, Span: span))))
        .GroupBy(x => (Date: DateOnly.FromDateTime(x.Span.From), x.Person))
        .Select(g => new PersonDay(g.Key.Person, g.Key.Date, g.Sum(x => (int)(x.Span.To - x.Span.From).TotalMinutes)))
        .OrderBy(d => d.Date)
        .ThenBy(d => d.Person, StringComparer.Ordinal);

    private decimal StationDays()
    {
        var minutes = 0L;
        for (var h = 0; h < timeline.Problem.Holds.Count; h++)
        {
            if (timeline.StationOf(solution.HoldChoices[h]) is not null)
                minutes += solution.Tasks[timeline.Problem.Holds[h].Last].End - solution.Tasks[timeline.Problem.Holds[h].First].Start;
        }

        return Math.Round(minutes / (decimal)timeline.Calendar.LongestDay, 2, MidpointRounding.AwayFromZero);
    }

    private int WorkingDays(DateTime start, DateTime finish)
    {
        var (first, last) = (DateOnly.FromDateTime(start), DateOnly.FromDateTime(finish));
        return Enumerable.Range(first.DayNumber, last.DayNumber - first.DayNumber + 1).Count(d => job.Shop.Hours.Works(DateOnly.FromDayNumber(d)));
    }

    private DateOnly? LoadShelvesFrom(ValueList<ScheduledTask> tasks, DateTime finish)
    {
        if (job.Shop.Finish is not { } system)
            return null;
        var coats = tasks.Where(t => t.Phase == WorkPhase.Finishing).Select(t => t.Finish.AddDays(system.DaysBeforeLoading)).Append(finish);
        return DateOnly.FromDateTime(coats.Max());
    }

    private IEnumerable<StockOrder> Orders(ValueList<ScheduledTask> tasks)
    {
        var bought = cutting.Sheets.Where(s => s is { Bought: true, Sawn: false }).Select(s => s.Stock).Concat(cutting.Boards.Where(b => b is { Bought: true, Sawn: false }).Select(b => b.Stock));
        foreach (var group in bought.GroupBy(s => s, StringComparer.Ordinal))
        {
            if (tasks.FirstOrDefault(t => t.Id == TaskIds.Unload(group.Key)) is not { Done: false } unload)
                continue;
            var needed = DateOnly.FromDateTime(unload.Start);
            var lead = job.Stock.Sheets.FirstOrDefault(s => s.Id == group.Key)?.LeadDays ?? job.Stock.Boards.FirstOrDefault(b => b.Id == group.Key)?.LeadDays ?? 0;
            if (job.Shop.Hours.WorkingDayBefore(needed, lead) is { } orderBy)
                yield return new(group.Key, group.Count(), orderBy, needed);
        }
    }
}
