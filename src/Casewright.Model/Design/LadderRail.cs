using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>A rail along the front of a run that a library ladder leans on and rolls along, with a bracket on every upright.</summary>
public sealed record LadderRail
{
    /// <summary>Height of the rail above the highest floor point; positive.</summary>
    public required Length Height { get; init; }

    /// <summary>From under the rail to the ladder's foot, level; null for a ladder that leans at 75° to the floor.</summary>
    public Length? Reach { get; init; }

    /// <summary>Person, load and ladder, in kg; above 0. 125 kg is common practice, no source.</summary>
    public double Mass { get; init; } = 125;
}
