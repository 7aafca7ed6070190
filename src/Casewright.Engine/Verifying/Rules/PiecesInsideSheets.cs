using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Every piece lies inside the usable area of its sheet: within the trim of factory edges, within the edge of offcuts.</summary>
internal sealed class PiecesInsideSheets : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from sheet in evidence.Plan.Sheets
        let usable = Rectangle.Usable(sheet)
        from piece in evidence.PiecesOn(sheet)
        let area = Rectangle.Of(piece)
        where !usable.Contains(area)
        select new Problem($"pieces[{piece.Id}]", $"The piece reaches outside the usable part of sheet {sheet.Id}.", area.ToString(), usable.ToString());
}
