using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// Solves the linear program over layouts and options by making layouts as they are wanted. Every round gives a bound that
/// holds whether or not the program is solved to its end.
/// </summary>
internal sealed class ColumnGeneration
{
    private const double SmoothingStart = 0.5;
    private readonly ReducedProblem _problem;
    private readonly PatternPool _pool;
    private readonly WorkBudget _budget;
    private readonly SheetPricer[] _pricers;
    private readonly long[] _costs;
    private readonly bool _withExtraCost;
    private readonly long _scale;
    private readonly (int Least, int Most)? _total;

    public ColumnGeneration(ReducedProblem problem, PatternPool pool, WorkBudget budget, SheetPricer[] pricers, long[] costs, bool withExtraCost, (int Least, int Most)? total = null)
    {
        _total = total;
        _problem = problem;
        _pool = pool;
        _budget = budget;
        _pricers = pricers;
        _withExtraCost = withExtraCost;
        _costs = costs;
        _scale = Math.Max(1, Math.Min(10_000_000, 1_000_000_000_000 / Math.Max(1, _costs.Max())));
    }

    /// <summary>Best lower bound so far, rounded up to a whole step.</summary>
    public long Bound { get; private set; }

    /// <summary>Value of the linear program at the end; how many of every column of the pool, and of every option.</summary>
    public double Value { get; private set; } = double.PositiveInfinity;

    public double[] PatternValues { get; private set; } = [];

    public double[][] OptionValues { get; private set; } = [];

    /// <summary>Value of one more piece of every kind at the end.</summary>
    public double[] PieceValues { get; private set; } = [];

    /// <summary>Runs until the bound reaches <paramref name="target"/>, the program is solved, or the part of the budget is used.</summary>
    public void Run(long target, double partOfBudget)
    {
        using var master = new MasterProgram(_problem, _costs, _withExtraCost, _total);
        var smoothing = SmoothingStart;
        double[]? centre = null;
        Int128 bestBound = -1;
        while (true)
        {
            AddNew(master);
            if (!master.Solve())
                return;
            _budget.Spend(50 + (master.PatternCount / 4) + _problem.Kinds.Length);
            var values = master.PieceValues();
            var mixed = centre is null || smoothing == 0 ? values : [.. values.Select((v, k) => (smoothing * centre[k]) + ((1 - smoothing) * v))];
            var (bound, found) = Price(mixed, values, master.StockValues(), master.TotalValue);
            PieceValues = values;
            PatternValues = master.PatternValues();
            OptionValues = master.OptionValues();
            if (bound > bestBound)
                (bestBound, centre) = (bound, mixed);
            Bound = Math.Max(Bound, (long)((bestBound + _scale - 1) / _scale));
            Value = master.Objective;
            if (!found && smoothing > 0)
            {
                smoothing = smoothing > 0.2 ? smoothing / 2 : 0;
                continue;
            }

            if (!found || Bound >= target || Bound >= Math.Ceiling(Value - 1e-6) || _budget.IsSpent || _budget.PartSpent > partOfBudget)
                break;
        }
    }

    private void AddNew(MasterProgram master)
    {
        while (master.PatternCount < _pool.Columns.Count)
            master.Add(_pool.Columns[master.PatternCount]);
    }

    // Prices every kind of sheet at the mixed values; tells whether some layout is worth more than its sheet at the real ones.
    private (Int128 Bound, bool Found) Price(double[] mixed, double[] real, double[] stock, double total)
    {
        var values = mixed.Select(v => (long)(v * _scale)).ToArray();
        var most = new long[_pricers.Length];
        var found = false;
        for (var s = 0; s < _pricers.Length; s++)
        {
            var (bound, layouts) = _pricers[s].Price(values, _budget);
            most[s] = bound;
            foreach (var layout in layouts)
            {
                var worth = 0.0;
                var counts = new int[_problem.Kinds.Length];
                layout.Layout!.Count(counts);
                for (var k = 0; k < counts.Length; k++)
                    worth += counts[k] * real[k];
                if (worth > _costs[s] + stock[s] + total + 1e-6)
                    found |= _pool.Add(s, layout.Layout!);
            }
        }

        return (Bounded(values, most, total), found);
    }

    // A limit on the number of sheets makes each dearer or cheaper by one amount, which is paid back for the limit itself.
    private Int128 Bounded(long[] values, long[] most, double total)
    {
        var extra = _withExtraCost ? _scale : 0;
        var perSheet = _total is null ? 0 : Math.Max((long)(total * _scale), -_costs.Min() * _scale);
        var bound = LagrangeBound.Of(_problem, [.. _costs.Select(c => (c * _scale) + perSheet)], extra, values, most);
        if (_total is not { } limits)
            return bound;
        return bound - ((Int128)perSheet * (perSheet > 0 ? limits.Most : limits.Least));
    }
}
