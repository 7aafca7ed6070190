using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>A stretch of a part that no joint line may enter; its very ends are allowed.</summary>
/// <param name="From">Low end, from the part's reference end.</param>
/// <param name="To">High end.</param>
/// <param name="Reason">What is in the way, in words that follow "in".</param>
public sealed record ForbiddenZone(Length From, Length To, string Reason)
{
    /// <summary>Whether a joint line there is forbidden.</summary>
    public bool Forbids(Length place) => From < place && place < To;
}
