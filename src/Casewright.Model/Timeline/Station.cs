using Casewright.Model.Measure;

namespace Casewright.Model.Timeline;

/// <summary>A bench place where one glue-up can sit.</summary>
public sealed record Station
{
    /// <summary>Id, unique among the stations.</summary>
    public required string Id { get; init; }

    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>Longest part that lies on it; positive.</summary>
    public required Length Length { get; init; }

    /// <summary>Parts glued in one loading, side by side in one set of clamps; at least 1. Open time may allow fewer.</summary>
    public int Places { get; init; } = 1;
}

/// <summary>Kinds of clamp that glue-ups compete for.</summary>
public enum ClampKind
{
    /// <summary>Long bar clamp that reaches from end to end of a tall part.</summary>
    LongBar,

    /// <summary>Bar clamp across a case.</summary>
    Bar,

    /// <summary>Clamp across the faces of a panel.</summary>
    Face,

    /// <summary>Reversed spreader that pushes from a stop.</summary>
    Spreader,

    /// <summary>Pinch dog.</summary>
    PinchDog,
}

/// <summary>Clamps of one kind in the shop.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Count">How many; not negative.</param>
public sealed record ClampStock(ClampKind Kind, int Count);
