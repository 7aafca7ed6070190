using Casewright.Model.Collections;
using Casewright.Model.Findings;

namespace Casewright.Model.Timeline;

/// <summary>Hands-on work of one person on one day.</summary>
/// <param name="Person">Id of the person.</param>
/// <param name="Date">The day.</param>
/// <param name="Minutes">Hands-on minutes.</param>
public sealed record PersonDay(string Person, DateOnly Date, int Minutes);

/// <summary>When stock has to be ordered.</summary>
/// <param name="Stock">Id of the sheet or board stock.</param>
/// <param name="Count">How many are bought.</param>
/// <param name="OrderBy">Last day to order it.</param>
/// <param name="NeededOn">Day on which it is unloaded.</param>
public sealed record StockOrder(string Stock, int Count, DateOnly OrderBy, DateOnly NeededOn);

/// <summary>A change of the shop that would bring the finish forward.</summary>
/// <param name="What">The change in words.</param>
/// <param name="Finish">When the work would then be finished.</param>
/// <param name="Meets">Whether the promise would then be kept.</param>
public sealed record DeadlineRemedy(string What, DateOnly Finish, bool Meets);

/// <summary>When everything is done, by whom and where. Times are by the clock of the shop.</summary>
public sealed record Schedule
{
    /// <summary>When the first task begins.</summary>
    public required DateTime Start { get; init; }

    /// <summary>When the last task ends.</summary>
    public required DateTime Finish { get; init; }

    /// <summary>No schedule under the same rules finishes earlier.</summary>
    public required DateTime LowerBound { get; init; }

    /// <summary>Whether finish and lower bound meet.</summary>
    public required bool Proven { get; init; }

    /// <summary>Working time between the lower bound and the finish as a share of all the working time up to the finish, 0 to 1.</summary>
    public required double Gap { get; init; }

    /// <summary>Tasks by start; ids unique.</summary>
    public required ValueList<ScheduledTask> Tasks { get; init; }

    /// <summary>Hands-on minutes by person and day.</summary>
    public required ValueList<PersonDay> Load { get; init; }

    /// <summary>Hands-on minutes of all the tasks, every pair of hands counted.</summary>
    public required int WorkMinutes { get; init; }

    /// <summary>Days of a station taken up by glue-ups: working time from loading to unloading, divided by the longest working day.</summary>
    public required decimal StationDays { get; init; }

    /// <summary>Working days from the start to the finish, both counted.</summary>
    public required int WorkingDays { get; init; }

    /// <summary>Day from which shelves may be loaded; null without a finish.</summary>
    public DateOnly? LoadShelvesFrom { get; init; }

    /// <summary>When bought stock has to be ordered.</summary>
    public ValueList<StockOrder> Orders { get; init; } = [];

    /// <summary>What would bring the finish forward, worked out when the promised day cannot be met; each change by itself.</summary>
    public ValueList<DeadlineRemedy> Remedies { get; init; } = [];

    /// <summary>What was noticed: a deadline missed, a figure nobody stated.</summary>
    public ValueList<Finding> Findings { get; init; } = [];
}
