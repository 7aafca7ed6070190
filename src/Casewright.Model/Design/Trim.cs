using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>Nailers: strips across the back of each case through which it is fixed to the studs.</summary>
public sealed record NailerDesign
{
    /// <summary>Height of a nailer; positive.</summary>
    public required Length Height { get; init; }

    /// <summary>Sheet material; null for the run's material.</summary>
    public string? Material { get; init; }
}

/// <summary>Solid nosing; a board material's thickness lies in the shelf's depth, its board width is the height shown.</summary>
public sealed record NosingDesign
{
    /// <summary>Board material on the fronts of fixed and loose shelves; null for none.</summary>
    public string? Shelves { get; init; }

    /// <summary>Board material on the fronts of sides, partitions, tops and bottoms; its board width is their thickness or a little more, and is trimmed flush to the panel after gluing. Null for none.</summary>
    public string? Uprights { get; init; }
}

/// <summary>Face frame members; each a board material whose board width is the width shown.</summary>
public sealed record FaceFrameDesign
{
    /// <summary>Stile at either end of a case.</summary>
    public required string EndStile { get; init; }

    /// <summary>Stile over a partition; null when no case has two bays.</summary>
    public string? MidStile { get; init; }

    /// <summary>Top rail.</summary>
    public required string TopRail { get; init; }

    /// <summary>Bottom rail; its top edge is flush with the upper face of the bottom panel.</summary>
    public required string BottomRail { get; init; }

    /// <summary>Rail in front of a fixed shelf at which doors or drawers end, its top edge flush with the shelf; null when none does.</summary>
    public string? MidRail { get; init; }

    /// <summary>Stile over the joint between two cases: one frame then covers all cases of a tier, its rails running through. Null when every case has a frame of its own.</summary>
    public string? JointStile { get; init; }

    /// <summary>Board that the packers of drawer slides are planed from, as thick as the frame laps over the sides or thicker; null when no drawer is behind the frame.</summary>
    public string? SlidePacker { get; init; }

    /// <summary>How far the frame laps past the case at a finished end, trimmed flush after gluing.</summary>
    public Length FinishedOverlap { get; init; }
}

/// <summary>A flat strip over the joint line of the backs, at one height along the run.</summary>
public sealed record TrimBandDesign
{
    /// <summary>Board material; its board width must cover the joint by the shop's overlap on each side.</summary>
    public required string Material { get; init; }
}
