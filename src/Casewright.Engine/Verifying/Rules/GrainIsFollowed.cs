using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>On a material with grain, pieces lie as the grain of their part wants; x of a sheet runs along its grain.</summary>
internal sealed class GrainIsFollowed : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from piece in evidence.Plan.Pieces
        let part = evidence.Part(piece.Part)
        where part is not null
        from problem in piece.FromBoard ? OnBoard(piece) : OnSheet(evidence, piece, part)
        select problem;

    private static IEnumerable<Problem> OnSheet(Evidence evidence, Piece piece, Part part)
    {
        if (evidence.Material(part.Material) is not { HasGrain: true } || part.Grain == Grain.None)
            return [];

        var turned = part.Grain == Grain.AlongWidth;
        return piece.Rotated == turned
            ? []
            : [new Problem(
                $"pieces[{piece.Id}].rotated",
                "The grain would run the wrong way over the part.",
                piece.Rotated ? "its length across the sheet" : "its length along the sheet",
                turned ? "its length across the sheet" : "its length along the sheet")];
    }

    private static IEnumerable<Problem> OnBoard(Piece piece) => piece.Rotated
        ? [new Problem($"pieces[{piece.Id}].rotated", "A piece cannot lie across a board.", "turned", "along the board")]
        : [];
}
