using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints of uprights while the case is tipped up from the floor: the case hangs between its foot and the hands at its head.</summary>
public sealed class SpliceTiltUpCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-tilt-up",
        "Bending of each splice of an upright, on edge, when its case is tipped up from lying on its back; what the back and the shelves add is not counted on.",
        "γ (m g/n L) x(L − x)/2 ≤ k_mod M_R/γ_M; n uprights share the case; M_R = ΣT·y about the lower edge",
        SpliceAdvice.Basis,
        Standing.Judgement)
    {
        Limits = [new("factor for the jolt of tipping", l => l.LoadFactor, 1.5, "", "our judgement", Standing.Judgement)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => s.Carries && s.Upright && s.Part.Role is PartRole.Side or PartRole.Partition))
        {
            if (context.Case(spliced.Part.Case) is { } box)
                yield return One(context, spliced, box);
        }
    }

    /// <summary>Moment in N·m at the splice from its upright's share of the case, unfactored.</summary>
    public static double Demand(CheckContext context, SplicedPart spliced, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        var length = spliced.Part.Length.Metres;
        var share = CaseWeightCheck.MassToLift(context, box) * Shelf.Gravity / Uprights(context, box);
        return Beams.SimpleMoment(share / length, length, spliced.Splice.Position.Metres);
    }

    private static int Uprights(CheckContext context, CaseBox box) => context.PartsOf(box).Count(p => p.Role is PartRole.Side or PartRole.Partition);

    private Finding One(CheckContext context, SplicedPart spliced, CaseBox box)
    {
        if (TooDamp(context, spliced.Splice.Id) is { } damp)
            return damp;
        if (SpliceEstimate.Of(context, spliced) is null)
            return NotChecked(context, spliced.Splice.Id, "the plan gives this joint no tenons to reckon with.", "Lay out its tenons.");
        var demand = Demand(context, spliced, box) * context.Limits.LoadFactor;
        var holds = SpliceHandlingCheck.OnEdge(context, spliced);
        var say = context.Say;
        bool Holds(SplicedPart s) => Demand(context, s, box) * context.Limits.LoadFactor <= SpliceHandlingCheck.OnEdge(context, s);
        List<string> ways = ["tip it up with hands at the joint too", "screw a batten along the front edges across the joint until it stands"];
        if (demand > holds)
            ways.AddRange(SpliceRemedies.Ways(context, spliced, Holds));
        return Report(
            context,
            demand <= holds ? Severity.Pass : Severity.Caution,
            spliced.Splice.Id,
            $"Tipped up with its case, the joint in {spliced.Part.Name} is bent on edge by {say.Moment(demand)} with safety and is estimated to hold {say.Moment(holds)}.",
            new(demand, holds, "N·m",
            [
                new("case without loose shelves", Say.Number(CaseWeightCheck.MassToLift(context, box)), "kg"),
                new("uprights that share it", Say.Number(Uprights(context, box), 0), ""),
                new("joint from the foot", Say.Number(spliced.Splice.Position.Metres * 1000), "mm"),
            ]),
            $"{Say.Sentence(ways)} {SpliceAdvice.TestPiece}");
    }
}
