using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>A task before it has a time.</summary>
internal sealed class TaskDraft
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required WorkPhase Phase { get; init; }

    /// <summary>Who may lead it; null for anybody.</summary>
    public Skill? Skill { get; init; }

    /// <summary>Pairs of hands, 1 or 2.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>Whether it must not be left between start and end, as glue must not.</summary>
    public bool Unbroken { get; init; }

    /// <summary>What its minutes are made of.</summary>
    public required IReadOnlyList<WorkQuantity> Work { get; init; }

    public IReadOnlyList<string> Parts { get; init; } = [];

    public IReadOnlyList<string> Splices { get; init; } = [];

    /// <summary>Day before which it cannot begin, because stock is not there.</summary>
    public DateOnly? NotBefore { get; init; }

    /// <summary>What goes on by itself afterwards, in minutes of the clock.</summary>
    public IReadOnlyList<(string What, long Minutes)> RunsOn { get; init; } = [];

    /// <summary>Whether the standard time is already that of two people.</summary>
    public bool TimedForTwo { get; init; }

    /// <summary>Working minutes from start to end: the work, shared when two are at it; at least 1.</summary>
    public int Minutes(StandardTimes times)
    {
        var work = Work.Sum(w => w.Quantity * w.Minutes);
        var clock = Hands == 2 && !TimedForTwo ? work / times.OutputOfTwo : work;
        return Math.Max(1, (int)Math.Ceiling(clock));
    }
}

/// <summary>One task before another.</summary>
/// <param name="Before">Id of the first.</param>
/// <param name="After">Id of the second.</param>
/// <param name="Least">Least clock minutes between them.</param>
internal readonly record struct DraftLink(string Before, string After, long Least);

/// <summary>A station, clamps or floor kept from the start of one task to the end of another.</summary>
/// <param name="First">Id of the task that takes it.</param>
/// <param name="Last">Id of the task that gives it back.</param>
/// <param name="Need">What is kept.</param>
internal readonly record struct DraftHold(string First, string Last, HoldNeed Need);

/// <summary>What a task keeps: exactly one of a place of a length, clamps, or floor.</summary>
/// <param name="StationFor">A station at least so long.</param>
/// <param name="Clamps">Clamps of a kind.</param>
/// <param name="Count">How many.</param>
internal readonly record struct HoldNeed(Model.Measure.Length? StationFor, ClampKind? Clamps, int Count)
{
    public bool IsFloor => StationFor is null && Clamps is null;
}
