using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>A string stretched level along the wall, held off it by equal blocks at both ends; distances from string to wall show its bow.</summary>
public sealed record StringLine
{
    /// <summary>Height of the string above the highest floor point; not negative.</summary>
    public required Length Height { get; init; }

    /// <summary>Distances along the wall and from string to wall; at least two.</summary>
    public required ValueList<LineReading> Readings { get; init; }
}

/// <summary>A plumb line in front of the wall; distances from line to wall show its lean.</summary>
public sealed record PlumbLine
{
    /// <summary>Place along the wall; not negative.</summary>
    public required Length At { get; init; }

    /// <summary>Heights and distances from line to wall; at least two.</summary>
    public required ValueList<LineReading> Readings { get; init; }
}
