using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A finished member of the casework, whole, as it is after splicing and trimming.</summary>
public sealed record Part
{
    /// <summary>Stable id, unique in the plan, such as C3-L.</summary>
    public required string Id { get; init; }

    /// <summary>Name in words, such as "left side, case 3".</summary>
    public required string Name { get; init; }

    /// <summary>Id of its case, or of its run for parts that span cases.</summary>
    public required string Case { get; init; }

    /// <summary>Id of its run.</summary>
    public required string Run { get; init; }

    /// <summary>What it is.</summary>
    public required PartRole Role { get; init; }

    /// <summary>Handedness.</summary>
    public Hand Hand { get; init; }

    /// <summary>Id of its material.</summary>
    public required string Material { get; init; }

    /// <summary>Finished size along x, the reference end to the other; positive.</summary>
    public required Length Length { get; init; }

    /// <summary>Finished size along y, the reference edge to the other, applied nosing or edging not counted; positive.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness along z; positive.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Which way its grain runs.</summary>
    public required Grain Grain { get; init; }

    /// <summary>Place in the room.</summary>
    public required Placement Place { get; init; }

    /// <summary>Who sees the reference face.</summary>
    public required Exposure ReferenceFace { get; init; }

    /// <summary>Who sees the opposite face.</summary>
    public required Exposure OppositeFace { get; init; }

    /// <summary>Name of the reference face on papers, such as "inside", "upper" or "front".</summary>
    public required string ReferenceFaceName { get; init; }

    /// <summary>Name of the opposite face on papers, such as "outside", "under" or "rear".</summary>
    public required string OppositeFaceName { get; init; }

    /// <summary>Dados, grooves, rabbets, hole rows, notches and zones for hardware.</summary>
    public ValueList<Machining> Machining { get; init; } = [];

    /// <summary>Id of the nosing part on its reference edge; null when the edge is bare.</summary>
    public string? Nosing { get; init; }

    /// <summary>Where its dimensions came from; at least length, width and thickness.</summary>
    public ValueList<Derivation> Derivations { get; init; } = [];

    /// <summary>Left oversize for fitting on site: included in length or width, named in words. Null for parts cut to size.</summary>
    public string? FitOnSite { get; init; }

    /// <summary>Lowest corner of the box that it fills in the room, cut ends taken off.</summary>
    public Point3 LowCorner => Place.Tilt is null
        ? Place.LowCorner(Length, Width, Thickness)
        : PartSolid.Of(this).In(Place).Aggregate((a, b) => a.Lowest(b));

    /// <summary>Highest corner of the box that it fills in the room, cut ends taken off.</summary>
    public Point3 HighCorner => Place.Tilt is null
        ? Place.HighCorner(Length, Width, Thickness)
        : PartSolid.Of(this).In(Place).Aggregate((a, b) => a.Highest(b));

    /// <summary>Load that a shelf carries, in kg per metre; null when nobody said.</summary>
    public double? LoadPerMetre { get; init; }
}
