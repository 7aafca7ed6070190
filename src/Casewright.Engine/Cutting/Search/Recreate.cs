using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Puts pieces that are outside into bins, one by one, each where it leaves the most useful rests.</summary>
internal sealed class Recreate
{
    private readonly ReducedProblem _problem;
    private readonly SearchRandom _random;
    private readonly InsertionFinder _finder;
    private readonly int[][] _ranks;
    private readonly int[] _queue;
    private readonly Bin _trial = new();
    private readonly CancellationToken _cancellation;

    public Recreate(ReducedProblem problem, CutLimits limits, SearchRandom random, double blink, CancellationToken cancellation)
    {
        _cancellation = cancellation;
        _problem = problem;
        _random = random;
        _finder = new InsertionFinder(problem, limits, random, blink);
        _queue = new int[problem.Kinds.Length];
        _ranks = [Rank(k => k.Area), Rank(k => Math.Max(k.SizeX, k.SizeY)), Rank(k => k.SizeX), Rank(k => k.SizeY), Rank(k => Math.Min(k.SizeX, k.SizeY)), Rank(k => k.Area)];
    }

    /// <summary>Orders of filling to choose from; the last is random.</summary>
    public int Orders => _ranks.Length + 1;

    /// <summary>Makes the last order but the random one that of area by weight.</summary>
    public void RankBy(double[] weights)
    {
        int[] order = [.. Enumerable.Range(0, weights.Length).OrderByDescending(k => _problem.Kinds[k].Area * weights[k]).ThenBy(k => k)];
        for (var i = 0; i < order.Length; i++)
            _ranks[^1][order[i]] = i;
    }

    public long Looked => _finder.Looked;

    /// <summary>Fills the bins; opens new ones while the cost stays within <paramref name="costLimit"/>.</summary>
    public void Fill(SearchState state, int order, long costLimit, long stamp, List<Bin> replaced, List<Bin> made)
    {
        var length = Queue(state.Outside, order);
        for (var q = 0; q < length; q++)
        {
            var kind = _queue[q];
            _cancellation.ThrowIfCancellationRequested();
            while (state.Outside[kind] > 0 && Place(state, kind, costLimit, stamp, replaced, made))
            {
                state.Outside[kind]--;
                state.OutsideArea -= _problem.Kinds[kind].Area;
            }
        }
    }

    private bool Place(SearchState state, int kind, long costLimit, long stamp, List<Bin> replaced, List<Bin> made)
    {
        var best = Insertion.None;
        for (var b = 0; b < state.Bins.Count; b++)
            _finder.Look(state.Bins[b], b, kind, ref best);
        if (best.Bin >= 0)
        {
            var bin = Own(state, best.Bin, stamp, replaced, made);
            bin.Insert(best.Slot, best.Placement, _problem.Kinds[kind], state.Limits);
            return true;
        }

        return Open(state, kind, costLimit, stamp, made);
    }

    private bool Open(SearchState state, int kind, long costLimit, long stamp, List<Bin> made)
    {
        var best = Insertion.None;
        var bestScore = double.PositiveInfinity;
        byte bestAxis = 0;
        for (var s = 0; s < _problem.Sheets.Length; s++)
        {
            var sheet = _problem.Sheets[s];
            if (state.SheetUse[s] >= sheet.Available || state.Cost + sheet.Cost > costLimit || !_problem.Kinds[kind].Fits(sheet.SizeX, sheet.SizeY))
                continue;
            for (byte axis = 0; axis < 2; axis++)
            {
                if (!state.Limits.MayStart(axis, sheet.SizeX))
                    continue;
                var found = Insertion.None;
                _trial.Start(s, sheet, axis);
                _finder.Look(_trial, s, kind, ref found);
                // Sheets are compared by price for the area, with a little chance so that all sizes get their turn.
                var score = ((sheet.Cost + 1e-9) / sheet.Area * (1 + (_problem.Sheets.Length > 1 ? _random.Next(1000) * 3e-4 : 0))) + (found.Cost / (sheet.Area * sheet.Area) * 1e-3 / sheet.Area);
                if (found.Bin >= 0 && score < bestScore)
                    (best, bestScore, bestAxis) = (found, score, axis);
            }
        }

        if (best.Bin < 0)
            return false;
        var bin = state.TakeSpare();
        bin.Start(best.Bin, _problem.Sheets[best.Bin], bestAxis);
        bin.Insert(best.Slot, best.Placement, _problem.Kinds[kind], state.Limits);
        bin.Stamp = stamp;
        made.Add(bin);
        state.AddBin(bin);
        return true;
    }

    /// <summary>The bin itself when this step made it; else a copy in its place.</summary>
    public static Bin Own(SearchState state, int index, long stamp, List<Bin> replaced, List<Bin> made)
    {
        var bin = state.Bins[index];
        if (bin.Stamp == stamp)
            return bin;
        var copy = state.TakeSpare();
        copy.CopyFrom(bin);
        copy.Stamp = stamp;
        replaced.Add(bin);
        made.Add(copy);
        state.Bins[index] = copy;
        return copy;
    }

    private int Queue(int[] outside, int order)
    {
        var length = 0;
        for (var k = 0; k < outside.Length; k++)
        {
            if (outside[k] > 0)
                _queue[length++] = k;
        }

        var queue = _queue.AsSpan(0, length);
        if (order < _ranks.Length)
        {
            var rank = _ranks[order];
            queue.Sort((a, b) => rank[a].CompareTo(rank[b]));
        }
        else
        {
            for (var i = length - 1; i > 0; i--)
            {
                var j = _random.Next(i + 1);
                (queue[i], queue[j]) = (queue[j], queue[i]);
            }
        }

        return length;
    }

    private int[] Rank(Func<PieceKind, double> key)
    {
        var rank = new int[_problem.Kinds.Length];
        var order = Enumerable.Range(0, rank.Length).OrderByDescending(k => key(_problem.Kinds[k])).ThenBy(k => k).ToArray();
        for (var i = 0; i < order.Length; i++)
            rank[order[i]] = i;
        return rank;
    }
}
