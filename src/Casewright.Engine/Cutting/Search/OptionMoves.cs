using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Makes a copy by another option, or moves a sight line group to another line; can take the last move back.</summary>
internal sealed class OptionMoves
{
    private readonly ReducedProblem _problem;
    private readonly SearchRandom _random;
    private readonly int[] _choosers;
    private readonly int[][] _before;
    private long _extraBefore;

    public OptionMoves(ReducedProblem problem, SearchRandom random)
    {
        _problem = problem;
        _random = random;
        _choosers = [.. Enumerable.Range(0, problem.Demands.Length).Where(d => problem.Demands[d].Options.Length > 1)];
        _before = [.. problem.Demands.Select(d => new int[d.Options.Length])];
    }

    public bool HasChoice => _choosers.Length > 0;

    /// <summary>How much the linear program uses every option; empty when unknown.</summary>
    public double[][] Hints { get; set; } = [];

    /// <summary>Makes one random move; false when none was possible.</summary>
    public bool Switch(SearchState state, Ruin ruin, long stamp, List<Bin> replaced, List<Bin> made)
    {
        for (var d = 0; d < _before.Length; d++)
            Array.Copy(state.OptionCounts[d], _before[d], _before[d].Length);
        _extraBefore = state.ExtraCost;
        var demand = _choosers[_random.Next(_choosers.Length)];
        var target = Target(demand);
        var line = _problem.Demands[demand].Options[target].SightLine;
        if (_problem.Demands[demand].Group >= 0 && line >= 0 && CurrentLine(state, _problem.Demands[demand].Group) is var now && now >= 0 && now != line)
            return MoveGroup(state, ruin, _problem.Demands[demand].Group, line, stamp, replaced, made);
        var from = Source(state, demand, target);
        if (from < 0)
            return false;
        Exchange(state, ruin, demand, from, target, stamp, replaced, made);
        return true;
    }

    public void Undo(SearchState state)
    {
        for (var d = 0; d < _before.Length; d++)
            Array.Copy(_before[d], state.OptionCounts[d], _before[d].Length);
        state.ExtraCost = _extraBefore;
    }

    private int Target(int demand)
    {
        var count = _problem.Demands[demand].Options.Length;
        var target = _random.Next(count);
        if (Hints.Length == 0 || !_random.Chance(0.7))
            return target;
        for (var i = 0; i < count; i++)
        {
            var option = (target + i) % count;
            if (Hints[demand][option] > 1e-6)
                return option;
        }

        return target;
    }

    private int Source(SearchState state, int demand, int target)
    {
        var counts = state.OptionCounts[demand];
        var start = _random.Next(counts.Length);
        for (var i = 0; i < counts.Length; i++)
        {
            var option = (start + i) % counts.Length;
            if (counts[option] > 0 && option != target)
                return option;
        }

        return -1;
    }

    private int CurrentLine(SearchState state, int group)
    {
        for (var d = 0; d < _problem.Demands.Length; d++)
        {
            if (_problem.Demands[d].Group != group)
                continue;
            for (var o = 0; o < _problem.Demands[d].Options.Length; o++)
            {
                if (state.OptionCounts[d][o] > 0 && _problem.Demands[d].Options[o].SightLine >= 0)
                    return _problem.Demands[d].Options[o].SightLine;
            }
        }

        return -1;
    }

    private bool MoveGroup(SearchState state, Ruin ruin, int group, int line, long stamp, List<Bin> replaced, List<Bin> made)
    {
        for (var d = 0; d < _problem.Demands.Length; d++)
        {
            var demand = _problem.Demands[d];
            if (demand.Group != group)
                continue;
            int[] allowed = [.. Enumerable.Range(0, demand.Options.Length).Where(o => demand.Options[o].SightLine < 0 || demand.Options[o].SightLine == line)];
            for (var o = 0; o < demand.Options.Length; o++)
            {
                while (demand.Options[o].SightLine >= 0 && demand.Options[o].SightLine != line && state.OptionCounts[d][o] > 0)
                    Exchange(state, ruin, d, o, allowed[_random.Next(allowed.Length)], stamp, replaced, made);
            }
        }

        return true;
    }

    private void Exchange(SearchState state, Ruin ruin, int demand, int from, int to, long stamp, List<Bin> replaced, List<Bin> made)
    {
        var options = _problem.Demands[demand].Options;
        foreach (var kind in options[from].Kinds)
            ruin.Withdraw(state, kind, stamp, replaced, made);
        foreach (var kind in options[to].Kinds)
        {
            state.Outside[kind]++;
            state.OutsideArea += _problem.Kinds[kind].Area;
        }

        state.OptionCounts[demand][from]--;
        state.OptionCounts[demand][to]++;
        state.ExtraCost += options[to].ExtraCost - options[from].ExtraCost;
    }
}
