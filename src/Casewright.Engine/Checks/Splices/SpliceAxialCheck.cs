using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints of uprights along their length: pressed together by the load for good, pulled when the case is lifted by its head.</summary>
public sealed class SpliceAxialCheck : Check
{
    // Crushing along the grain of plies over bending strength: below the ratio of clear wood, 0.45 to 0.55 in the Wood Handbook's species
    // tables (from memory).
    private const double CrushingShare = 0.4;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-axial",
        "Weight that presses on each splice of an upright, against crushing of the butt, and pull on it when the case is lifted by its head.",
        "γ N ≤ k_mod 0.4 f_m b t/γ_M; lifted: γ (m g/n)(x/L) ≤ k_mod T_R/γ_M, T_R = min(2 w e τ, w t_t f_t)",
        SpliceAdvice.Basis,
        Standing.Judgement)
    {
        Limits = [new("factor on loads", l => l.LoadFactor, 1.5, "", "EN 1990, variable loads (from memory)", Standing.FromMemory)],
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

    private Finding One(CheckContext context, SplicedPart spliced, CaseBox box)
    {
        var (splice, part, say) = (spliced.Splice, spliced.Part, context.Say);
        if (TooDamp(context, splice.Id) is { } damp)
            return damp;
        if (UprightLoads.OnOneUpright(context, box) is not { } weight)
            return NotChecked(context, splice.Id, "nobody has said what the shelves carry.", ShelfLoads.LoadAdvice);
        if (Pull(context, spliced) is not { } pulls)
            return NotChecked(context, splice.Id, "the plan gives this joint no tenons to reckon with.", "Lay out its tenons.");
        var (press, bears) = (weight * context.Limits.LoadFactor, Bears(context, part));
        var uprights = context.PartsOf(box).Count(p => p.Role is PartRole.Side or PartRole.Partition);
        var hung = context.Limits.LoadFactor * CaseWeightCheck.MassToLift(context, box) * Shelf.Gravity / uprights * (splice.Position.Metres / part.Length.Metres);
        var figures = new Figures(press, bears, "N", [new("pull when the case is lifted by its head", Say.Number(hung, 0), "N"), new("pull that the joint is estimated to hold", Say.Number(pulls, 0), "N")]);
        if (press > bears)
            return Report(context, Severity.Stop, splice.Id, $"{say.Force(press)} press on the joint in {part.Name}; its butt bears {say.Force(bears)}.", figures, Thicker(context, spliced, box, weight));
        return hung > pulls
            ? Report(context, Severity.Caution, splice.Id, $"Lifted by its head, the case pulls on the joint in {part.Name} with {say.Force(hung)}; it is estimated to hold {say.Force(pulls)}.", figures, $"Lift the case from below the joint, never by its head. {SpliceAdvice.TestPiece}")
            : Report(context, Severity.Pass, splice.Id, $"{say.Force(press)} press on the joint in {part.Name}; its butt bears {say.Force(bears)}, and the tenons only align it.", figures);
    }

    private static string Thicker(CheckContext context, SplicedPart spliced, CaseBox box, double weight)
    {
        var (say, part) = (context.Say, spliced.Part);
        bool Passes(Length thick) => (weight + UprightLoads.Thickened(context, box, part.Thickness, thick)) * context.Limits.LoadFactor <= Bears(context, part with { Thickness = thick });
        return Solving.Least(say.Step, part.Thickness, ShelfRemedies.ThickestPanel, Passes) is { } thickness
            ? $"Use uprights {say.Size(thickness)} thick, or more of them."
            : "Use more uprights, so that each carries less.";
    }

    private static double Bears(CheckContext context, Part part)
    {
        var figures = context.Figures(part);
        var factor = ClimateFactors.StrengthFactor(context.Material(part).Kind, LoadDuration.Permanent) / figures.MaterialFactor;
        return factor * CrushingShare * figures.Bending(part.Grain != Grain.AlongWidth) * part.Width.Metres * part.Thickness.Metres;
    }

    private static double? Pull(CheckContext context, SplicedPart spliced)
    {
        var panel = SpliceEstimate.Panel(context, spliced.Part);
        var factor = ClimateFactors.StrengthFactor(context.Material(spliced.Part).Kind, LoadDuration.Short) / context.Figures(spliced.Part).MaterialFactor;
        if (SpliceEstimate.Tenons(spliced.Splice) is { } tenons)
            return factor * SpliceStrength.TenonTension(panel, tenons);
        return SpliceEstimate.Of(context, spliced) is { } estimate ? factor * estimate.Share * panel.TensileStrength * panel.Width * panel.Thickness : null;
    }
}
