using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// The method of each joint is one that the shop makes and the run wishes, in a thickness it is made in; holes and plates only on a
/// face that nobody sees; the plain covered butt only in backs and trim.
/// </summary>
internal sealed class SpliceMethods : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from joint in evidence.Joints()
        from problem in Allowed(evidence, joint.Splice, joint.Part)
            .Concat(Thickness(evidence, joint.Splice, joint.Part))
            .Concat(Access(joint.Splice, joint.Part))
            .Concat(Holding(joint.Splice))
        select problem;

    private static IEnumerable<Problem> Allowed(Evidence evidence, Splice splice, Part part)
    {
        var place = $"splices[{splice.Id}].method";
        if (splice.Method == SpliceMethod.CoveredButt)
        {
            if (part.Role != PartRole.Back && !Practice.IsTrim(part.Role))
                yield return new(place, "Only backs and trim are joined by a covered butt.", $"{part.Role}", "a back or a strip of trim");
            yield break;
        }

        var methods = evidence.Job.Shop.Splicing.Methods.Select(entry => entry.Method).ToList();
        if (!methods.Contains(splice.Method))
            yield return new(place, "The shop is not set up for this method.", $"{splice.Method}", string.Join(", ", methods));
        if (evidence.Run(part.Run)?.Splices.Method is { } wish && wish != splice.Method)
            yield return new(place, "The run wishes another method.", $"{splice.Method}", $"{wish}");
    }

    /// <summary>Sheets measure a little under their name: the method may go by either.</summary>
    private static IEnumerable<Problem> Thickness(Evidence evidence, Splice splice, Part part)
    {
        var (least, most) = Practice.Thickness(splice.Method);
        var nominal = evidence.Material(part.Material)?.Nominal ?? part.Thickness;
        var fits = (part.Thickness >= least || nominal >= least) && (part.Thickness <= most || nominal <= most);
        return fits ? [] : [new Problem($"splices[{splice.Id}].method", $"{splice.Method} is not made in this thickness.", $"{part.Thickness}", $"{least} to {most}")];
    }

    private static IEnumerable<Problem> Access(Splice splice, Part part)
    {
        var place = $"splices[{splice.Id}].accessFace";
        if (!Practice.NeedsAccess(splice.Method))
        {
            if (splice.AccessFace is { } touched)
                yield return new(place, "This method touches neither face.", $"{touched}", "no face");
            yield break;
        }

        if (splice.AccessFace is not { } face)
        {
            yield return new(place, "The method needs a face that takes its holes or plate.", "no face", "a hidden face");
            yield break;
        }

        var exposure = face == Face.Reference ? part.ReferenceFace : part.OppositeFace;
        if (exposure != Exposure.Hidden)
            yield return new(place, "The holes or the plate would be on a face that shows.", $"{face}", "a hidden face");
    }

    private static IEnumerable<Problem> Holding(Splice splice)
    {
        HoldingMethod[] ways = splice.Method switch
        {
            SpliceMethod.TenonsAndConnectors => [HoldingMethod.DrawConnectors],
            SpliceMethod.HalfLap or SpliceMethod.Scarf => [HoldingMethod.FaceClamps],
            SpliceMethod.CoveredButt => [HoldingMethod.Carried],
            SpliceMethod.BackedButt => [HoldingMethod.FaceClamps, HoldingMethod.EndClamps, HoldingMethod.SpreaderAgainstStop, HoldingMethod.PinchDogs],
            _ => [HoldingMethod.EndClamps, HoldingMethod.SpreaderAgainstStop, HoldingMethod.PinchDogs],
        };
        return ways.Contains(splice.Holding)
            ? []
            : [new Problem($"splices[{splice.Id}].holding", $"{splice.Method} is not held so.", $"{splice.Holding}", string.Join(", ", ways))];
    }
}
