using Casewright.Model.Collections;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>Attended work to be placed on the working axis. Indexes refer to the lists of the problem, from 0.</summary>
public sealed record SchedulingTask
{
    /// <summary>Stable name, unique in the problem.</summary>
    public required string Id { get; init; }

    /// <summary>Working time that it takes; 0 for a milestone.</summary>
    public required long Duration { get; init; }

    /// <summary>Whether it may be left at the end of a stretch and taken up at the beginning of the next.</summary>
    public bool Breakable { get; init; } = true;

    /// <summary>Earliest clock time at which it may begin.</summary>
    public long Release { get; init; }

    /// <summary>Working time at which it begins, when that is settled; null when it is free.</summary>
    public long? FixedStart { get; init; }

    /// <summary>The hands that it needs for its whole duration; no person counts twice.</summary>
    public ValueList<CrewNeed> Crew { get; init; } = [];

    /// <summary>Pairs of hands at once.</summary>
    public int Hands => Crew.Sum(c => c.Count);
}

/// <summary>People needed at once.</summary>
/// <param name="Count">How many; at least 1.</param>
/// <param name="Eligible">Resources (classes of like people) that they may come from, in order of preference.</param>
public sealed record CrewNeed(int Count, ValueList<int> Eligible);

/// <summary>Something of which a number is there at all times: people of one class, alike stations, clamps of a kind, floor places.</summary>
/// <param name="Id">Stable name, unique in the problem.</param>
/// <param name="Capacity">How many; not negative.</param>
public sealed record SchedulingResource(string Id, int Capacity)
{
    /// <summary>Clock stretches in which none of it is there (a person's days off), ascending.</summary>
    public ValueList<WorkStretch> Away { get; init; } = [];
}

/// <summary>A resource kept from the start of one task to the end of another, the time between included.</summary>
/// <param name="First">Task whose start takes it.</param>
/// <param name="Last">Task whose end gives it back; the same task for the usual case.</param>
/// <param name="Amount">How many; not negative.</param>
/// <param name="Options">Resources, any one of which will do, in order of preference; at least one.</param>
public sealed record ResourceHold(int First, int Last, int Amount, ValueList<int> Options);

/// <summary>A precedence: the second task begins after the first has ended, with lags in clock time.</summary>
/// <param name="Before">The task that comes first.</param>
/// <param name="After">The task that follows.</param>
/// <param name="Least">Least clock time from the end of the one to the start of the other; not negative. Runs on outside working hours.</param>
/// <param name="Most">Most clock time between them; null without limit.</param>
public sealed record TaskLink(int Before, int After, long Least = 0, long? Most = null);

/// <summary>Alike tasks of which the first is begun no later than the second: takes out answers that differ only in names.</summary>
public sealed record StartOrder(int First, int Second);

/// <summary>A scheduling problem: tasks with precedence and lags, people, resources, and the working axis.</summary>
public sealed record SchedulingProblem
{
    /// <summary>Working time and clock.</summary>
    public required WorkAxis Axis { get; init; }

    /// <summary>Tasks; ids unique.</summary>
    public required ValueList<SchedulingTask> Tasks { get; init; }

    /// <summary>People by class, stations, clamps, places.</summary>
    public required ValueList<SchedulingResource> Resources { get; init; }

    /// <summary>What is held of them.</summary>
    public ValueList<ResourceHold> Holds { get; init; } = [];

    /// <summary>Precedences; without circles.</summary>
    public ValueList<TaskLink> Links { get; init; } = [];

    /// <summary>Orders among alike tasks.</summary>
    public ValueList<StartOrder> Orders { get; init; } = [];

    /// <summary>Working time ahead of each day, ascending from 0, for the even load; empty when load is not to be evened.</summary>
    public ValueList<long> DayStarts { get; init; } = [];

    /// <summary>Differences of load below this are not worth moving work for; at least 1.</summary>
    public long LoadStep { get; init; } = 1;
}
