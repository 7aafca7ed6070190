using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Every tenoned joint closes one way only: not with a piece turned over, not with a piece turned end for end, and not with the
/// piece of a part of the other hand.
/// </summary>
internal sealed class JointsAreKeyed : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var joints = evidence.Joints().Where(joint => joint.Splice.Tenons.Count > 0).ToList();
        return joints.SelectMany(joint => TurnedOver(joint.Splice, joint.Part))
            .Concat(evidence.Casework.Parts.SelectMany(part => EndForEnd(evidence, part)))
            .Concat(OtherHand(joints));
    }

    private static IEnumerable<Problem> TurnedOver(Splice splice, Part part)
    {
        var pattern = JointPattern.Of(splice, part);
        if (pattern.ClosesOn(pattern.EdgesExchanged().FacesExchanged()))
            yield return Wrong(splice, "a piece turned over closes on the other all the same");
    }

    /// <summary>A piece between two joints must not serve the one with the end that belongs to the other.</summary>
    private static IEnumerable<Problem> EndForEnd(Evidence evidence, Part part)
    {
        var splices = evidence.SplicesOf(part).Where(splice => splice.Tenons.Count > 0).ToList();
        for (var i = 1; i < splices.Count; i++)
        {
            var (foot, head) = (JointPattern.Of(splices[i - 1], part), JointPattern.Of(splices[i], part));
            if (foot.ClosesOn(head.FacesExchanged()) || foot.ClosesOn(head.EdgesExchanged()))
                yield return Wrong(splices[i], $"a piece turned end for end closes at joint {splices[i - 1].Id}");
        }
    }

    /// <summary>
    /// A piece of the other hand is a mirror image: laid with its front to the front its faces are exchanged, laid with its inside
    /// to the inside its edges are.
    /// </summary>
    private static IEnumerable<Problem> OtherHand(List<(Splice Splice, Part Part)> joints)
    {
        var lefts = Kinds(joints, Hand.Left);
        foreach (var right in Kinds(joints, Hand.Right))
        {
            var twin = lefts.Find(left => left.Pattern.ClosesOn(right.Pattern.FacesExchanged()) || left.Pattern.ClosesOn(right.Pattern.EdgesExchanged()));
            if (twin.Splice is not null)
                yield return Wrong(right.Splice, $"a piece of the other hand, from {twin.Splice.Part}, closes on it");
        }
    }

    private static List<(Splice Splice, JointPattern Pattern)> Kinds(List<(Splice Splice, Part Part)> joints, Hand hand) =>
        [.. joints.Where(joint => joint.Part.Hand == hand).Select(joint => (joint.Splice, Pattern: JointPattern.Of(joint.Splice, joint.Part))).DistinctBy(kind => kind.Pattern)];

    private static Problem Wrong(Splice splice, string how) => new(
        $"splices[{splice.Id}].tenons",
        $"The joint is not keyed: {how}.",
        string.Join(", ", splice.Tenons.Select(tenon => tenon.Offset)),
        "offsets that fit one way only");
}
