using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Joints that share a pair letter are interchangeable in every respect, so that pieces of one letter always go together.</summary>
internal sealed class PairLetters : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var first = new Dictionary<string, (Splice Splice, Twin Twin)>(StringComparer.Ordinal);
        foreach (var (splice, part) in evidence.Joints())
        {
            var place = $"splices[{splice.Id}].pairLetter";
            if (splice.PairLetter.Length == 0)
                yield return new(place, "The joint has no pair letter.", "nothing", "a letter");

            var twin = Twin.Of(splice, part);
            if (!first.TryAdd(splice.PairLetter, (splice, twin)) && first[splice.PairLetter].Twin != twin)
            {
                yield return new(
                    place,
                    $"The joint shares its pair letter with {first[splice.PairLetter].Splice.Id}, but their pieces are not interchangeable.",
                    splice.PairLetter,
                    "a letter of its own");
            }
        }
    }
}
