using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Prices one kind of sheet under the rules of the problem: an upper bound on what any layout is worth, and good layouts.</summary>
internal sealed class SheetPricer
{
    private const int StagedPoints = 900;
    private const int FreePoints = 220;
    private readonly List<(Func<long[], bool, PricedLayout> Price, bool Bounds, bool Builds, long Work)> _pricers = [];

    public SheetPricer(ReducedProblem problem, SheetKind sheet)
    {
        if (problem.IsBoards)
        {
            AddBoard(problem, sheet);
            return;
        }

        var stages = problem.Stages;
        if (stages > 3)
            AddFree(problem, sheet, builds: stages == int.MaxValue && problem.FirstCut == FirstCut.Either);
        AddStaged(problem, sheet, Math.Min(stages, 3), bounds: stages <= 3);
    }

    /// <summary>Upper bound on the value of every layout, and the layouts found.</summary>
    public (long Bound, List<PricedLayout> Layouts) Price(long[] values, WorkBudget budget)
    {
        var bound = 0L;
        var layouts = new List<PricedLayout>();
        foreach (var (price, bounds, builds, work) in _pricers)
        {
            var priced = price(values, builds);
            budget.Spend(work);
            if (bounds)
                bound = Math.Max(bound, priced.Value);
            if (priced.Layout is not null)
                layouts.Add(priced);
        }

        return (bound, layouts);
    }

    private void AddBoard(ReducedProblem problem, SheetKind sheet)
    {
        var pricer = new BoardPricer(problem, sheet, roundUp: false);
        _pricers.Add((pricer.Price, true, pricer.IsExact, pricer.Work));
        if (pricer.IsExact)
            return;
        var real = new BoardPricer(problem, sheet, roundUp: true);
        _pricers.Add((real.Price, false, true, real.Work));
    }

    private void AddFree(ReducedProblem problem, SheetKind sheet, bool builds)
    {
        var pricer = new FreePricer(problem.Kinds, sheet, problem.LongestRip, FreePoints, roundUp: false);
        _pricers.Add((pricer.Price, true, builds && pricer.IsExact, pricer.Work));
        if (!pricer.IsExact && builds)
        {
            var real = new FreePricer(problem.Kinds, sheet, problem.LongestRip, FreePoints / 2, roundUp: true);
            _pricers.Add((real.Price, false, true, real.Work));
        }
    }

    private void AddStaged(ReducedProblem problem, SheetKind sheet, int stages, bool bounds)
    {
        if (problem.FirstCut != FirstCut.Across && sheet.RipAllowed)
            AddStaged(problem, sheet, stages, runX: true, bounds, builds: true);
        if (problem.FirstCut != FirstCut.Along)
            AddStaged(problem, sheet, stages, runX: false, bounds, builds: true);
        else if (!sheet.RipAllowed)
            AddStaged(problem, sheet, stages, runX: false, bounds, builds: false);
    }

    private void AddStaged(ReducedProblem problem, SheetKind sheet, int stages, bool runX, bool bounds, bool builds)
    {
        var pricer = new StagedPricer(problem.Kinds, sheet, runX, stages, problem.LongestRip, StagedPoints, roundUp: false);
        _pricers.Add((pricer.Price, bounds, builds && pricer.IsExact, pricer.Work));
        if (pricer.IsExact || !builds)
            return;
        var real = new StagedPricer(problem.Kinds, sheet, runX, stages, problem.LongestRip, StagedPoints, roundUp: true);
        _pricers.Add((real.Price, false, true, real.Work));
    }
}
