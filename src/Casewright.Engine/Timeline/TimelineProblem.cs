using Casewright.Engine.Timeline.Calendars;
using Casewright.Engine.Timeline.Crews;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Collections;
using Casewright.Model.Shop;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>The tasks of a job as a scheduling problem, with the way back from its indexes to ids.</summary>
internal sealed class TimelineProblem
{
    private readonly Workshop _shop;
    private readonly ShopCalendar _calendar;
    private readonly IReadOnlyDictionary<string, WorkRecord> _records;
    private readonly long? _now;
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<SchedulingTask> _tasks = [];
    private readonly List<SchedulingResource> _resources = [];
    private readonly List<ResourceHold> _holds = [];
    private readonly int _stationsFrom;
    private readonly Dictionary<ClampKind, int> _clamps = [];
    private readonly int? _floor;

    public TimelineProblem(Workshop shop, WorkList list, ShopCalendar calendar, ShopProgress? progress)
    {
        (_shop, List, _calendar) = (shop, list, calendar);
        _records = (progress?.Records ?? []).ToDictionary(r => r.Task, StringComparer.Ordinal);
        _now = progress is null ? null : calendar.Clock(progress.Now);
        Crews = CrewClass.Of(shop.People);
        Stations = StationClass.Of(shop.Stations);
        _resources.AddRange(Crews.Select(c => new SchedulingResource("people " + string.Join(", ", c.People), c.People.Count) { Away = calendar.Away(c.DaysOff.ToValueList()) }));
        _stationsFrom = _resources.Count;
        _resources.AddRange(Stations.Select(s => new SchedulingResource("stations " + string.Join(", ", s.Ids), s.Ids.Count)));
        foreach (var clamps in shop.Clamps)
        {
            _clamps[clamps.Kind] = _resources.Count;
            _resources.Add(new(Gluing.HoldingGear.Name(clamps.Kind), clamps.Count));
        }

        if (shop.FloorPlaces is { } places)
        {
            _floor = _resources.Count;
            _resources.Add(new("floor places", places));
        }

        foreach (var draft in list.Tasks.Where(d => !IsDone(d.Id)))
            AddTask(draft);
        foreach (var hold in list.Holds)
            AddHold(hold);
        Problem = new()
        {
            Axis = calendar.Axis,
            Tasks = _tasks.ToValueList(),
            Resources = _resources.ToValueList(),
            Holds = _holds.ToValueList(),
            Links = Links().ToValueList(),
            Orders = Orders().ToValueList(),
            DayStarts = calendar.DayStarts,

            // An eighth of what all can do in a day: a glue-up is not put off to the morning for a few minutes of evenness.
            LoadStep = Math.Max(1, calendar.LongestDay * shop.People.Count / 8),
        };
    }

    public SchedulingProblem Problem { get; }

    public WorkList List { get; }

    public ShopCalendar Calendar => _calendar;

    public IReadOnlyList<CrewClass> Crews { get; }

    public IReadOnlyList<StationClass> Stations { get; }

    /// <summary>Drafts of the holds that are in the problem, in its order.</summary>
    public List<DraftHold> HoldDrafts { get; } = [];

    public bool IsDone(string task) => _records.TryGetValue(task, out var record) && record.Finish is not null;

    public WorkRecord? Record(string task) => _records.GetValueOrDefault(task);

    /// <summary>Index of a task in the problem; null when it is done.</summary>
    public int? IndexOf(string task) => _index.TryGetValue(task, out var at) ? at : null;

    /// <summary>The class of stations that a hold took; null when it holds no station.</summary>
    public StationClass? StationOf(int resource) =>
        resource >= _stationsFrom && resource < _stationsFrom + Stations.Count ? Stations[resource - _stationsFrom] : null;

    private void AddTask(TaskDraft draft)
    {
        var minutes = draft.Minutes(_shop.Times);
        var axis = _calendar.Axis;
        var running = _records.TryGetValue(draft.Id, out var record);
        var release = Math.Max(_now ?? 0, draft.NotBefore is { } day ? _calendar.Clock(day) : 0);
        foreach (var link in List.Links.Where(l => l.After == draft.Id && IsDone(l.Before)))
            release = Math.Max(release, _calendar.Clock(_records[link.Before].Finish!.Value) + link.Least);
        var begun = running ? axis.AtOrAfter(_now!.Value) : (long?)null;
        if (running)
            minutes = (int)Math.Max(1, minutes - (begun!.Value - axis.AtOrAfter(_calendar.Clock(record!.Start))));
        _index.Add(draft.Id, _tasks.Count);
        _tasks.Add(new()
        {
            Id = draft.Id,
            Duration = minutes,

            // What does not fit between two breaks at all is left lying, as the shop would have to.
            Breakable = !draft.Unbroken || running || minutes > axis.Stretches.Max(s => s.Length),
            Release = release,
            FixedStart = begun,
            Crew = Crew(draft),
        });
    }

    private ValueList<CrewNeed> Crew(TaskDraft draft)
    {
        var all = Enumerable.Range(0, Crews.Count).ToValueList();
        var leads = Enumerable.Range(0, Crews.Count).Where(c => draft.Skill is not { } skill || Crews[c].Skills.Contains(skill)).ToValueList();

        // A shop of one takes help from outside for the second pair of hands; the stage says so.
        var hands = Math.Min(draft.Hands, _shop.People.Count);
        if (hands == 1)
            return [new(1, leads)];
        return leads.Equals(all) ? [new(hands, all)] : [new(1, leads), new(hands - 1, all)];
    }

    private void AddHold(DraftHold hold)
    {
        if (IndexOf(hold.Last) is not { } last)
            return;
        var options = Options(hold.Need);
        if (options.Count == 0)
            return;
        if (IndexOf(hold.First) is not { } first)
        {
            // Taken before now and not given back yet: a milestone at this moment takes it again.
            first = _tasks.Count;
            _tasks.Add(new() { Id = "kept/" + hold.First + "/" + _holds.Count, Duration = 0, FixedStart = _calendar.Axis.AtOrAfter(_now ?? 0) });
        }

        _holds.Add(new(first, last, hold.Need.Count, options));
        HoldDrafts.Add(hold);
    }

    private ValueList<int> Options(HoldNeed need)
    {
        if (need.StationFor is { } length)
            return Enumerable.Range(0, Stations.Count).Where(s => Stations[s].Length >= length).Select(s => _stationsFrom + s).ToValueList();
        if (need.Clamps is { } kind)
            return _clamps.TryGetValue(kind, out var clamps) ? [clamps] : [];
        return _floor is { } floor ? [floor] : [];
    }

    private IEnumerable<TaskLink> Links()
    {
        foreach (var link in List.Links)
        {
            if (IndexOf(link.Before) is { } before && IndexOf(link.After) is { } after)
                yield return new(before, after, link.Least);
        }
    }

    private IEnumerable<StartOrder> Orders()
    {
        foreach (var (first, second) in List.Orders)
        {
            if (IndexOf(first) is { } before && IndexOf(second) is { } after && _tasks[before].FixedStart is null && _tasks[after].FixedStart is null)
                yield return new(before, after);
        }
    }
}
