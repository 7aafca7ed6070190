using Casewright.Model.Measure;

namespace Casewright.Model.Site;

/// <summary>A wall that a run stands against.</summary>
public sealed record Wall
{
    /// <summary>Id, unique among the job's walls.</summary>
    public required string Id { get; init; }

    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>Tightest width between its ends; positive.</summary>
    public required Length Width { get; init; }

    /// <summary>Lowest ceiling above the highest floor point; positive.</summary>
    public required Length Height { get; init; }
}
