using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Draw connectors and back plates only on a face that nobody sees.</summary>
public sealed class SpliceFaceCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-access-face",
        "Which face takes the holes of draw connectors or a back plate.",
        "",
        "Common practice: partitions have no hidden face, finished ends hide neither",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var (splice, part) in SplicedPart.All(context))
        {
            if (splice.Method is SpliceMethod.TenonsAndConnectors or SpliceMethod.BackedButt || splice.Connectors.Count > 0)
                yield return One(context, splice, part);
        }
    }

    private static string OtherFace(Part part, Face taken)
    {
        var (exposure, name) = taken == Face.Reference ? (part.OppositeFace, part.OppositeFaceName) : (part.ReferenceFace, part.ReferenceFaceName);
        return exposure == Exposure.Hidden
            ? $"Take its {name} face, which nobody sees, or join it with plain loose tenons and clamps."
            : "Join it with plain loose tenons and clamps.";
    }

    private Finding One(CheckContext context, Splice splice, Part part)
    {
        if (splice.AccessFace is not { } face)
            return Rule(context, Severity.Stop, splice.Id, $"The joint in {part.Name} needs a hidden face and the plan names none.", "Join it with plain loose tenons and clamps.");
        var (exposure, name) = face == Face.Reference ? (part.ReferenceFace, part.ReferenceFaceName) : (part.OppositeFace, part.OppositeFaceName);
        return exposure == Exposure.Hidden
            ? Rule(context, Severity.Pass, splice.Id, $"The joint in {part.Name} is reached from its {name} face, which nobody sees.")
            : Rule(context, Severity.Stop, splice.Id, $"The joint in {part.Name} would put holes in its {name} face, which shows.", OtherFace(part, face));
    }
}
