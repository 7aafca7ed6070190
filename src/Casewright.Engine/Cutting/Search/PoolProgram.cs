using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;
using Google.OrTools.Sat;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Chooses whole layouts and options from all that were met, at the least cost, by integer programming.</summary>
internal sealed class PoolProgram
{
    // One copy of a preferred option outweighs any number of settings; one setting any number of cuts of a usual job, one cut any
    // worth of rests. Where rests come first, so much of the worth of one outweighs a setting.
    private const long PreferenceWeight = 1_000_000_000;
    private const long SettingWeight = 1_000_000;
    private const long CutWeight = 1_000;
    private const long RestFirstWeight = 1_000_000;
    private const long SettingAfterRests = 1_000;
    private readonly ReducedProblem _problem;
    private readonly IReadOnlyList<PatternColumn> _columns;
    private readonly CpModel _model = new();
    private readonly IntVar[] _uses;
    private readonly IntVar[][] _options;
    private readonly LinearExpr _cost;
    private readonly bool _withExchanges;

    /// <summary>Sets up the program.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="columns">The layouts to choose from.</param>
    /// <param name="costGoal">Only answers within this cost count.</param>
    /// <param name="exchanges">Whether a smaller piece may be cut in the place of a larger one.</param>
    public PoolProgram(ReducedProblem problem, IReadOnlyList<PatternColumn> columns, long costGoal, bool exchanges = true)
    {
        _withExchanges = exchanges;
        _problem = problem;
        _columns = columns;
        _options = [.. problem.Demands.Select(d => d.Options.Select(o => _model.NewIntVar(0, d.Count, "")).ToArray())];
        _uses = [.. columns.Select(c => _model.NewIntVar(0, Math.Min(problem.Sheets[c.Sheet].Available, MostUses(c)), ""))];
        Cover();
        Stock();
        SightLines();
        var cost = LinearExpr.WeightedSum(_uses, columns.Select(c => problem.Sheets[c.Sheet].Cost))
            + LinearExpr.WeightedSum(_options.SelectMany(o => o), problem.Demands.SelectMany(d => d.Options.Select(o => o.ExtraCost)));
        if (costGoal < long.MaxValue)
            _model.Add(cost <= costGoal);
        _cost = cost;
    }

    /// <summary>Asks for the least cost.</summary>
    public void MinimizeCost() => _model.Minimize(_cost);

    /// <summary>
    /// Asks, within the cost goal, for options of the best preference, then by the aim of the problem: for the fewest fence settings
    /// over all sheets, then the fewest cuts, then rests in one piece; or for these last first.
    /// </summary>
    /// <param name="characters">What every layout asks of the saw.</param>
    /// <param name="start">How often each layout is used in the answer to improve on.</param>
    /// <param name="optionCounts">The options of that answer.</param>
    /// <param name="sheets">Most sheets.</param>
    public void MinimizeEffort(IReadOnlyList<LayoutCharacter> characters, int[] start, int[][] optionCounts, int sheets)
    {
        var restsFirst = _problem.Source.Aim == LayoutAim.LargestOffcut;
        var (settingWeight, cutWeight, restWeight) = restsFirst
            ? (SettingAfterRests, 1L, RestFirstWeight)
            : (SettingWeight, CutWeight, 1L);
        _model.Add(LinearExpr.Sum(_uses) <= sheets);
        for (var d = 0; d < _options.Length; d++)
        {
            for (var o = 0; o < _options[d].Length; o++)
                _model.AddHint(_options[d][o], optionCounts[d][o]);
        }

        var settings = new Dictionary<(byte, long), BoolVar>();
        var objective = new List<LinearExpr>();
        for (var c = 0; c < _columns.Count; c++)
        {
            _model.AddHint(_uses[c], start[c]);
            var used = _model.NewBoolVar("");
            _model.Add(_uses[c] >= 1).OnlyEnforceIf(used);
            _model.Add(_uses[c] == 0).OnlyEnforceIf(used.Not());
            foreach (var setting in characters[c].Settings)
            {
                if (!settings.TryGetValue(setting, out var set))
                {
                    set = _model.NewBoolVar("");
                    settings.Add(setting, set);
                    objective.Add(settingWeight * (LinearExpr)set);
                }

                _model.AddImplication(used, set);
            }

            objective.Add(((cutWeight * characters[c].Cuts) - (restWeight * characters[c].RestWorth)) * (LinearExpr)_uses[c]);
        }

        for (var d = 0; d < _options.Length; d++)
        {
            for (var o = 0; o < _options[d].Length; o++)
            {
                if (_problem.Demands[d].Options[o].Preference > 0)
                    objective.Add(PreferenceWeight * _problem.Demands[d].Options[o].Preference * (LinearExpr)_options[d][o]);
            }
        }

        _model.Minimize(LinearExpr.Sum(objective));
    }

    /// <summary>Solves within an effort in deterministic seconds of the solver; null when nothing within the goal was found.</summary>
    public (List<(int Sheet, LayoutTree Layout)> Layouts, int[][] OptionCounts)? Solve(double effort, WorkBudget budget, int seed)
    {
        var solver = new CpSolver();
        var clock = budget.TimeLeft is { } left ? FormattableString.Invariant($" max_time_in_seconds:{Math.Max(0.01, left.TotalSeconds)}") : "";
        // Where options are to be chosen too, several strategies take turns, still on one thread and in a fixed order.
        var interleave = _problem.OptionsFixed ? "" : " interleave_search:true";
        solver.StringParameters = FormattableString.Invariant(
            $"num_workers:1 random_seed:{seed} max_deterministic_time:{effort} linearization_level:2 symmetry_level:0 cp_model_probing_level:0")
            + interleave + clock;
        CpSolverStatus status;
        using (budget.Cancellation.Register(solver.StopSearch))
            status = solver.Solve(_model);
        budget.Spend((long)((solver.Response?.DeterministicTime ?? 0) * 1e6) + _columns.Count);
        budget.Cancellation.ThrowIfCancellationRequested();
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return null;
        int[][] counts = [.. _options.Select(o => o.Select(v => (int)solver.Value(v)).ToArray())];
        return (Layouts(solver, counts), counts);
    }

    // Larger pieces are exchanged for smaller ones; what is held beyond that, and not wanted, becomes rest.
    private List<(int Sheet, LayoutTree Layout)> Layouts(CpSolver solver, int[][] optionCounts)
    {
        var layouts = new List<(int Sheet, LayoutTree Layout)>();
        for (var c = 0; c < _columns.Count; c++)
        {
            for (var n = solver.Value(_uses[c]); n > 0; n--)
                layouts.Add((_columns[c].Sheet, _columns[c].Layout));
        }

        return PieceExchange.Fit(_problem, layouts, _problem.PiecesOf(optionCounts));
    }

    private int MostUses(PatternColumn column)
    {
        var most = 1;
        for (var i = 0; i < column.Kinds.Length; i++)
        {
            var needed = _problem.Demands.Sum(d => d.Count * d.Options.Max(o => o.Kinds.Count(k => k == column.Kinds[i])));
            most = Math.Max(most, (needed + column.Counts[i] - 1) / column.Counts[i]);
        }

        return most;
    }

    private void Cover()
    {
        var have = Enumerable.Range(0, _problem.Kinds.Length).Select(_ => (Variables: new List<IntVar>(), Weights: new List<long>())).ToArray();
        for (var c = 0; c < _columns.Count; c++)
        {
            for (var i = 0; i < _columns[c].Kinds.Length; i++)
            {
                have[_columns[c].Kinds[i]].Variables.Add(_uses[c]);
                have[_columns[c].Kinds[i]].Weights.Add(_columns[c].Counts[i]);
            }
        }

        var most = _problem.MostPieces();
        foreach (var (larger, smaller) in _withExchanges ? Exchanges.Of(_problem.Kinds) : [])
        {
            var number = _model.NewIntVar(0, most.Sum(), "");
            have[larger].Variables.Add(number);
            have[larger].Weights.Add(-1);
            have[smaller].Variables.Add(number);
            have[smaller].Weights.Add(1);
        }

        for (var d = 0; d < _problem.Demands.Length; d++)
        {
            _model.Add(LinearExpr.Sum(_options[d]) == _problem.Demands[d].Count);
            for (var o = 0; o < _options[d].Length; o++)
            {
                foreach (var kinds in _problem.Demands[d].Options[o].Kinds.GroupBy(k => k))
                {
                    have[kinds.Key].Variables.Add(_options[d][o]);
                    have[kinds.Key].Weights.Add(-kinds.Count());
                }
            }
        }

        foreach (var (variables, weights) in have)
            _model.Add(LinearExpr.WeightedSum(variables, weights) >= 0);
    }

    private void Stock()
    {
        for (var s = 0; s < _problem.Sheets.Length; s++)
        {
            if (_problem.Sheets[s].Available == int.MaxValue)
                continue;
            var uses = Enumerable.Range(0, _columns.Count).Where(c => _columns[c].Sheet == s).Select(c => _uses[c]).ToArray();
            _model.Add(LinearExpr.Sum(uses) <= _problem.Sheets[s].Available);
        }
    }

    private void SightLines()
    {
        for (var g = 0; g < _problem.SightLines.Length; g++)
        {
            BoolVar[] chosen = [.. Enumerable.Range(0, _problem.SightLines[g]).Select(_ => _model.NewBoolVar(""))];
            _model.AddExactlyOne(chosen);
            for (var d = 0; d < _problem.Demands.Length; d++)
            {
                var demand = _problem.Demands[d];
                for (var o = 0; demand.Group == g && o < demand.Options.Length; o++)
                {
                    if (demand.Options[o].SightLine >= 0)
                        _model.Add(_options[d][o] <= demand.Count * (LinearExpr)chosen[demand.Options[o].SightLine]);
                }
            }
        }
    }
}
