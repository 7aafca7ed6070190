using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>What to cut, from what, and under which rules.</summary>
/// <param name="Sheets">The kinds of sheet, at least one.</param>
/// <param name="Demands">The parts.</param>
/// <param name="Rules">What the saw can do.</param>
/// <param name="WorkLimit">
/// Effort in work units, 1 or more; the clock never decides. About a million units pass in a second on a plain machine.
/// </param>
/// <param name="Seed">Seed of the search; the same problem gives the same answer.</param>
/// <param name="Aim">What decides between answers of one cost.</param>
/// <param name="Start">An earlier answer to start from, with a third of the effort; null to start from nothing.</param>
public sealed record CuttingProblem(
    ValueList<SheetType> Sheets,
    ValueList<CuttingDemand> Demands,
    CuttingRules Rules,
    long WorkLimit = CuttingProblem.UsualWork,
    int Seed = 1,
    LayoutAim Aim = LayoutAim.FewestSettings,
    CuttingStart? Start = null)
{
    /// <summary>Effort that suits a job of a few dozen sheets.</summary>
    public const long UsualWork = 5_000_000;
}
