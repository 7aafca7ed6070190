using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>How thoroughly layouts are priced.</summary>
internal enum PricingDepth
{
    /// <summary>Layouts of fewer stages than allowed, at once but without a bound.</summary>
    Quick,

    /// <summary>All layouts, sizes rounded where there are too many sums of them.</summary>
    Usual,

    /// <summary>All layouts, sizes rounded less.</summary>
    Fine,
}

/// <summary>Prices one kind of sheet under the rules of the problem: an upper bound on what any layout is worth, and good layouts.</summary>
internal sealed class SheetPricer
{
    private const int StagedPoints = 900;
    private const int FreePoints = 220;
    private const int FineStagedPoints = 8_000;
    private const int FineFreePoints = 420;
    private readonly List<(Pricing Price, bool Bounds)> _pricers = [];
    private readonly PricingDepth _depth;

    /// <summary>Prepares a kind of sheet.</summary>
    public SheetPricer(ReducedProblem problem, SheetKind sheet, PricingDepth depth = PricingDepth.Usual)
    {
        _depth = depth;
        var stages = problem.Stages;
        if (problem.IsBoards)
        {
            AddBoard(problem, sheet);
        }
        else if (depth == PricingDepth.Quick)
        {
            AddStaged(problem, sheet, stages > 3 ? 3 : 2, bounds: false);
        }
        else
        {
            if (stages > 3)
                AddFree(problem, sheet, builds: stages == int.MaxValue && problem.FirstCut == FirstCut.Either);
            AddStaged(problem, sheet, Math.Min(stages, 3), bounds: stages <= 3);
        }
    }

    /// <summary>Whether nothing was rounded in the last pricing, so that a finer one would find no more.</summary>
    public bool WasExact { get; private set; }

    // Prices at given values, with layouts or only for the bound.
    private delegate (long Bound, IReadOnlyList<LayoutTree> Layouts, long Work, bool IsExact) Pricing(long[] values, CancellationToken cancellation);

    /// <summary>Upper bound on the value of every layout, and the layouts found.</summary>
    public (long Bound, List<LayoutTree> Layouts) Price(long[] values, WorkBudget budget)
    {
        var bound = 0L;
        var layouts = new List<LayoutTree>();
        WasExact = true;
        foreach (var (price, bounds) in _pricers)
        {
            var (value, found, work, isExact) = price(values, budget.Cancellation);
            budget.Spend(work);
            WasExact &= isExact;
            if (bounds)
                bound = Math.Max(bound, value);
            layouts.AddRange(found);
        }

        return (bound, layouts);
    }

    private void AddBoard(ReducedProblem problem, SheetKind sheet)
    {
        var down = new BoardPricer(problem, sheet, roundUp: false);
        var up = down.IsExact ? down : new BoardPricer(problem, sheet, roundUp: true);
        _pricers.Add(((values, cancel) => Both(values, down, up, builds: true, cancel), true));
    }

    private static (long Bound, IReadOnlyList<LayoutTree> Layouts, long Work, bool IsExact) Both(
        long[] values, IPricer down, IPricer up, bool builds, CancellationToken cancel)
    {
        var bound = down.Price(values, builds && down.IsExact, cancel);
        if (!builds || down.IsExact)
            return (bound.Value, bound.Layouts, down.Work, down.IsExact);
        var found = up.Price(values, wantLayout: true, cancel);
        return (bound.Value, found.Layouts, down.Work + up.Work, IsExact: false);
    }

    // Points for all kinds are made once when they are few; else for the kinds of some value only, every time.
    private void Add(ReducedProblem problem, Func<long[], bool, IPricer> make, bool bounds, bool builds)
    {
        if (_depth == PricingDepth.Quick)
        {
            var real = make([.. problem.Kinds.Select(_ => 1L)], true);
            _pricers.Add(((values, cancel) =>
            {
                var found = real.Price(values, wantLayout: true, cancel);
                return (0, found.Layouts, real.Work, IsExact: false);
            }, false));
            return;
        }

        var always = make([.. problem.Kinds.Select(_ => 1L)], false);
        if (always.IsExact)
        {
            _pricers.Add(((values, cancel) => Both(values, always, always, builds, cancel), bounds));
            return;
        }

        _pricers.Add(((values, cancel) =>
        {
            var down = make(values, false);
            return Both(values, down, down.IsExact || !builds ? down : make(values, true), builds, cancel);
        }, bounds));
    }

    private void AddFree(ReducedProblem problem, SheetKind sheet, bool builds) => Add(
        problem,
        (active, roundUp) => new FreePricer(problem.Kinds, sheet, problem.LongestRip, active, roundUp ? FreePoints / 2 : _depth == PricingDepth.Fine ? FineFreePoints : FreePoints, roundUp),
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
        (active, roundUp) => new StagedPricer(problem, sheet, runX, stages, active, _depth == PricingDepth.Fine ? FineStagedPoints : StagedPoints, roundUp),
        bounds, builds);
}
