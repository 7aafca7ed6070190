using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;
using Google.OrTools.LinearSolver;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// The linear program over layouts and options together: as many pieces cut as the chosen options need, every copy made by
/// one option, no more sheets than there are, one sight line a group. A larger piece may stand in for a smaller one. Missing pieces may be bought at a price no layout
/// asks, so that the program always has an answer.
/// </summary>
internal sealed class MasterProgram : IDisposable
{
    private readonly ReducedProblem _problem;
    private readonly long[] _costs;
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _pieceRows;
    private readonly Constraint?[] _stockRows;
    private readonly List<Variable> _patterns = [];
    private readonly List<(int Demand, int Option, Variable Variable)> _options = [];
    private readonly Variable[] _missing;
    private readonly Constraint? _total;

    /// <summary>Sets up the program without layouts.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="costs">Cost of every kind of sheet.</param>
    /// <param name="withExtraCost">Whether options cost what they cost, or nothing.</param>
    /// <param name="total">Fewest and most sheets in all; null without limit.</param>
    public MasterProgram(ReducedProblem problem, long[] costs, bool withExtraCost, (int Least, int Most)? total)
    {
        _total = total is { } limits ? _solver.MakeConstraint(limits.Least, limits.Most) : null;
        _problem = problem;
        _costs = costs;
        _solver.Objective().SetMinimization();
        var needed = new int[problem.Kinds.Length];
        foreach (var demand in problem.Demands.Where(d => d.Options.Length == 1))
        {
            foreach (var kind in demand.Options[0].Kinds)
                needed[kind] += demand.Count;
        }

        _pieceRows = [.. needed.Select(n => _solver.MakeConstraint(n, double.PositiveInfinity))];
        _stockRows = [.. problem.Sheets.Select(s => s.Available == int.MaxValue ? null : _solver.MakeConstraint(double.NegativeInfinity, s.Available))];
        var dearest = costs.Max() + 1.0;
        _missing = [.. _pieceRows.Select(row => Column(0, double.PositiveInfinity, 4 * dearest, (row, 1)))];
        foreach (var (larger, smaller) in Exchanges.Of(problem.Kinds))
            _pieceRows[smaller].SetCoefficient(Column(0, double.PositiveInfinity, 0, (_pieceRows[larger], -1)), 1);
        for (var d = 0; d < problem.Demands.Length; d++)
        {
            if (problem.Demands[d].Options.Length > 1 && problem.Demands[d].Group < 0)
                AddOptions(d, _solver.MakeConstraint(problem.Demands[d].Count, problem.Demands[d].Count), -1, withExtraCost);
        }

        for (var g = 0; g < problem.SightLines.Length; g++)
            AddGroup(g, withExtraCost);
        for (var s = 0; s < problem.Sheets.Length && total is not null; s++)
            AddEmptySheet(s);
    }

    public double Objective => _solver.Objective().Value();

    public int PatternCount => _patterns.Count;

    /// <summary>Pieces that are bought rather than cut.</summary>
    public double Missing => _missing.Sum(v => v.SolutionValue());

    public void Add(PatternColumn column)
    {
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(variable, _costs[column.Sheet]);
        for (var i = 0; i < column.Kinds.Length; i++)
            _pieceRows[column.Kinds[i]].SetCoefficient(variable, column.Counts[i]);
        _stockRows[column.Sheet]?.SetCoefficient(variable, 1);
        _total?.SetCoefficient(variable, 1);
        _patterns.Add(variable);
    }

    /// <summary>Solves the program; false when the solver fails numerically from its last basis and from none.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public bool Solve(CancellationToken cancellation)
    {
        using var stop = cancellation.Register(() => _solver.InterruptSolve());
        cancellation.ThrowIfCancellationRequested();
        var solved = SolveTwice();
        cancellation.ThrowIfCancellationRequested();
        return solved;
    }

    private bool SolveTwice()
    {
        if (_solver.Solve() == Solver.ResultStatus.OPTIMAL)
            return true;
        _solver.Reset();
        return _solver.Solve() == Solver.ResultStatus.OPTIMAL;
    }

    /// <summary>Value of one more piece of every kind.</summary>
    public double[] PieceValues() => [.. _pieceRows.Select(r => Math.Max(0, r.DualValue()))];

    /// <summary>What one more sheet of every kind would save; 0 without limit.</summary>
    public double[] StockValues() => [.. _stockRows.Select(r => r is null ? 0 : Math.Max(0, -r.DualValue()))];

    /// <summary>What the limit on the number of sheets adds to the cost per sheet; negative when there must be more.</summary>
    public double TotalValue => -(_total?.DualValue() ?? 0);

    public double[] PatternValues() => [.. _patterns.Select(v => v.SolutionValue())];

    /// <summary>How many copies take each option, not whole numbers.</summary>
    public double[][] OptionValues()
    {
        var values = _problem.Demands.Select(d => new double[d.Options.Length]).ToArray();
        for (var d = 0; d < values.Length; d++)
        {
            if (_problem.Demands[d].Options.Length == 1)
                values[d][0] = _problem.Demands[d].Count;
        }

        foreach (var (demand, option, variable) in _options)
            values[demand][option] += variable.SolutionValue();
        return values;
    }

    public void Dispose() => _solver.Dispose();

    // Sheets may stay empty, so that a least number of them can always be reached.
    private void AddEmptySheet(int sheet)
    {
        var variable = Column(0, double.PositiveInfinity, _costs[sheet], (_total!, 1));
        _stockRows[sheet]?.SetCoefficient(variable, 1);
    }

    private void AddGroup(int group, bool withExtraCost)
    {
        var one = _solver.MakeConstraint(1, 1);
        for (var line = 0; line < _problem.SightLines[group]; line++)
        {
            var chosen = Column(0, 1, 0, (one, 1));
            for (var d = 0; d < _problem.Demands.Length; d++)
            {
                if (_problem.Demands[d].Group != group || _problem.Demands[d].Options.Length == 1)
                    continue;
                var row = _solver.MakeConstraint(0, 0);
                row.SetCoefficient(chosen, -_problem.Demands[d].Count);
                AddOptions(d, row, line, withExtraCost);
            }
        }
    }

    private void AddOptions(int d, Constraint row, int line, bool withExtraCost)
    {
        var demand = _problem.Demands[d];
        for (var o = 0; o < demand.Options.Length; o++)
        {
            var option = demand.Options[o];
            if (line >= 0 && option.SightLine >= 0 && option.SightLine != line)
                continue;
            var variable = Column(0, double.PositiveInfinity, withExtraCost ? option.ExtraCost : 0, (row, 1));
            foreach (var kinds in option.Kinds.GroupBy(k => k))
                _pieceRows[kinds.Key].SetCoefficient(variable, -kinds.Count());
            _options.Add((d, o, variable));
        }
    }

    private Variable Column(double low, double high, double cost, (Constraint Row, double Coefficient) entry)
    {
        var variable = _solver.MakeNumVar(low, high, "");
        _solver.Objective().SetCoefficient(variable, cost);
        entry.Row.SetCoefficient(variable, entry.Coefficient);
        return variable;
    }
}
