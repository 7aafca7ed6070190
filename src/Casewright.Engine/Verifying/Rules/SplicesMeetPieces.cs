using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Joints stand exactly where pieces of their part meet: none without two pieces, no meeting without a joint.</summary>
internal sealed class SplicesMeetPieces : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Casework.Parts.SelectMany(part => Part(evidence, part));

    private static IEnumerable<Problem> Part(Evidence evidence, Part part)
    {
        var pieces = evidence.PiecesOf(part);
        var meetings = pieces.Where(piece => piece.To < part.Length).Select(piece => piece.To)
            .Concat(pieces.Where(piece => piece.From > Length.Zero).Select(piece => piece.From))
            .ToHashSet();
        Length? before = null;
        foreach (var splice in evidence.SplicesOf(part))
        {
            if (splice.Position == before)
                yield return new($"splices[{splice.Id}].position", "Two joints of one part stand in one place.", $"{splice.Position}", "one joint there");
            else if (!meetings.Remove(splice.Position))
                yield return new($"splices[{splice.Id}].position", "No two pieces meet at this joint.", $"{splice.Position}", "the place where two pieces meet");
            before = splice.Position;
        }

        foreach (var meeting in meetings.Order())
            yield return new($"parts[{part.Id}].splices", "Two pieces meet where no joint is listed.", $"{meeting}", "a joint there");
    }
}
