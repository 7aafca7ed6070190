using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>
/// Searches for an answer below a cost goal by taking regions out and putting pieces back, accepting by late acceptance
/// on the area of pieces that find no place. After Gardeyn and Wauters, EJOR 2022 (goal-driven ruin and recreate), with
/// tightening of rows, several orders of filling, and a history that grows where the search stands still added.
/// </summary>
internal sealed class RuinAndRecreate
{
    // A short history finds the easy answers soon, a long one the hard answers late. Where options are to be chosen too, a short
    // one settles on the first choice that fits.
    private const int ShortHistory = 25;
    private const int HistoryWithOptions = 300;
    private const int LongHistory = 1600;
    private const int StillStepsForEach = 4000;
    private const int PoolLimit = 20_000;
    private const int StepsBetweenWeighings = 200;
    private const double WeightStep = 0.04;
    private readonly ReducedProblem _problem;
    private readonly SearchState _state;
    private readonly SearchRandom _random;
    private readonly Ruin _ruin;
    private readonly Recreate _recreate;
    private readonly OptionMoves _options;
    private readonly WorkBudget _budget;
    private readonly double[] _history = new double[LongHistory];
    private readonly double[] _weights;
    private readonly List<Bin> _replaced = [];
    private readonly List<Bin> _made = [];
    private Bin[] _binsBefore = [];
    private readonly int[] _outsideBefore;
    private readonly int[] _useBefore;
    private double _current;
    private double _best;
    private int _historyLength;
    private readonly int _shortest;
    private long _bestStep;
    private long _step;
    private long _looked;

    public RuinAndRecreate(ReducedProblem problem, int[][] optionCounts, SearchRandom random, WorkBudget budget)
    {
        _problem = problem;
        _random = random;
        _budget = budget;
        _shortest = problem.OptionsFixed ? ShortHistory : HistoryWithOptions;
        _state = new SearchState(problem, optionCounts);
        _ruin = new Ruin(problem, random);
        _recreate = new Recreate(problem, _state.Limits, random, blink: 0.01, budget.Cancellation);
        _options = new OptionMoves(problem, random);
        _outsideBefore = new int[problem.Kinds.Length];
        _weights = new double[problem.Kinds.Length];
        Array.Fill(_weights, 1);
        _useBefore = new int[problem.Sheets.Length];
    }

    /// <summary>Where layouts met are remembered; null to forget them.</summary>
    public PatternPool? Pool { get; init; }

    /// <summary>Options that the linear program uses, by demand; empty when unknown.</summary>
    public double[][] OptionHints { get => _options.Hints; set => _options.Hints = value; }

    public long Steps => _step;

    public SearchState State => _state;

    /// <summary>Fills from nothing without regard to a goal; false when the stock runs out.</summary>
    public bool Construct(int order)
    {
        _recreate.Fill(_state, order, long.MaxValue, ++_step, _replaced, _made);
        Settle();
        return _state.OutsideArea == 0 || Array.TrueForAll(_state.Outside, n => n == 0);
    }

    /// <summary>Lays out sheets as given, before anything is constructed.</summary>
    public void Load(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts)
    {
        var held = new int[_problem.Kinds.Length];
        foreach (var (sheet, layout) in layouts)
        {
            var bin = _state.TakeSpare();
            bin.Start(sheet, _problem.Sheets[sheet], layout.Axis);
            bin.Load(layout, _problem.Kinds, _state.Limits);
            bin.Stamp = _step;
            _state.AddBin(bin);
            layout.Count(held);
        }

        for (var k = 0; k < held.Length; k++)
        {
            _state.Outside[k] -= held[k];
            _state.OutsideArea -= held[k] * _problem.Kinds[k].Area;
        }
    }

    /// <summary>Searches until all pieces lie in bins whose cost is within the goal, or the steps or the effort end.</summary>
    public bool Reach(long costGoal, long steps, double partOfBudget)
    {
        while (_state.Cost > costGoal && _state.Bins.Count > 0)
            _ruin.DropBin(_state, Emptiest());
        _current = Value();
        _best = _current;
        Remember(_shortest);
        for (var done = 0L; done < steps && !AllPlaced(); done++)
        {
            Step(costGoal);
            var looked = _recreate.Looked;
            _budget.Spend(1 + ((looked - _looked) / 64));
            _looked = looked;
            if (_step % StepsBetweenWeighings == 0)
                Weigh();
            if (_step - _bestStep > (long)StillStepsForEach * _historyLength)
                Remember(_historyLength < LongHistory ? _historyLength * 2 : _shortest);
            if ((_step & 63) == 0 && (_budget.IsSpent || _budget.PartSpent > partOfBudget))
                break;
        }

        return AllPlaced() && _state.Cost <= costGoal;
    }

    private void Remember(int length)
    {
        _historyLength = length;
        _bestStep = _step;
        Array.Fill(_history, _current, 0, length);
    }

    // What finds no place again and again counts for more, and goes first in one of the orders of filling.
    private void Weigh()
    {
        var before = Value();
        for (var k = 0; k < _weights.Length; k++)
        {
            if (_state.Outside[k] > 0)
                _weights[k] += WeightStep;
        }

        _recreate.RankBy(_weights);
        var more = Value() - before;
        _current += more;
        _best += more;
        for (var i = 0; i < _historyLength; i++)
            _history[i] += more;
    }

    private bool AllPlaced()
    {
        foreach (var count in _state.Outside)
        {
            if (count > 0)
                return false;
        }

        return true;
    }

    private void Step(long costGoal)
    {
        _step++;
        Save();
        var extraCost = _state.SheetCost;
        var area = _state.OutsideArea;
        var regions = 1 + _random.Next(11);
        var switched = _options.HasChoice && _random.Chance(0.3) && _options.Switch(_state, _ruin, _step, _replaced, _made);
        _ruin.Apply(_state, switched ? 1 + _random.Next(5) : regions, tighten: 0.5, _step, _replaced, _made);
        _recreate.Fill(_state, NextOrder(), costGoal, _step, _replaced, _made);
        var value = Value();
        var slot = (int)(_step % _historyLength);
        if (_state.Cost <= costGoal && (value <= _history[slot] || value <= _current))
        {
            _current = value;
            Collect(value);
            Settle();
        }
        else
        {
            Undo(extraCost, area);
            if (switched)
                _options.Undo(_state);
        }

        if (_current < _history[slot])
            _history[slot] = _current;
    }

    // The layouts of every new best, and now and then of others, are worth remembering.
    private void Collect(double value)
    {
        var isBest = value < _best;
        if (isBest)
            (_best, _bestStep) = (value, _step);
        if (Pool is null || Pool.Columns.Count >= PoolLimit || (!isBest && _random.Next(40) > 0))
            return;
        foreach (var bin in _state.Bins)
        {
            if (!bin.IsEmpty)
                Pool.Add(bin);
        }
    }

    private int NextOrder()
    {
        var draw = _random.Next(100);
        return draw switch { < 30 => 0, < 40 => 1, < 50 => 2, < 60 => 3, < 65 => 4, < 85 => 5, _ => 6 };
    }

    // Area outside first; among equals, free space gathered in few large rests.
    private double Value()
    {
        var rests = 0.0;
        foreach (var bin in _state.Bins)
        {
            foreach (ref readonly var slot in bin.Slots)
            {
                var area = (double)slot.SizeX * slot.SizeY / _state.AreaUnit;
                rests += area * area;
            }
        }

        var outside = 0.0;
        for (var k = 0; k < _weights.Length; k++)
        {
            if (_state.Outside[k] > 0)
                outside += _state.Outside[k] * _weights[k] * _problem.Kinds[k].Area;
        }

        return (outside / _state.AreaUnit) - (1e-3 * rests);
    }

    private void Save()
    {
        if (_binsBefore.Length < _state.Bins.Count)
            _binsBefore = new Bin[_state.Bins.Count * 2];
        _state.Bins.CopyTo(_binsBefore);
        _binsBeforeCount = _state.Bins.Count;
        Array.Copy(_state.Outside, _outsideBefore, _outsideBefore.Length);
        Array.Copy(_state.SheetUse, _useBefore, _useBefore.Length);
    }

    private int _binsBeforeCount;

    private void Undo(long sheetCost, double area)
    {
        _state.Bins.Clear();
        for (var i = 0; i < _binsBeforeCount; i++)
            _state.Bins.Add(_binsBefore[i]);
        Array.Copy(_outsideBefore, _state.Outside, _outsideBefore.Length);
        Array.Copy(_useBefore, _state.SheetUse, _useBefore.Length);
        _state.SheetCost = sheetCost;
        _state.OutsideArea = area;
        foreach (var bin in _made)
            _state.GiveSpare(bin);
        _made.Clear();
        _replaced.Clear();
    }

    private void Settle()
    {
        foreach (var bin in _replaced)
            _state.GiveSpare(bin);
        foreach (var bin in _made)
        {
            if (bin.IsEmpty)
                _state.GiveSpare(bin);
        }

        _made.Clear();
        _replaced.Clear();
    }

    private int Emptiest()
    {
        var best = 0;
        for (var b = 1; b < _state.Bins.Count; b++)
        {
            if (_state.Bins[b].FilledArea < _state.Bins[best].FilledArea)
                best = b;
        }

        return best;
    }
}
