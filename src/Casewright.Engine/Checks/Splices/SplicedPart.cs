using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>A splice and the part it is in.</summary>
/// <param name="Splice">The splice.</param>
/// <param name="Part">Its part.</param>
public sealed record SplicedPart(Splice Splice, Part Part)
{
    /// <summary>Every splice whose part is known, in the plan's order.</summary>
    public static IEnumerable<SplicedPart> All(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var splice in context.Splices)
        {
            if (context.Part(splice.Part) is { } part)
                yield return new(splice, part);
        }
    }

    /// <summary>Whether the splice is a joint that has to carry by itself; a covered butt in a back is carried by what is behind it.</summary>
    public bool Carries => Splice.Method != SpliceMethod.CoveredButt;

    /// <summary>Whether the part stands upright.</summary>
    public bool Upright => Part.Place.AlongLength is Axis.Up or Axis.Down;

    /// <summary>How far the joint reaches from its line on either side: the tenon's half length, or half of a lap, scarf or plate.</summary>
    public Length Reach => Splice.Method switch
    {
        SpliceMethod.HalfLap or SpliceMethod.Scarf => Splice.Consumes / 2,
        _ => Splice.Tenons.Count == 0 ? Length.Zero : Splice.Tenons.Select(t => Length.Max(t.MortiseDepth, t.Length / 2)).Max(),
    };

    /// <summary>Height of the joint line of an upright part above the highest floor point.</summary>
    public Length Height => Part.Place.AlongLength == Axis.Down ? Part.Place.Origin.Y - Splice.Position : Part.Place.Origin.Y + Splice.Position;

    /// <summary>Place of the joint line of a level part along the wall.</summary>
    public Length Along => Part.Place.AlongLength == Axis.Left ? Part.Place.Origin.X - Splice.Position : Part.Place.Origin.X + Splice.Position;

    /// <summary>The clear span that the joint of a level part lies in: its number from the left and the distance from its left support; null over a support or where no spans are known.</summary>
    public (int Span, double X)? InSpan(CheckContext context)
    {
        var supports = ShelfReader.Supports(context, Part);
        for (int i = 1, span = 0; i < supports.Count; i++)
        {
            var (from, to) = (supports[i - 1].High, supports[i].Low);
            if (to <= from)
                continue;
            if (Along > from && Along < to)
                return (span, (Along - from).Metres);
            span++;
        }

        return null;
    }
}

/// <summary>Estimated strength of a splice, flatwise.</summary>
/// <param name="Characteristic">Moment in N·m before any factor.</param>
/// <param name="Basis">How it was estimated, in words.</param>
/// <param name="Share">Share of the unspliced panel's strength.</param>
public sealed record SpliceEstimate(double Characteristic, string Basis, double Share)
{
    // Solid hardwood tenons, grain across the joint: characteristic tension and bending in Pa (judgement, 0.6 of a hard maple's mean).
    private const double TenonTension = 36e6;
    private const double TenonBending = 60e6;

    // A spline is not described by the plan; it is taken as a third of the thickness and 12 mm deep each side.
    private const double SplineDepth = 0.012;

    /// <summary>The panel at the splice.</summary>
    public static SplicedPanel Panel(CheckContext context, Part part)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(part);
        var figures = context.Figures(part);
        var along = part.Grain != Grain.AlongWidth;
        return new(part.Width.Metres, part.Thickness.Metres, figures.Elasticity(along), figures.Bending(along), 0.6 * figures.Bending(along), figures.RollingShear);
    }

    /// <summary>All tenons as one set; null without tenons.</summary>
    public static TenonSet? Tenons(Splice splice)
    {
        ArgumentNullException.ThrowIfNull(splice);
        if (splice.Tenons.Count == 0)
            return null;
        var thinnest = splice.Tenons.Min(t => t.Thickness.Metres);
        var shortest = splice.Tenons.Min(t => t.Length.Metres) / 2;
        return new(thinnest, splice.Tenons.Sum(t => t.Width.Metres), shortest, TenonTension, TenonBending);
    }

    /// <summary>The estimate; null for a joint that carries nothing by itself or lacks its tenons.</summary>
    public static SpliceEstimate? Of(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(spliced);
        var panel = Panel(context, spliced.Part);
        var t = panel.Thickness;
        SpliceEstimate Shared(double share, string basis) => new(share * panel.Plain, basis, share);
        SpliceEstimate Moment(double moment, string basis) => new(moment, basis, moment / panel.Plain);
        switch (spliced.Splice.Method)
        {
            case SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors when Tenons(spliced.Splice) is { } tenons:
                return Moment(SpliceStrength.Tenons(panel, tenons, closed: true) * SpliceStrength.WallShare(panel, tenons), "tenons at mid-thickness, butt closed, bond by rolling shear of the panel");
            case SpliceMethod.Spline:
                return Moment(
                    SpliceStrength.Tenons(panel, new(t / 3, panel.Width, SplineDepth, TenonTension, TenonBending), closed: true),
                    "spline a third as thick as the panel and 12 mm deep each side, grain across the joint, butt closed");
            case SpliceMethod.HalfLap:
                return Shared(SpliceStrength.HalfLapShare, "half of the thickness at the shoulder, less peel");
            case SpliceMethod.Scarf:
                return Shared(SpliceStrength.ScarfShare(spliced.Splice.Consumes.Metres / t), "scarf of the slope that its length gives");
            case SpliceMethod.BackedButt:
                return Shared(SpliceStrength.PlateOnPulledFace(t, t, 1), "plate as thick as the panel, grain across the joint, at least 8 thicknesses each side");
            default:
                return null;
        }
    }

    /// <summary>Design moment in N·m: k_mod M/γ_M, halved for a creeping glue under a load that stays.</summary>
    public double Design(CheckContext context, Part part, LoadDuration duration)
    {
        ArgumentNullException.ThrowIfNull(context);
        var figures = context.Figures(part);
        var factor = ClimateFactors.StrengthFactor(context.Material(part).Kind, duration) / figures.MaterialFactor;
        var creep = duration == LoadDuration.Permanent && context.Job.Shop.Glue.Creeps ? 0.5 : 1;
        return factor * creep * Characteristic;
    }
}
