using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Prices one kind of sheet under the rules of the problem: an upper bound on what any layout is worth, and good layouts.</summary>
internal sealed class SheetPricer
{
    private const int StagedPoints = 900;
    private const int FreePoints = 220;
    private readonly List<(Pricing Price, bool Bounds)> _pricers = [];

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

    // Prices at given values, with layouts or only for the bound.
    private delegate (long Bound, PricedLayout? Layout, long Work) Pricing(long[] values);

    /// <summary>Upper bound on the value of every layout, and the layouts found.</summary>
    public (long Bound, List<PricedLayout> Layouts) Price(long[] values, WorkBudget budget)
    {
        var bound = 0L;
        var layouts = new List<PricedLayout>();
        foreach (var (price, bounds) in _pricers)
        {
            var (value, layout, work) = price(values);
            budget.Spend(work);
            if (bounds)
                bound = Math.Max(bound, value);
            if (layout is { Layout: not null })
                layouts.Add(layout);
        }

        return (bound, layouts);
    }

    private void AddBoard(ReducedProblem problem, SheetKind sheet)
    {
        var down = new BoardPricer(problem, sheet, roundUp: false);
        var up = down.IsExact ? down : new BoardPricer(problem, sheet, roundUp: true);
        _pricers.Add((values => Both(values, down, up, builds: true), true));
    }

    private static (long Bound, PricedLayout? Layout, long Work) Both(long[] values, IPricer down, IPricer up, bool builds)
    {
        var bound = down.Price(values, builds && down.IsExact);
        if (!builds || down.IsExact)
            return (bound.Value, bound, down.Work);
        return (bound.Value, up.Price(values, wantLayout: true), down.Work + up.Work);
    }

    // Points for all kinds are made once when they are few; else for the kinds of some value only, every time.
    private void Add(ReducedProblem problem, Func<long[], bool, IPricer> make, bool bounds, bool builds)
    {
        var always = make([.. problem.Kinds.Select(_ => 1L)], false);
        if (always.IsExact)
        {
            _pricers.Add((values => Both(values, always, always, builds), bounds));
            return;
        }

        _pricers.Add((values =>
        {
            var down = make(values, false);
            return Both(values, down, down.IsExact || !builds ? down : make(values, true), builds);
        }, bounds));
    }

    private void AddFree(ReducedProblem problem, SheetKind sheet, bool builds) => Add(
        problem,
        (active, roundUp) => new FreePricer(problem.Kinds, sheet, problem.LongestRip, active, roundUp ? FreePoints / 2 : FreePoints, roundUp),
        bounds: true, builds);

    private void AddStaged(ReducedProblem problem, SheetKind sheet, int stages, bool bounds)
    {
        if (problem.FirstCut != FirstCut.Across && sheet.RipAllowed)
            AddStaged(problem, sheet, stages, runX: true, bounds, builds: true);
        if (problem.FirstCut != FirstCut.Along)
            AddStaged(problem, sheet, stages, runX: false, bounds, builds: true);
        else if (!sheet.RipAllowed)
            AddStaged(problem, sheet, stages, runX: false, bounds, builds: false);
    }

    private void AddStaged(ReducedProblem problem, SheetKind sheet, int stages, bool runX, bool bounds, bool builds) => Add(
        problem,
        (active, roundUp) => new StagedPricer(problem.Kinds, sheet, runX, stages, problem.LongestRip, active, StagedPoints, roundUp),
        bounds, builds);
}
