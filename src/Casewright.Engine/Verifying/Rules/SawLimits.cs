using Casewright.Model.Cutting;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>No rip is longer than the saw takes, and no strip that holds pieces is ripped narrower than is safe. Edge trim counts as neither.</summary>
internal sealed class SawLimits : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from sheet in evidence.Plan.Sheets
        where !sheet.Sawn
        let areas = evidence.PiecesOn(sheet).Select(Rectangle.Of).ToList()
        from made in evidence.Simulation(sheet).Cuts
        where made.Panel is not null && made.Cut is { Kind: CutKind.Rip, Stage: > 0 }
        from problem in Rip(evidence, made, areas)
        select problem;

    private static IEnumerable<Problem> Rip(Evidence evidence, MadeCut made, List<Rectangle> pieces)
    {
        var saw = evidence.Job.Shop.Saw;
        if (saw.LongestRip is { } longest && made.Cut.X1 - made.Cut.X0 > longest)
            yield return new(made.Place, "The rip is longer than the saw takes.", $"{made.Cut.X1 - made.Cut.X0}", $"at most {longest}");

        if (saw.NarrowestStrip is not { } narrowest)
            yield break;

        foreach (var side in new[] { made.Low, made.High })
        {
            if (side.SizeY < narrowest && pieces.Exists(side.Contains))
                yield return new(made.Place, "A strip is ripped narrower than is safe.", $"{side.SizeY}", $"at least {narrowest}");
        }
    }
}
