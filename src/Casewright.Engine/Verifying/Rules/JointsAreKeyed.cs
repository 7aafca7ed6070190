using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Every tenoned joint closes one way only: not with a piece turned over, and, however held, not with a piece of another key, of the
/// other hand or of the other end. Joints of one key are interchangeable in every respect. A part too narrow for a key is let pass only
/// where the plan itself cautions of its joint.
/// </summary>
internal sealed class JointsAreKeyed : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var cautioned = evidence.Plan.Findings.Where(finding => finding.Severity >= Severity.Caution).Select(finding => finding.Subject)
            .ToHashSet(StringComparer.Ordinal);
        var keys = evidence.Joints().Where(joint => joint.Splice.Tenons.Count > 0)
            .Select(joint => new Key(joint.Splice, JointPattern.Of(joint.Splice, joint.Part), Twin.Of(joint.Splice, joint.Part)))
            .ToList();
        return evidence.Joints().SelectMany(joint => Named(joint.Splice))
            .Concat(keys.Where(key => !cautioned.Contains(key.Splice.Id)).SelectMany(TurnedOver))
            .Concat(OneKey(keys))
            .Concat(OtherKeys(Kinds(keys.Where(key => !cautioned.Contains(key.Splice.Id)))))
            .Concat(Stated(Kinds(keys)));
    }

    private static IEnumerable<Problem> Named(Splice splice)
    {
        var hasKey = splice.Tenons.Count > 0;
        if (hasKey != splice.KeyClass.Length > 0)
            yield return new($"splices[{splice.Id}].keyClass", "Tenoned joints have a key, and only they.", splice.KeyClass, hasKey ? "a key" : "nothing");
        if (hasKey != splice.KeyMismatch is not null)
            yield return new($"splices[{splice.Id}].keyMismatch", "Tenoned joints state how far they are off the wrong way round, and only they.", $"{splice.KeyMismatch}", hasKey ? "a length" : "nothing");
    }

    private static IEnumerable<Problem> TurnedOver(Key key)
    {
        if (key.Pattern.ClosesOn(key.Pattern.TurnedOver()))
            yield return Wrong(key.Splice, "a piece turned over closes on the other all the same");
    }

    private static IEnumerable<Problem> OneKey(List<Key> keys) =>
        from alike in keys.GroupBy(key => key.Splice.KeyClass, StringComparer.Ordinal)
        let first = alike.First()
        from odd in alike
        where odd.Twin != first.Twin
        select new Problem($"splices[{odd.Splice.Id}].keyClass", $"The joint has the key of {first.Splice.Id}, but their pieces are not interchangeable.", odd.Splice.KeyClass, "a key of its own");

    private static IEnumerable<Problem> OtherKeys(List<Key> kinds)
    {
        for (var i = 0; i < kinds.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (kinds[i].Splice.KeyClass != kinds[j].Splice.KeyClass && Holds(kinds[j].Pattern).Any(kinds[i].Pattern.ClosesOn))
                    yield return Wrong(kinds[i].Splice, $"a piece from {kinds[j].Splice.Part}, cut to another key, closes on it");
            }
        }
    }

    /// <summary>A joint must not claim to be further off than it is. Play is not counted.</summary>
    private static IEnumerable<Problem> Stated(List<Key> kinds)
    {
        foreach (var key in kinds)
        {
            var off = kinds
                .Where(other => other.Splice.KeyClass != key.Splice.KeyClass && other.Pattern.SameSection(key.Pattern) && other.Pattern.IsComparable(key.Pattern))
                .SelectMany(other => Holds(other.Pattern))
                .Append(key.Pattern.TurnedOver())
                .Min(key.Pattern.Mismatch);
            if (key.Splice.KeyMismatch > off)
                yield return new($"splices[{key.Splice.Id}].keyMismatch", "The joint claims to be further off, the wrong way round, than it is.", $"{key.Splice.KeyMismatch}", $"at most {off}");
        }
    }

    private static IEnumerable<JointPattern> Holds(JointPattern pattern) => pattern.WrongHolds().Prepend(pattern);

    private static List<Key> Kinds(IEnumerable<Key> keys) => [.. keys.DistinctBy(key => (key.Splice.KeyClass, key.Splice.KeyMismatch, key.Pattern))];

    private static Problem Wrong(Splice splice, string how) => new(
        $"splices[{splice.Id}].tenons",
        $"The joint is not keyed: {how}.",
        string.Join(", ", splice.Tenons.Select(tenon => tenon.Offset)),
        "offsets that fit one way only");

    private sealed record Key(Splice Splice, JointPattern Pattern, Twin Twin);
}
