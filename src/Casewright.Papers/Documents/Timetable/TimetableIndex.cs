using System.Globalization;
using Casewright.Model.Jobs;
using Casewright.Model.Timeline;

namespace Casewright.Papers.Documents.Timetable;

/// <summary>A timetable with its tasks numbered by start, as all its papers call them.</summary>
public sealed class TimetableIndex
{
    private readonly Dictionary<string, int> _numbers;
    private readonly Dictionary<string, string> _people;
    private readonly Dictionary<string, string> _stations;

    /// <summary>Numbers a timetable.</summary>
    public TimetableIndex(Job job, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(schedule);
        (Job, Schedule) = (job, schedule);
        Tasks = [.. schedule.Tasks.OrderBy(t => t.Start).ThenBy(t => t.Id, StringComparer.Ordinal)];
        _numbers = Tasks.Index().ToDictionary(t => t.Item.Id, t => t.Index + 1, StringComparer.Ordinal);
        _people = job.Shop.People.ToDictionary(p => p.Id, p => p.Name, StringComparer.Ordinal);
        _stations = job.Shop.Stations.ToDictionary(s => s.Id, s => s.Name, StringComparer.Ordinal);
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The timetable.</summary>
    public Schedule Schedule { get; }

    /// <summary>Tasks by start.</summary>
    public IReadOnlyList<ScheduledTask> Tasks { get; }

    /// <summary>Days on which somebody works, in order.</summary>
    public IEnumerable<DateOnly> Days => Tasks.SelectMany(t => t.Spans).Select(s => DateOnly.FromDateTime(s.From)).Distinct().Order();

    /// <summary>The number of a task, from 1.</summary>
    public int NumberOf(ScheduledTask task) => _numbers[task.Id];

    /// <summary>Name of a person.</summary>
    public string Person(string id) => _people.GetValueOrDefault(id, id);

    /// <summary>Name of a station.</summary>
    public string Station(string id) => _stations.GetValueOrDefault(id, id);

    /// <summary>Who does a task, who leads first; help from outside where the shop has too few.</summary>
    public string Who(ScheduledTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        var names = task.People.Select(Person).ToList();
        if (names.Count < task.Hands && !task.Done)
            names.Add("a helper");
        return string.Join(", ", names);
    }

    /// <summary>A clock time of a day: 08:30.</summary>
    public static string Clock(DateTime moment) => moment.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A clock time with its day where that is another one: Tue 10 Mar 08:30.</summary>
    public static string Clock(DateTime moment, DateOnly day) => DateOnly.FromDateTime(moment) == day ? Clock(moment) : $"{Day(moment)} {Clock(moment)}";

    /// <summary>A day: Mon 9 Mar.</summary>
    public static string Day(DateTime moment) => moment.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>A day: Mon 9 Mar.</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>Stages of the work in words.</summary>
    public static string Phase(WorkPhase phase) => phase switch
    {
        WorkPhase.Breakdown => "Sawing",
        WorkPhase.Splicing => "Splicing",
        WorkPhase.Joinery => "Dados and grooves",
        WorkPhase.Drilling => "Pin rows",
        WorkPhase.Edges => "Edges",
        WorkPhase.Assembly => "Assembly",
        WorkPhase.Sanding => "Sanding",
        WorkPhase.Finishing => "Finishing",
        WorkPhase.Delivery => "Delivery",
        WorkPhase.Install => "On site",
        _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "Unknown stage."),
    };
}
