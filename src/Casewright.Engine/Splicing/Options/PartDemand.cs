using Casewright.Model.Collections;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Alike parts and the ways to make one of them.</summary>
/// <param name="Parts">The parts, in the order of the casework; at least one.</param>
/// <param name="Options">The ways, the preferred first; at least one.</param>
/// <param name="SightLineGroup">Parts that keep one joint line between them; null when the line is free.</param>
/// <param name="WhyWhole">Why parts that outrun the usual stock can only be made whole, from longer stock; null for all others.</param>
public sealed record PartDemand(ValueList<Part> Parts, ValueList<PartOption> Options, string? SightLineGroup = null, string? WhyWhole = null)
{
    /// <summary>Id of the first part, by which the group goes.</summary>
    public string Id => Parts[0].Id;

    /// <summary>Pieces that are sawn already, the same for every part; every option asks for them. Empty before the first sheet is cut.</summary>
    public ValueList<PieceCut> Kept { get; init; } = [];

    /// <summary>The numbers, within an option, of the pieces that are still to be cut.</summary>
    public IEnumerable<int> ToCut(PartOption option)
    {
        ArgumentNullException.ThrowIfNull(option);
        return Enumerable.Range(0, option.Pieces.Count).Where(i => !Kept.Contains(option.Pieces[i]));
    }
}
