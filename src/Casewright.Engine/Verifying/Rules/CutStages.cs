using Casewright.Model.Cutting;
using Casewright.Model.Plans;
using Casewright.Model.Shop;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Rounds of cuts: edge trims first, then rips and crosscuts in turn, begun in the direction that the shop wants and no more than it
/// allows. One round more may trim a panel that holds a single piece to its size.
/// </summary>
internal sealed class CutStages : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Plan.Sheets.Where(sheet => !sheet.Sawn).SelectMany(sheet => Sheet(evidence, sheet));

    private static IEnumerable<Problem> Sheet(Evidence evidence, SheetLayout sheet)
    {
        var saw = evidence.Job.Shop.Saw;
        var first = First(saw.FirstCut, sheet);
        var areas = evidence.PiecesOn(sheet).Select(Rectangle.Of).ToList();
        return evidence.Simulation(sheet).Cuts
            .Where(made => made.Panel is not null)
            .SelectMany(made => made.Cut.Stage == 0 ? Trim(sheet, made, made.Panel!) : Round(saw, first, areas, made, made.Panel!));
    }

    /// <summary>Direction of the odd rounds: the shop's, or the one that the sheet itself begins with.</summary>
    private static CutKind First(FirstCut wanted, SheetLayout sheet)
    {
        if (wanted != FirstCut.Either)
            return wanted == FirstCut.Rip ? CutKind.Rip : CutKind.Crosscut;

        var begin = sheet.Cuts.FirstOrDefault(cut => cut.Stage > 0);
        return begin is null || (begin.Stage % 2 == 1) == (begin.Kind == CutKind.Rip) ? CutKind.Rip : CutKind.Crosscut;
    }

    private static IEnumerable<Problem> Trim(SheetLayout sheet, MadeCut made, Panel panel)
    {
        if (panel.Stage != 0)
            yield return new($"{made.Place}.stage", "Edge trim comes after other cuts of this panel.", $"panel of stage {panel.Stage}", "edge trim first");

        var (line, size) = made.Cut.Kind == CutKind.Rip ? (made.Cut.Y0, sheet.Width) : (made.Cut.X0, sheet.Length);
        if (line + sheet.Kerf != sheet.Trim && line != size - sheet.Trim)
            yield return new($"{made.Place}.stage", "A cut called edge trim does not run along the trim of an edge.", $"line at {line}", $"{sheet.Trim - sheet.Kerf} or {size - sheet.Trim}");
    }

    private static IEnumerable<Problem> Round(SawRules saw, CutKind first, List<Rectangle> pieces, MadeCut made, Panel panel)
    {
        var stage = made.Cut.Stage;
        var other = first == CutKind.Rip ? CutKind.Crosscut : CutKind.Rip;
        var wanted = stage % 2 == 1 ? first : other;
        if (made.Cut.Kind != wanted)
            yield return new(made.Place, $"Rounds of cuts do not alternate: round {stage} is for the other direction.", $"{made.Cut.Kind}", $"{wanted}");

        var next = panel.Stage == 0 ? stage is 1 or 2 : stage == panel.Stage || stage == panel.Stage + 1;
        if (!next)
            yield return new($"{made.Place}.stage", "The round does not follow from the panel that is cut.", $"round {stage} on a panel of round {panel.Stage}", "the same round or the next");

        if (saw.Stages is not { } most || stage <= most)
            yield break;

        var held = pieces.Count(panel.Area.Contains);
        if (stage > most + 1 || held > 1)
            yield return new($"{made.Place}.stage", "The sheet is turned more often than the shop allows.", $"round {stage} on a panel of {held} pieces", $"at most {most}, and one more only to trim a single piece");
    }
}
