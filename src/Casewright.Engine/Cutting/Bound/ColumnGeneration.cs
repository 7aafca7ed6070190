using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// Solves the linear program over layouts and options by making layouts as they are wanted. Every round gives a bound that
/// holds whether or not the program is solved to its end.
/// </summary>
internal sealed class ColumnGeneration
{
    private const double Smoothing = 0.9;
    private const int NoSmoothing = 1000;
    private readonly ReducedProblem _problem;
    private readonly PatternPool _pool;
    private readonly WorkBudget _budget;
    private readonly SheetPricers _pricers;
    private readonly long[] _costs;
    private readonly bool _withExtraCost;
    private readonly long _scale;
    private readonly (int Least, int Most)? _total;
    private PricingDepth _depth;
    private double[]? _centre;
    private Int128 _bestBound = -1;

    public ColumnGeneration(ReducedProblem problem, PatternPool pool, WorkBudget budget, SheetPricers pricers, long[] costs, bool withExtraCost, (int Least, int Most)? total = null)
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

    /// <summary>Whether to stop where the quick pricing finds no more; then there is no bound.</summary>
    public bool QuickOnly { get; init; }

    /// <summary>Best lower bound so far, rounded up to a whole step.</summary>
    public long Bound { get; private set; }

    /// <summary>Scaled value of every kind of piece from which the best bound follows; empty before there is one.</summary>
    public long[] HonestValues { get; private set; } = [];

    /// <summary>The best bound in scaled cost, and how many of it make one step of cost.</summary>
    public Int128 ScaledBound => _bestBound;

    public long Scale => _scale;

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
        _depth = _problem.IsBoards ? PricingDepth.Usual : PricingDepth.Quick;
        _centre = Array.TrueForAll(_costs, c => c == 0) ? null : AreaBound.ValuesOf(_problem, _costs, _withExtraCost);
        var misses = 0;
        while (Step(master, misses) is { } found)
        {
            var mixed = SmoothingAfter(misses) > 0;
            misses = found ? 0 : _depth == PricingDepth.Quick ? NoSmoothing : Math.Max(1, misses * 2);
            if (Bound >= target || Bound >= Math.Ceiling(Value - 1e-6) || _budget.IsSpent || _budget.PartSpent > partOfBudget)
                return;
            if (found || mixed)
                continue;
            if (!Deepen())
                return;
            misses = 0;
        }
    }

    // Each miss moves on from the values of the best bound to those of the program; a hit goes back.
    private static double SmoothingAfter(int misses) => Math.Max(0, 1 - ((misses + 1) * (1 - Smoothing)));

    // Solves the program and prices once; whether layouts were found that it lacks, null when the solver failed.
    private bool? Step(MasterProgram master, int misses)
    {
        AddNew(master);
        if (!master.Solve(_budget.Cancellation))
            return null;
        _budget.Spend(50 + _problem.Kinds.Length + (master.PatternCount * (long)_problem.Kinds.Length / 100));
        (PieceValues, PatternValues, OptionValues, Value) = (master.PieceValues(), master.PatternValues(), master.OptionValues(), master.Objective);
        var smoothing = SmoothingAfter(misses);
        var mixed = _centre is null || smoothing == 0
            ? PieceValues
            : _bestBound < 0 && _depth != PricingDepth.Quick ? _centre : [.. PieceValues.Select((v, k) => (smoothing * _centre[k]) + ((1 - smoothing) * v))];
        var (bound, found) = Price(mixed, PieceValues, master.StockValues(), master.TotalValue);
        if (bound > _bestBound)
        {
            (_bestBound, _centre) = (bound, mixed);
            Bound = Math.Max(Bound, (long)((bound + _scale - 1) / _scale));
        }

        return found;
    }

    // Goes on to a more thorough pricing; false when there is none that could find more.
    private bool Deepen()
    {
        if (QuickOnly)
            return false;
        if (_depth == PricingDepth.Fine || (_depth == PricingDepth.Usual && (_problem.IsBoards || _costs.Max() == 0 || Array.TrueForAll(_pricers[_depth], p => p.WasExact))))
            return false;
        _depth++;
        return true;
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
        var most = new long[_costs.Length];
        var found = false;
        for (var s = 0; s < most.Length; s++)
        {
            var (bound, layouts) = _pricers[_depth][s].Price(values, _budget);
            most[s] = bound;
            foreach (var layout in layouts)
            {
                var worth = 0.0;
                var counts = new int[_problem.Kinds.Length];
                layout.Count(counts);
                for (var k = 0; k < counts.Length; k++)
                    worth += counts[k] * real[k];
                if (worth > _costs[s] + stock[s] + total + 1e-6)
                    found |= _pool.Add(s, layout);
            }
        }

        if (_depth == PricingDepth.Quick)
            return (-1, found);
        var result = Bounded(values, most, total);
        if (result > _bestBound && _total is null)
            HonestValues = LagrangeBound.Honest(_problem, [.. _costs.Select(c => c * _scale)], values, most);
        return (result, found);
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
