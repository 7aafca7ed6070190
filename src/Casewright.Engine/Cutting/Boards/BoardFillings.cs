using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Boards;

/// <summary>Lists the fillings of a board that are worth at least a value and that no further piece fits into.</summary>
internal sealed class BoardFillings
{
    private const long MostCells = 8_000_000;
    private readonly PieceKind[] _kinds;
    private readonly int[] _copies;
    private readonly long[] _values;
    private readonly WorkBudget _budget;
    private readonly int[] _order;
    private readonly long _step;
    private readonly long[][] _best;
    private readonly int[] _taken;
    private readonly List<int[]> _found = [];
    private int _most;

    private BoardFillings(ReducedProblem problem, long[] values, WorkBudget budget, long length, long step)
    {
        _kinds = problem.Kinds;
        _copies = problem.MostPieces();
        _values = values;
        _budget = budget;
        _step = step;
        _order = [.. Enumerable.Range(0, _kinds.Length).Where(k => _copies[k] > 0 && _kinds[k].SizeX <= length).OrderByDescending(k => _kinds[k].SizeX)];
        _taken = new int[_kinds.Length];
        _best = Completions(length);
    }

    /// <summary>The fillings, as numbers of every kind; null when there are more than can be listed.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="length">Length of the board, one kerf added.</param>
    /// <param name="values">Value of every kind, 0 or more.</param>
    /// <param name="least">Least value of a filling.</param>
    /// <param name="most">Most fillings.</param>
    /// <param name="budget">Counts the work.</param>
    public static List<int[]>? Of(ReducedProblem problem, long length, long[] values, long least, int most, WorkBudget budget)
    {
        var step = problem.Kinds.Aggregate(0L, (divisor, kind) => GreatestCommonDivisor(divisor, kind.SizeX));
        if (length / step * problem.Kinds.Length > MostCells)
            return null;
        var fillings = new BoardFillings(problem, values, budget, length, step) { _most = most };
        return fillings.Extend(0, length / step, least) ? fillings._found : null;
    }

    // Most value that the kinds from each place of the order on add to every length.
    private long[][] Completions(long length)
    {
        var points = (int)(length / _step) + 1;
        var best = new long[_order.Length + 1][];
        best[^1] = new long[points];
        for (var o = _order.Length - 1; o >= 0; o--)
        {
            var row = best[o] = (long[])best[o + 1].Clone();
            var (size, value) = ((int)(_kinds[_order[o]].SizeX / _step), _values[_order[o]]);
            for (var copies = _copies[_order[o]]; copies > 0 && size < points; copies--)
            {
                for (var at = points - 1; at >= size; at--)
                    row[at] = Math.Max(row[at], row[at - size] + value);
            }

            _budget.Spend(points / 100);
        }

        return best;
    }

    private bool Extend(int place, long left, long wanted)
    {
        if (_best[place][left] < wanted)
            return true;
        if (place == _order.Length)
        {
            if (IsFull(left))
                _found.Add((int[])_taken.Clone());
            _budget.Spend(1);
            return _found.Count <= _most && !_budget.IsSpent;
        }

        var kind = _order[place];
        var size = _kinds[kind].SizeX / _step;
        for (var copies = (int)Math.Min(_copies[kind], left / size); copies >= 0; copies--)
        {
            _taken[kind] = copies;
            if (!Extend(place + 1, left - (copies * size), wanted - (copies * _values[kind])))
                return false;
        }

        return true;
    }

    private bool IsFull(long left)
    {
        for (var o = _order.Length - 1; o >= 0; o--)
        {
            if (_kinds[_order[o]].SizeX / _step > left)
                return true;
            if (_taken[_order[o]] < _copies[_order[o]])
                return false;
        }

        return true;
    }

    private static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}
