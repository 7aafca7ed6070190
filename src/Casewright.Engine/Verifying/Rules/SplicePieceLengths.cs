using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>A spliced part has no more joints than the shop makes in one, none where its run forbids them, and no stub among its pieces.</summary>
internal sealed class SplicePieceLengths : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Casework.Parts.Where(part => evidence.SplicesOf(part).Count > 0).SelectMany(part => Part(evidence, part));

    private static IEnumerable<Problem> Part(Evidence evidence, Part part)
    {
        var rules = evidence.Job.Shop.Splicing;
        var joints = evidence.SplicesOf(part).Count;
        if (joints > rules.MostJoints)
            yield return new($"parts[{part.Id}].splices", "The part has more joints than the shop makes in one.", $"{joints}", $"at most {rules.MostJoints}");
        if (evidence.Run(part.Run) is { Splices.Allowed: false })
            yield return new($"parts[{part.Id}].splices", "The part is spliced, which its run does not allow.", $"{joints}", "none");

        foreach (var piece in evidence.PiecesOf(part))
        {
            var stretch = piece.To - piece.From;
            if (stretch < rules.ShortestPiece)
                yield return new($"pieces[{piece.Id}]", "The piece is shorter than the shop splices.", $"{stretch}", $"at least {rules.ShortestPiece}");
            if (stretch * rules.ShortestShare < part.Length)
                yield return new($"pieces[{piece.Id}]", "The piece is too small a share of its part.", $"{stretch} of {part.Length}", $"at least 1/{rules.ShortestShare} of it");
        }
    }
}
