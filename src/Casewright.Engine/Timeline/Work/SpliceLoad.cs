using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Timeline.Work;

/// <summary>What is glued in one loading of a station: one part or several, with the joints closed then.</summary>
/// <param name="Id">Name of the load, made of its parts.</param>
/// <param name="Parts">The parts.</param>
/// <param name="Splices">The joints.</param>
/// <param name="Round">Turn of this loading when a part takes several, from 0.</param>
internal sealed record SpliceLoad(string Id, IReadOnlyList<Part> Parts, IReadOnlyList<Splice> Splices, int Round)
{
    public SpliceMethod Method => Splices[0].Method;

    public HoldingMethod Holding => Splices[0].Holding;

    public Length Longest => Parts.Select(p => p.Length).Aggregate(Length.Max);
}
