using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>
/// Rounds the linear program step by step: takes the layouts it uses most, makes new ones for what is left, and so on
/// until every piece has its place.
/// </summary>
internal sealed class Dive(ReducedProblem problem, PatternPool pool, WorkBudget budget, SearchRandom random)
{
    /// <summary>Dives once for a fixed choice of options; null when the goal is out of reach.</summary>
    /// <param name="optionCounts">The choice of options.</param>
    /// <param name="costGoal">Cost of the sheets to stay within.</param>
    /// <param name="daring">From 0, always the layout used most, to 1, one of those used at all.</param>
    public List<(int Sheet, LayoutTree Layout)>? Run(int[][] optionCounts, long costGoal, double daring)
    {
        var left = problem.PiecesOf(optionCounts);
        var use = new int[problem.Sheets.Length];
        var taken = new List<(int Sheet, LayoutTree Layout)>();
        var cost = 0L;
        while (Array.Exists(left, n => n > 0))
        {
            var rest = problem.WithPieces(left, use);
            var own = new PatternPool(rest);
            foreach (var column in pool.Columns.Where(c => IsProper(c, left)))
                own.Add(column.Sheet, column.Layout);
            var program = new ColumnGeneration(
                rest, own, budget, new SheetPricers(rest), [.. rest.Sheets.Select(s => s.Cost)], withExtraCost: false)
            {
                QuickOnly = !problem.IsBoards,
            };
            program.Run(long.MaxValue, 1);
            foreach (var column in own.Columns)
                pool.Add(column.Sheet, column.Layout);
            if (budget.IsSpent || (costGoal < long.MaxValue && cost + program.Bound > costGoal) || !Take(own, program.PatternValues, left, use, taken, daring))
                return null;
            cost = taken.Sum(t => problem.Sheets[t.Sheet].Cost);
        }

        return taken;
    }

    private static bool IsProper(PatternColumn column, int[] left)
    {
        for (var i = 0; i < column.Kinds.Length; i++)
        {
            if (column.Counts[i] > left[column.Kinds[i]])
                return false;
        }

        return true;
    }

    private bool Take(PatternPool own, double[] values, int[] left, int[] use, List<(int Sheet, LayoutTree Layout)> taken, double daring)
    {
        var any = false;
        for (var c = 0; c < values.Length; c++)
        {
            for (var n = (int)Math.Floor(values[c] + 1e-6); n > 0; n--)
                any |= TakeOne(own.Columns[c], left, use, taken);
        }

        if (any)
            return true;
        var most = values.Length == 0 ? 0 : values.Max();
        var threshold = most * (1 - daring);
        var candidates = Enumerable.Range(0, values.Length).Where(c => values[c] > 1e-6 && values[c] >= threshold - 1e-9).ToArray();
        return candidates.Length > 0 && TakeOne(own.Columns[candidates[daring > 0 ? random.Next(candidates.Length) : 0]], left, use, taken);
    }

    private bool TakeOne(PatternColumn column, int[] left, int[] use, List<(int Sheet, LayoutTree Layout)> taken)
    {
        if (use[column.Sheet] >= problem.Sheets[column.Sheet].Available)
            return false;
        if (PieceExchange.Fit(problem, [(column.Sheet, column.Layout)], left) is not [var (_, layout)])
            return false;
        var held = new int[left.Length];
        layout.Count(held);
        for (var k = 0; k < left.Length; k++)
            left[k] -= held[k];
        use[column.Sheet]++;
        taken.Add((column.Sheet, layout));
        return true;
    }
}
