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
            return Rule(context, Severity.Stop, splice.Id, $"The joint in {part.Name} lies on nothing.", "Lay the joint on a fixed shelf or a partition, or cover it with a trim band.");
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
            "Lay the joint on the middle of its carrier.");
    }

    private static Length Bearing(SplicedPart spliced, Part carrier)
    {
        var (low, high) = ShelfReader.Box(carrier);
        return spliced.Upright
            ? Length.Min(spliced.Height - low.Y, high.Y - spliced.Height)
            : Length.Min(spliced.Along - low.X, high.X - spliced.Along);
    }
}
