using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;
using Google.OrTools.LinearSolver;

namespace Casewright.Engine.Cutting.Boards;

/// <summary>The integer program over given fillings of boards and all options, within a cost.</summary>
internal sealed class FillingModel
{
    private readonly ReducedProblem _problem;
    private readonly Solver _solver;
    private readonly List<(int Sheet, int[] Counts)> _fillings;
    private readonly Variable[] _uses;
    private readonly Variable[][] _options;

    public FillingModel(ReducedProblem problem, Solver solver, List<(int Sheet, int[] Counts)> fillings, long target)
    {
        (_problem, _solver, _fillings) = (problem, solver, fillings);
        _uses = [.. fillings.Select(_ => solver.MakeIntVar(0, double.PositiveInfinity, ""))];
        _options = [.. problem.Demands.Select(d => d.Options.Select(_ => solver.MakeIntVar(0, d.Count, "")).ToArray())];
        solver.Objective().SetMinimization();
        var within = solver.MakeConstraint(double.NegativeInfinity, target);
        for (var f = 0; f < _uses.Length; f++)
            Price(within, _uses[f], problem.Sheets[fillings[f].Sheet].Cost);
        for (var d = 0; d < _options.Length; d++)
        {
            for (var o = 0; o < _options[d].Length; o++)
                Price(within, _options[d][o], problem.Demands[d].Options[o].ExtraCost);
        }

        Cover();
        Limit();
        SightLines();
    }

    /// <summary>The answer the solver found.</summary>
    public (List<(int Sheet, LayoutTree Layout)> Layouts, int[][] OptionCounts) Answer()
    {
        int[][] counts = [.. _options.Select(o => o.Select(v => (int)Math.Round(v.SolutionValue())).ToArray())];
        var layouts = new List<(int Sheet, LayoutTree Layout)>();
        for (var f = 0; f < _uses.Length; f++)
        {
            for (var n = (int)Math.Round(_uses[f].SolutionValue()); n > 0; n--)
                layouts.Add((_fillings[f].Sheet, Layout(_fillings[f])));
        }

        return (PieceExchange.Fit(_problem, layouts, _problem.PiecesOf(counts)), counts);
    }

    private LayoutTree Layout((int Sheet, int[] Counts) filling)
    {
        var board = _problem.Sheets[filling.Sheet];
        var pieces = filling.Counts.Index().SelectMany(k => Enumerable.Repeat(
            LayoutTree.Piece(k.Index, turned: false, _problem.Kinds[k.Index].SizeX, _problem.Kinds[k.Index].SizeY), k.Item));
        return LayoutTree.Row(Axis.X, board.SizeX, board.SizeY, [.. pieces]);
    }

    private void Price(Constraint within, Variable variable, long cost)
    {
        _solver.Objective().SetCoefficient(variable, cost);
        within.SetCoefficient(variable, cost);
    }

    private void Cover()
    {
        var rows = _problem.Kinds.Select(_ => _solver.MakeConstraint(0, double.PositiveInfinity)).ToArray();
        for (var f = 0; f < _uses.Length; f++)
        {
            foreach (var (kind, count) in _fillings[f].Counts.Index().Where(c => c.Item > 0))
                rows[kind].SetCoefficient(_uses[f], count);
        }

        for (var d = 0; d < _options.Length; d++)
        {
            var all = _solver.MakeConstraint(_problem.Demands[d].Count, _problem.Demands[d].Count);
            for (var o = 0; o < _options[d].Length; o++)
            {
                all.SetCoefficient(_options[d][o], 1);
                foreach (var kinds in _problem.Demands[d].Options[o].Kinds.GroupBy(k => k))
                    rows[kinds.Key].SetCoefficient(_options[d][o], -kinds.Count());
            }
        }
    }

    private void Limit()
    {
        for (var s = 0; s < _problem.Sheets.Length; s++)
        {
            if (_problem.Sheets[s].Available == int.MaxValue)
                continue;
            var row = _solver.MakeConstraint(double.NegativeInfinity, _problem.Sheets[s].Available);
            for (var f = 0; f < _uses.Length; f++)
            {
                if (_fillings[f].Sheet == s)
                    row.SetCoefficient(_uses[f], 1);
            }
        }
    }

    private void SightLines()
    {
        for (var g = 0; g < _problem.SightLines.Length; g++)
        {
            Variable[] chosen = [.. Enumerable.Range(0, _problem.SightLines[g]).Select(_ => _solver.MakeBoolVar(""))];
            var one = _solver.MakeConstraint(1, 1);
            foreach (var line in chosen)
                one.SetCoefficient(line, 1);
            for (var d = 0; d < _options.Length; d++)
            {
                var demand = _problem.Demands[d];
                for (var o = 0; demand.Group == g && o < demand.Options.Length; o++)
                {
                    if (demand.Options[o].SightLine < 0)
                        continue;
                    var row = _solver.MakeConstraint(double.NegativeInfinity, 0);
                    row.SetCoefficient(_options[d][o], 1);
                    row.SetCoefficient(chosen[demand.Options[o].SightLine], -demand.Count);
                }
            }
        }
    }
}
