using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Made in order, every cut runs from edge to edge of one panel on the table and takes wood; none is made twice.</summary>
internal sealed class CutsRunEdgeToEdge : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from sheet in evidence.Plan.Sheets
        from problem in evidence.Simulation(sheet).Cuts.SelectMany((cut, i) => Cut(cut, i + 1))
        select problem;

    private static IEnumerable<Problem> Cut(MadeCut made, int turn)
    {
        if (made.Cut.Order != turn)
            yield return new($"{made.Place}.order", "The cuts are not numbered in the order they are listed.", $"{made.Cut.Order}", $"{turn}");
        if (made.Panel is null)
        {
            yield return new(
                made.Place,
                "When its turn comes, no panel lies so that this cut runs through it from edge to edge.",
                $"{made.Cut.Kind} from x {made.Cut.X0}, y {made.Cut.Y0} to x {made.Cut.X1}, y {made.Cut.Y1}",
                "a cut edge to edge of a panel that the cuts before it have made");
        }
    }
}
