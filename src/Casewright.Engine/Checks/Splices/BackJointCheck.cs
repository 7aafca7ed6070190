using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Butt joints of thin backs lie on something.</summary>
public sealed class BackJointCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "back-joint",
        "Whether each butt joint of a back is carried by a fixed shelf or partition, or covered by a trim band, with enough bearing on both sides.",
        "distance from the joint line to either edge of the carrier ≥ the shop's bearing or overlap",
        "Common practice: 8 mm bearing, 25 mm overlap of a band",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => s.Splice.Method == SpliceMethod.CoveredButt))
            yield return One(context, spliced);
    }

    private Finding One(CheckContext context, SplicedPart spliced)
    {
        var (splice, part) = spliced;
        if (context.Part(splice.CoveredBy) is not { } carrier)
            return Rule(context, Severity.Stop, splice.Id, $"The joint in {part.Name} lies on nothing.", Carrier(context, spliced));
        var rules = context.Job.Shop.Splicing;
        var limit = carrier.Role == PartRole.TrimBand ? rules.BandOverlap : rules.BackBearing;
        var bearing = Bearing(spliced, carrier);
        var say = context.Say;
        return Report(
            context,
            bearing < limit ? Severity.Stop : Severity.Pass,
            splice.Id,
            $"The joint in {part.Name} has {say.Size(bearing)} of {carrier.Name} on its scantier side; {say.Size(limit)} is wanted.",
            new((double)bearing.Millimetres, (double)limit.Millimetres, "mm", []),
            Onto(context, spliced, carrier, limit));
    }

    // What carries a joint that lies on nothing: the nearest fixed shelf, band or partition that is thick enough.
    private static string Carrier(CheckContext context, SplicedPart spliced)
    {
        var rules = context.Job.Shop.Splicing;
        Length Least(Part p) => p.Role == PartRole.TrimBand ? rules.BandOverlap : rules.BackBearing;
        PartRole[] roles = spliced.Upright ? [PartRole.FixedShelf, PartRole.TrimBand] : [PartRole.Partition];
        var nearest = context.Together(spliced.Part).Where(p => roles.Contains(p.Role) && Size(spliced, p) >= 2 * Least(p))
            .MinBy(p => (Middle(spliced, p) - spliced.Splice.Position).Abs());
        return nearest is null
            ? "Add a fixed shelf or a partition for it to lie on, or cover it with a trim band."
            : Onto(context, spliced, nearest, Least(nearest));
    }

    private static string Onto(CheckContext context, SplicedPart spliced, Part carrier, Length limit) => Size(spliced, carrier) >= 2 * limit
        ? $"Lay the joint on the middle of {carrier.Name}, {context.Say.Size(Middle(spliced, carrier).RoundTo(context.Say.Step))} from the {(spliced.Upright ? "lower" : "left")} end of {spliced.Part.Name}."
        : $"{carrier.Name} is too thin to carry a joint: use one {context.Say.AtLeast((2 * limit).Metres)} thick or more, or cover the joint with a trim band.";

    private static Length Size(SplicedPart spliced, Part carrier)
    {
        var (low, high) = ShelfReader.Box(carrier);
        return spliced.Upright ? high.Y - low.Y : high.X - low.X;
    }

    // Of the carrier, from the reference end of the back.
    private static Length Middle(SplicedPart spliced, Part carrier)
    {
        var (low, high) = ShelfReader.Box(carrier);
        return spliced.Upright
            ? ((low.Y + high.Y) / 2) - spliced.Height + spliced.Splice.Position
            : ((low.X + high.X) / 2) - spliced.Along + spliced.Splice.Position;
    }

    private static Length Bearing(SplicedPart spliced, Part carrier)
    {
        var (low, high) = ShelfReader.Box(carrier);
        return spliced.Upright
            ? Length.Min(spliced.Height - low.Y, high.Y - spliced.Height)
            : Length.Min(spliced.Along - low.X, high.X - spliced.Along);
    }
}
