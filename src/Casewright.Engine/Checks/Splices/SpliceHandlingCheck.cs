using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Carrying a spliced part by its ends, flat and on edge.</summary>
public sealed class SpliceHandlingCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-handling",
        "Bending of each splice when its part is carried by the ends, flat or on edge.",
        "γ g m′ x(L − x)/2 ≤ k_mod M_R/γ_M, k_mod for short loads; on edge M_R = ΣT·y about the lower edge",
        SpliceAdvice.Basis,
        Standing.Judgement)
    {
        Limits = [new("factor for the jolt of carrying", l => l.LoadFactor, 1.5, "", "our judgement", Standing.Judgement)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => s.Carries))
            yield return One(context, spliced);
    }

    private Finding One(CheckContext context, SplicedPart spliced)
    {
        var (splice, part) = spliced;
        if (TooDamp(context, splice.Id) is { } damp)
            return damp;
        if (SpliceEstimate.Of(context, spliced) is not { } estimate)
            return NotChecked(context, splice.Id, "the plan gives this joint no tenons to reckon with.", "Lay out its tenons.");
        var demand = Demand(context, spliced) * context.Limits.LoadFactor;
        var flat = estimate.Design(context, part, LoadDuration.Short);
        var edge = OnEdge(context, spliced);
        var cure = Say.Number(context.Job.Shop.Glue.CureHours, 0);
        var figures = new Figures(demand, flat, "N·m", [new("held on edge", Say.Number(edge), "N·m"), new("how the strength is estimated", estimate.Basis, "")]);
        if (demand <= flat)
            return Report(context, Severity.Pass, splice.Id, $"{part.Name} may be carried flat or on edge once the glue has cured {cure} h.", figures);
        var message = $"Carried flat by its ends, the joint in {part.Name} is bent by {context.Say.Moment(demand)} with safety and is estimated to hold {context.Say.Moment(flat)}.";
        return demand <= edge
            ? Report(context, Severity.Caution, splice.Id, message, figures, $"Carry it on edge, two people, and not before the glue has cured {cure} h. {SpliceAdvice.TestPiece}")
            : Report(context, Severity.Stop, splice.Id, message, figures, $"{Stronger(context, spliced)} {SpliceAdvice.TestPiece}");
    }

    private static string Stronger(CheckContext context, SplicedPart spliced) => Say.Sentence(
    [
        "screw a batten along it before it is moved",
        .. SpliceRemedies.Ways(context, spliced, s => SpliceEstimate.Of(context, s) is { } estimate
            && Demand(context, s) * context.Limits.LoadFactor <= estimate.Design(context, s.Part, LoadDuration.Short)),
    ]);

    /// <summary>Moment in N·m of the part's own weight at the splice, carried by the ends.</summary>
    public static double Demand(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        var length = spliced.Part.Length.Metres;
        return Beams.SimpleMoment(context.Mass(spliced.Part) * Shelf.Gravity / length, length, spliced.Splice.Position.Metres);
    }

    /// <summary>Moment in N·m that the splice is estimated to hold for a short time in the plane of its panel, the weaker way round.</summary>
    public static double OnEdge(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        // Tenons pull about the compressed edge; other joints are taken at their flatwise share of the panel on edge.
        var panel = SpliceEstimate.Panel(context, spliced.Part);
        var factor = ClimateFactors.StrengthFactor(context.Material(spliced.Part).Kind, LoadDuration.Short) / context.Figures(spliced.Part).MaterialFactor;
        if (SpliceEstimate.Tenons(spliced.Splice) is not { } set)
            return factor * (SpliceEstimate.Of(context, spliced)?.Share ?? 0) * panel.BendingStrength * panel.Thickness * panel.Width * panel.Width / 6;
        var one = set with { TotalWidth = spliced.Splice.Tenons.Min(t => t.Width.Metres) };
        var offsets = spliced.Splice.Tenons.Select(t => t.Offset.Metres).ToList();
        var lower = SpliceStrength.InPlane(panel, one, offsets);
        var upper = SpliceStrength.InPlane(panel, one, [.. offsets.Select(y => panel.Width - y)]);
        return factor * Math.Min(lower, upper);
    }
}
