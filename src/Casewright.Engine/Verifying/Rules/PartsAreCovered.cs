using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Every part is covered from end to end, once, by the stretches of its pieces; in every strip when it is joined edge to edge.</summary>
internal sealed class PartsAreCovered : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Casework.Parts.SelectMany(part => Part(evidence, part));

    private static IEnumerable<Problem> Part(Evidence evidence, Part part)
    {
        var place = $"parts[{part.Id}]";
        var strips = evidence.PiecesOf(part).GroupBy(piece => piece.Strip).ToList();
        if (strips.Count == 0)
            return [new Problem(place, "No piece is cut for this part.", "no piece", "pieces that cover it")];

        var numbers = strips.Select(strip => strip.Key).ToList();
        if (!numbers.SequenceEqual(Enumerable.Range(0, numbers.Count)))
            return [new Problem(place, "Strips are missing.", string.Join(", ", numbers), "strips 0, 1, 2 ... without a gap")];

        return strips.SelectMany(strip => Strip(part, [.. strip]));
    }

    private static IEnumerable<Problem> Strip(Part part, IReadOnlyList<Piece> pieces)
    {
        var reached = Length.Zero;
        foreach (var piece in pieces)
        {
            if (piece.From != reached)
                yield return new($"pieces[{piece.Id}].from", "The stretches of the part do not meet here.", $"{piece.From}", $"{reached}, where the piece before it ends");
            if (piece.To <= piece.From)
                yield return new($"pieces[{piece.Id}].to", "The stretch is empty.", $"{piece.From} to {piece.To}", "an end beyond its start");
            reached = piece.To;
        }

        if (reached != part.Length)
            yield return new($"pieces[{pieces[^1].Id}].to", "The pieces do not end where the part ends.", $"{reached}", $"{part.Length}");
    }
}
