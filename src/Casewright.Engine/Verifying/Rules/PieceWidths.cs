using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Pieces are as wide as their part; strips of an edge-jointed part together with what their joints take.</summary>
internal sealed class PieceWidths : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Casework.Parts.SelectMany(part => Part(evidence, part));

    private static IEnumerable<Problem> Part(Evidence evidence, Part part)
    {
        var pieces = evidence.PiecesOf(part);
        var strips = pieces.Select(piece => piece.Strip).Distinct().Count();
        return strips > 1 ? Strips(evidence, part, pieces, strips) : pieces.SelectMany(piece => Whole(part, piece));
    }

    private static IEnumerable<Problem> Whole(Part part, Piece piece) => piece.Width == part.Width
        ? []
        : [new Problem($"pieces[{piece.Id}].width", "The piece is not as wide as its part.", $"{piece.Width}", $"{part.Width}")];

    private static IEnumerable<Problem> Strips(Evidence evidence, Part part, IReadOnlyList<Piece> pieces, int strips)
    {
        var place = $"parts[{part.Id}]";
        if (evidence.Run(part.Run) is { Splices.AllowEdgeJoint: false })
            yield return new(place, "The part is joined edge to edge, which its run does not allow.", $"{strips} strips", "one strip");

        foreach (var strip in pieces.GroupBy(piece => piece.Strip))
        {
            var odd = strip.FirstOrDefault(piece => piece.Width != strip.First().Width);
            if (odd is not null)
                yield return new($"pieces[{odd.Id}].width", "Pieces of one strip differ in width.", $"{odd.Width}", $"{strip.First().Width}");
        }

        var total = pieces.GroupBy(piece => piece.Strip).Aggregate(Length.Zero, (sum, strip) => sum + strip.First().Width);
        var wanted = part.Width + (2 * (strips - 1) * evidence.Job.Shop.Splicing.SquaringAllowance);
        if (total != wanted)
            yield return new(place, "The strips do not add up to the part and the squaring of their joints.", $"{total}", $"{wanted}");
    }
}
