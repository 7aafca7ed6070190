using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>How two runs meet in a corner of the room.</summary>
public enum CornerKind
{
    /// <summary>The other run goes through to the wall and is open; this run stops clear of its front.</summary>
    Butt,

    /// <summary>As a butt, but the end case of the other run has doors: a blind panel closes what this run stands in front of.</summary>
    Blind,

    /// <summary>Both runs stop clear of each other; an L-shaped post closes the corner, and what is behind it is lost.</summary>
    Dead,

    /// <summary>Both runs stop beside a case that stands in the corner, its front at 45 degrees. The run that gives its leg carries that case.</summary>
    Diagonal,
}

/// <summary>The corner at an end of a run where the run on the next wall comes in.</summary>
public sealed record CornerDesign
{
    /// <summary>Id of the run on the other wall.</summary>
    public required string Run { get; init; }

    /// <summary>How the two meet. Of a butt or blind corner only the run that stops says so; of a dead or diagonal corner both do.</summary>
    public required CornerKind Kind { get; init; }

    /// <summary>Angle of the corner in degrees; null takes the one surveyed, or 90 where none was.</summary>
    public double? Angle { get; init; }

    /// <summary>Length of the diagonal case along the wall of this run, from the corner; null for other corners and in the run that does not carry it.</summary>
    public Length? Leg { get; init; }

    /// <summary>Number of fixed shelves in the diagonal case, at equal openings; 0 for none.</summary>
    public int Shelves { get; init; }

    /// <summary>Sheet material of a door inset in the diagonal front; null for an open one.</summary>
    public string? Door { get; init; }
}
