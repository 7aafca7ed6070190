using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>The best answer so far and the bounds; reports every gain.</summary>
internal sealed class Incumbent(ReducedProblem problem, WorkBudget budget, ICuttingProgress? progress)
{
    /// <summary>Cost in steps; <see cref="long.MaxValue"/> before the first answer.</summary>
    public long Cost { get; private set; } = long.MaxValue;

    public int Sheets { get; private set; }

    public IReadOnlyList<(int Sheet, LayoutTree Layout)> Layouts { get; private set; } = [];

    public int[][] OptionCounts { get; private set; } = [];

    public long CostBound { get; private set; }

    public int SheetBound { get; private set; }

    public bool Exists => Cost < long.MaxValue;

    public bool IsProven => Exists && Cost <= CostBound;

    /// <summary>Takes an answer when it is better.</summary>
    public bool Offer(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts, int[][] optionCounts)
    {
        var cost = layouts.Sum(l => problem.Sheets[l.Sheet].Cost) + problem.ExtraCostOf(optionCounts);
        if (cost > Cost || (cost == Cost && layouts.Count >= Sheets))
            return false;
        Cost = cost;
        Sheets = layouts.Count;
        Layouts = layouts;
        OptionCounts = [.. optionCounts.Select(c => (int[])c.Clone())];
        Report();
        return true;
    }

    /// <summary>The layouts with as many of their pieces as a choice of options wants.</summary>
    public List<(int Sheet, LayoutTree Layout)> LayoutsFor(int[][] optionCounts) =>
        PieceExchange.Fit(problem, [.. Layouts], problem.PiecesOf(optionCounts));

    /// <summary>Takes another answer of no higher cost in place of the present one.</summary>
    public bool Exchange(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts, int[][] optionCounts)
    {
        var cost = layouts.Sum(l => problem.Sheets[l.Sheet].Cost) + problem.ExtraCostOf(optionCounts);
        if (cost > Cost || layouts.Count > Sheets)
            return false;
        Cost = cost;
        Sheets = layouts.Count;
        Layouts = layouts;
        OptionCounts = [.. optionCounts.Select(c => (int[])c.Clone())];
        return true;
    }

    public bool Offer(SearchState state) =>
        Offer([.. state.Bins.Select(b => (b.Sheet, LayoutTree.Of(b)))], state.OptionCounts);

    public void Raise(long costBound, int sheetBound)
    {
        if (costBound <= CostBound && sheetBound <= SheetBound)
            return;
        CostBound = Math.Max(CostBound, costBound);
        SheetBound = Math.Max(SheetBound, sheetBound);
        Report();
    }

    private void Report() => progress?.Report(new CuttingProgress(
        Exists ? problem.Prices.ToPrice(Cost) : null, problem.Prices.ToPrice(CostBound), Exists ? Sheets : null, SheetBound, budget.Spent));
}
