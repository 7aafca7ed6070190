using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Strength of splices in service: bending of level parts, off-centre shelf loads on uprights.</summary>
public sealed class SpliceStrengthCheck : Check
{
    // A pin's load acts about 10 mm inside the face of its upright (judgement; 19 mm off the middle of an 18 mm side).
    private const double PinArm = 0.010;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-strength",
        "Bending moment that the finished casework puts on each splice, against the splice's estimated strength.",
        "γ M(x) ≤ k_mod M_R/γ_M, × 0.5 for glue that creeps; M_R of tenons = n w min(τ e t/[1 + 1.25 (1 − t_t/t)], t t_t/[2.5 (1 − t_t/t)/f_t + 6/f_m])",
        SpliceAdvice.Basis,
        Standing.Judgement)
    {
        Limits = [new("factor on loads", l => l.LoadFactor, 1.5, "", "EN 1990, variable loads (from memory)", Standing.FromMemory)],
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
        if (Demand(context, spliced) is not { } moment)
            return NotChecked(context, splice.Id, "nobody has said what the shelves carry.", ShelfLoads.LoadAdvice);
        var demand = moment * context.Limits.LoadFactor;
        var strength = estimate.Design(context, part, LoadDuration.Permanent);
        var say = context.Say;
        var passes = demand <= strength;
        var severity = passes ? Severity.Pass : spliced.Upright ? Severity.Caution : Severity.Stop;
        var message = $"The joint in {part.Name} is bent by {say.Moment(demand)} with safety; it is estimated to hold {say.Moment(strength)} for good "
            + $"({Say.Number(estimate.Share * 100, 0)} % of the unjoined panel before safety).";
        return Report(context, severity, splice.Id, message, new(demand, strength, "N·m", Inputs(estimate, splice.Method.ToString())), passes ? "" : Advice(context, spliced, strength / demand));
    }

    private static bool Holds(CheckContext context, SplicedPart spliced) =>
        SpliceEstimate.Of(context, spliced) is { } estimate && Demand(context, spliced) is { } moment
        && moment * context.Limits.LoadFactor <= estimate.Design(context, spliced.Part, LoadDuration.Permanent);

    private static string Advice(CheckContext context, SplicedPart spliced, double share)
    {
        var ways = SpliceRemedies.Ways(context, spliced, s => Holds(context, s));
        if (!spliced.Upright && spliced.Part.LoadPerMetre is { } load)
        {
            var shelf = ShelfReader.Read(context, spliced.Part, load);
            var most = ((shelf.TotalLoad * share) - shelf.OwnWeight) / Shelf.Gravity;
            if (most >= 1)
                ways.Add($"keep the load to {context.Say.LoadAtMost(most)}");
        }

        if (ways.Count == 0)
            ways.Add("put an upright under it or cut the part whole from a longer sheet");
        return Say.Sentence(ways) + " " + SpliceAdvice.TestPiece;
    }

    /// <summary>Moment in N·m at a splice in service, unfactored; null when a load is missing.</summary>
    public static double? Demand(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        if (spliced.Upright)
            return UprightDemand(context, spliced.Part);
        if (!ShelfReader.Roles.Contains(spliced.Part.Role))
            return 0;
        if (ShelfReader.Hold(context, spliced.Part) == ShelfHold.Along)
            return 0;
        if (spliced.Part.LoadPerMetre is not { } load && spliced.Part.Role is not (PartRole.Top or PartRole.Bottom))
            return null;
        return LevelDemand(context, spliced, spliced.Part.LoadPerMetre ?? 0);
    }

    private static double LevelDemand(CheckContext context, SplicedPart spliced, double load)
    {
        var shelf = ShelfReader.Read(context, spliced.Part, load);
        var beam = new ContinuousBeam(shelf.Spans, shelf.TotalLoad, 1);
        if (spliced.InSpan(context) is var (span, x))
            return Math.Abs(beam.Moment(span, x));

        // Over an upright the moment of a continuous panel is at its largest; a single span has none at its ends.
        return beam.Count == 1 ? 0 : Enumerable.Range(0, beam.Count + 1).Max(i => Math.Abs(beam.MomentOver(i)));
    }

    private static double? UprightDemand(CheckContext context, Part upright)
    {
        var largest = 0.0;
        foreach (var shelf in context.Together(upright).Where(p => p.Role == PartRole.AdjustableShelf))
        {
            if (shelf.LoadPerMetre is not { } load)
                return null;
            var reaction = ShelfReader.Read(context, shelf, load).TotalLoad * shelf.Length.Metres / 2;
            largest = Math.Max(largest, reaction * ((upright.Thickness.Metres / 2) + PinArm));
        }

        return largest;
    }

    private static ValueList<FindingInput> Inputs(SpliceEstimate estimate, string method) =>
    [
        new("method", method, ""),
        new("how the strength is estimated", estimate.Basis, ""),
        new("strength before safety", Say.Number(estimate.Characteristic), "N·m"),
    ];
}
