using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>Stages of the work, in its order.</summary>
public enum WorkPhase
{
    /// <summary>Unloading and sawing.</summary>
    Breakdown,

    /// <summary>Splicing and trimming to length.</summary>
    Splicing,

    /// <summary>Dados, grooves, rabbets, notches.</summary>
    Joinery,

    /// <summary>Pin rows.</summary>
    Drilling,

    /// <summary>Nosings and face frames.</summary>
    Edges,

    /// <summary>Bases, cases, backs.</summary>
    Assembly,

    /// <summary>Sanding.</summary>
    Sanding,

    /// <summary>Coats.</summary>
    Finishing,

    /// <summary>Loading, carrying in.</summary>
    Delivery,

    /// <summary>Work on site.</summary>
    Install,
}

/// <summary>A quantity of an operation inside a task: what its minutes are made of.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Quantity">How many units.</param>
/// <param name="Minutes">Hands-on minutes a unit, factors included.</param>
public sealed record WorkQuantity(Operation Operation, decimal Quantity, decimal Minutes);

/// <summary>A stretch of time by the clock of the shop.</summary>
/// <param name="From">Its beginning.</param>
/// <param name="To">Its end.</param>
public sealed record ClockSpan(DateTime From, DateTime To);

/// <summary>Clamps that a task takes.</summary>
/// <param name="Kind">Kind of clamp.</param>
/// <param name="Count">How many.</param>
/// <param name="Until">When they are free again.</param>
public sealed record ClampUse(ClampKind Kind, int Count, DateTime Until);

/// <summary>Something that goes on by itself after a task, through the night if need be.</summary>
/// <param name="What">What it is, such as "under clamps" or "drying".</param>
/// <param name="Until">When it has come to its end.</param>
public sealed record RunningOn(string What, DateTime Until);

/// <summary>A task with its time, people and place.</summary>
public sealed record ScheduledTask
{
    /// <summary>Stable id, the same as long as the plan holds the same work, such as glue/C3-L.</summary>
    public required string Id { get; init; }

    /// <summary>Name in words.</summary>
    public required string Name { get; init; }

    /// <summary>Stage of the work.</summary>
    public required WorkPhase Phase { get; init; }

    /// <summary>When it begins.</summary>
    public required DateTime Start { get; init; }

    /// <summary>When it ends.</summary>
    public required DateTime Finish { get; init; }

    /// <summary>Working stretches between start and finish; more than one when it is left overnight or over a break.</summary>
    public required ValueList<ClockSpan> Spans { get; init; }

    /// <summary>Working minutes from start to finish.</summary>
    public required int Minutes { get; init; }

    /// <summary>Pairs of hands at once.</summary>
    public required int Hands { get; init; }

    /// <summary>Ids of the people, who leads first.</summary>
    public required ValueList<string> People { get; init; }

    /// <summary>What the minutes are made of.</summary>
    public required ValueList<WorkQuantity> Work { get; init; }

    /// <summary>Id of the station; null when it takes none.</summary>
    public string? Station { get; init; }

    /// <summary>When the station is free again; null when it takes none.</summary>
    public DateTime? StationUntil { get; init; }

    /// <summary>Clamps taken.</summary>
    public ValueList<ClampUse> Clamps { get; init; } = [];

    /// <summary>What goes on by itself afterwards.</summary>
    public ValueList<RunningOn> RunsOn { get; init; } = [];

    /// <summary>Ids of the parts it is about, where it is about single parts.</summary>
    public ValueList<string> Parts { get; init; } = [];

    /// <summary>Ids of the splices it makes.</summary>
    public ValueList<string> Splices { get; init; } = [];

    /// <summary>Ids of the tasks that come before it.</summary>
    public ValueList<string> After { get; init; } = [];

    /// <summary>Whether it is already done.</summary>
    public bool Done { get; init; }
}
