using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>When all cuts are made, every piece is exactly one of the panels on the table, and no panel is two pieces.</summary>
internal sealed class PiecesComeOff : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        foreach (var sheet in evidence.Plan.Sheets)
        {
            var panels = evidence.Simulation(sheet).Panels.Select(panel => panel.Area).ToHashSet();
            foreach (var piece in evidence.PiecesOn(sheet))
            {
                if (!panels.Remove(Rectangle.Of(piece)))
                {
                    yield return new(
                        $"pieces[{piece.Id}]",
                        $"The cuts of sheet {sheet.Id} do not leave a panel of this size in this place.",
                        Rectangle.Of(piece).ToString(),
                        "cuts on all four sides of it, and a panel for each piece");
                }
            }
        }
    }
}
