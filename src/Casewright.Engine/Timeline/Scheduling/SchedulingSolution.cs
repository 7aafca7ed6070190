using Casewright.Model.Collections;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>How a task was placed.</summary>
/// <param name="Start">Working time at which it begins.</param>
/// <param name="End">Working time at which it ends.</param>
/// <param name="Crew">How many people of which resource, in the order of the task's needs: who leads first.</param>
public sealed record TaskPlacement(long Start, long End, ValueList<CrewShare> Crew);

/// <summary>People of one class at a task.</summary>
/// <param name="Resource">Index of the class.</param>
/// <param name="Count">How many; at least 1.</param>
public sealed record CrewShare(int Resource, int Count);

/// <summary>A schedule and what is proven of it.</summary>
/// <param name="Tasks">Placements, in the order of the problem's tasks.</param>
/// <param name="HoldChoices">The resource that each hold takes, in the order of the problem's holds.</param>
/// <param name="Makespan">Working time at which the last task ends.</param>
/// <param name="LowerBound">No schedule ends earlier.</param>
/// <param name="Proven">Whether the two meet.</param>
/// <param name="Work">Deterministic effort spent.</param>
public sealed record SchedulingSolution(
    ValueList<TaskPlacement> Tasks, ValueList<int> HoldChoices, long Makespan, long LowerBound, bool Proven, double Work);

/// <summary>Either a schedule, or why there is none.</summary>
/// <param name="Solution">The schedule; null when there is none.</param>
/// <param name="Infeasible">Whether it is proven that there is none; false when the effort ran out first.</param>
public sealed record SchedulingOutcome(SchedulingSolution? Solution, bool Infeasible);

/// <summary>How hard to try.</summary>
public sealed record SchedulingEffort
{
    /// <summary>Deterministic work for the least finish, in the solver's units (about a second each on a plain machine); positive.</summary>
    public double Work { get; init; } = 4;

    /// <summary>Deterministic work for the even load; 0 leaves it out.</summary>
    public double LevelWork { get; init; } = 1;

    /// <summary>Wall-clock limit in seconds, for measurements only: results then depend on the machine. Null without.</summary>
    public double? Seconds { get; init; }

    /// <summary>Threads; more than 1 only together with <see cref="Seconds"/>.</summary>
    public int Workers { get; init; } = 1;
}

/// <summary>Is told of better schedules and bounds while the solver runs, on its thread.</summary>
public interface ISchedulingProgress
{
    /// <summary>Takes one report; must return soon.</summary>
    /// <param name="makespan">Working time of the best schedule so far.</param>
    /// <param name="lowerBound">No schedule ends earlier.</param>
    void Report(long makespan, long lowerBound);
}
