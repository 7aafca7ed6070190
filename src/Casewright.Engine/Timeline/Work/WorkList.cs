using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>All the tasks of a job with their order, growing stage by stage.</summary>
internal sealed class WorkList
{
    private readonly Dictionary<string, TaskDraft> _byId = new(StringComparer.Ordinal);
    private readonly List<TaskDraft> _tasks = [];
    private readonly List<DraftLink> _links = [];
    private readonly List<DraftHold> _holds = [];
    private readonly List<(string First, string Second)> _orders = [];

    public IReadOnlyList<TaskDraft> Tasks => _tasks;

    public IReadOnlyList<DraftLink> Links => _links;

    public IReadOnlyList<DraftHold> Holds => _holds;

    public IReadOnlyList<(string First, string Second)> Orders => _orders;

    public List<Problem> Problems { get; } = [];

    /// <summary>Adds a task that comes after others; tasks without work are left out, and so are the ones named that do not exist.</summary>
    /// <returns>Whether there was work.</returns>
    public bool Add(TaskDraft task, params IEnumerable<string> after)
    {
        if (task.Work.All(w => w.Quantity <= 0))
            return false;
        _tasks.Add(task);
        _byId.Add(task.Id, task);
        foreach (var before in after.Distinct(StringComparer.Ordinal))
            Link(before, task.Id);
        return true;
    }

    public bool Has(string id) => _byId.ContainsKey(id);

    public TaskDraft this[string id] => _byId[id];

    /// <summary>Puts one task before another, when both exist.</summary>
    public void Link(string before, string after, long least = 0)
    {
        if (Has(before) && Has(after))
            _links.Add(new(before, after, least));
    }

    /// <summary>Alike tasks are begun in this order.</summary>
    public void Order(string first, string second) => _orders.Add((first, second));

    public void HoldStation(string first, string last, Length length) => _holds.Add(new(first, last, new(length, null, 1)));

    public void HoldClamps(string first, string last, ClampKind kind, int count) => _holds.Add(new(first, last, new(null, kind, count)));

    public void HoldFloor(string first, string last) => _holds.Add(new(first, last, new(null, null, 1)));
}
