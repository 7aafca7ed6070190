using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>What stands at the end of a run.</summary>
public enum EndKind
{
    /// <summary>A wall, met with a scribed filler.</summary>
    Wall,

    /// <summary>Open to the room: the side or its panel shows.</summary>
    Finished,

    /// <summary>Other casework: the side is hidden.</summary>
    Neighbour,

    /// <summary>A corner of the room into which the run on the next wall comes: this run stops clear of it.</summary>
    Corner,
}

/// <summary>One end of a run.</summary>
public sealed record RunEnd
{
    /// <summary>What stands there.</summary>
    public required EndKind Kind { get; init; }

    /// <summary>Visible width of the filler at a wall or in a corner; zero elsewhere.</summary>
    public Length Filler { get; init; }

    /// <summary>Sheet material of the filler; null for the run's material.</summary>
    public string? FillerMaterial { get; init; }

    /// <summary>Sheet material of a panel applied to a finished end; null when the side itself shows.</summary>
    public string? Panel { get; init; }

    /// <summary>Lipping on the edges of the sides that a finished end shows, instead of a panel; null for none.</summary>
    public LippingDesign? Lipping { get; init; }

    /// <summary>The corner; needed for that kind of end, null for others.</summary>
    public CornerDesign? Corner { get; init; }
}
