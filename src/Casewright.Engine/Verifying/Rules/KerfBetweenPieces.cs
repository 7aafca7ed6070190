using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Pieces of one sheet neither overlap nor come nearer than the saw cut between them.</summary>
internal sealed class KerfBetweenPieces : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        foreach (var sheet in evidence.Plan.Sheets)
        {
            var pieces = evidence.PiecesOn(sheet).Select(piece => (Piece: piece, Area: Rectangle.Of(piece))).ToList();
            for (var i = 0; i < pieces.Count; i++)
            {
                for (var j = i + 1; j < pieces.Count; j++)
                {
                    if (!pieces[i].Area.IsNearerThan(sheet.Kerf, pieces[j].Area))
                        continue;

                    yield return new(
                        $"pieces[{pieces[j].Piece.Id}]",
                        $"On sheet {sheet.Id} this piece overlaps {pieces[i].Piece.Id} or leaves no room for the saw cut.",
                        $"{pieces[j].Area} beside {pieces[i].Area}",
                        $"{sheet.Kerf} between them");
                }
            }
        }
    }
}
