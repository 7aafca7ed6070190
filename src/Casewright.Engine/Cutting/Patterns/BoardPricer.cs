using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Best filling of one board, or of every clear stretch of it, with no more of a kind than can be wanted on one stretch.</summary>
internal sealed class BoardPricer : IPricer
{
    private const int PointLimit = 150_000;
    private readonly PieceKind[] _kinds;
    private readonly SheetKind _board;
    private readonly (long Length, SizePoints Points)[] _stretches;
    private readonly List<(int Kind, int Copies)> _batches = [];

    public BoardPricer(ReducedProblem problem, SheetKind board, bool roundUp)
    {
        _kinds = problem.Kinds;
        _board = board;
        var most = problem.MostPieces();
        var wanted = Enumerable.Range(0, most.Length).Where(k => most[k] > 0).ToArray();
        var stretches = board.Segments ?? [board.SizeX];
        _stretches = [.. stretches.Select(s => (s, SizePoints.Of(wanted.Select(k => _kinds[k].SizeX), s, PointLimit, roundUp)))];
        foreach (var kind in wanted)
            AddBatches(kind, (int)Math.Min(most[kind], stretches.Max() / _kinds[kind].SizeX));
    }

    public bool IsExact => Array.TrueForAll(_stretches, s => s.Points.IsExact);

    /// <summary>Rough work of one pricing, in work units.</summary>
    public long Work => 1 + (_stretches.Sum(s => (long)s.Points.Count) * _batches.Count / 700);

    public PricedLayout Price(long[] values, bool wantLayout, CancellationToken cancellation)
    {
        var total = 0L;
        var rows = new List<LayoutTree>();
        foreach (var (length, points) in _stretches)
        {
            cancellation.ThrowIfCancellationRequested();
            var (value, pieces) = Fill(points, values, wantLayout);
            total += value;
            rows.Add(LayoutTree.Row(Axis.X, length, _board.SizeY, pieces));
        }

        if (!wantLayout)
            return new PricedLayout(total, []);
        var layout = _board.Segments is null
            ? rows[0]
            : LayoutTree.Row(Axis.X, _board.SizeX, _board.SizeY, [.. rows.Where(r => r.Parts.Length > 0).Select(r => LayoutTree.Row(Axis.Y, r.SizeX, r.SizeY, [r]))]);
        return new PricedLayout(total, [layout]);
    }

    // Copies come in batches of 1, 2, 4, ... so that every number up to the limit is some sum of them.
    private void AddBatches(int kind, int copies)
    {
        for (var size = 1; copies > 0; size *= 2)
        {
            var batch = Math.Min(size, copies);
            _batches.Add((kind, batch));
            copies -= batch;
        }
    }

    private (long Value, LayoutTree[] Pieces) Fill(SizePoints points, long[] values, bool wantPieces)
    {
        var best = new long[points.Count];
        var taken = new bool[_batches.Count][];
        for (var b = 0; b < _batches.Count; b++)
        {
            var (kind, copies) = _batches[b];
            if (values[kind] <= 0 || _kinds[kind].SizeX * copies > points.LengthAt(points.Count - 1))
                continue;
            var down = points.Down(_kinds[kind].SizeX * copies);
            taken[b] = Take(best, down, values[kind] * copies);
        }

        return (best[^1], wantPieces ? Pieces(points, taken) : []);
    }

    private static bool[] Take(long[] best, int[] down, long value)
    {
        var taken = new bool[best.Length];
        for (var i = best.Length - 1; i >= 0; i--)
        {
            var rest = down[i];
            if (rest < 0)
                break;
            var total = best[rest] + value;
            if (total > best[i])
            {
                best[i] = total;
                taken[i] = true;
            }
        }

        return taken;
    }

    private LayoutTree[] Pieces(SizePoints points, bool[][] taken)
    {
        var pieces = new List<LayoutTree>();
        var at = points.Count - 1;
        for (var b = _batches.Count - 1; b >= 0; b--)
        {
            if (taken[b] is not { } batch || !batch[at])
                continue;
            var (kind, copies) = _batches[b];
            for (var n = 0; n < copies; n++)
                pieces.Add(LayoutTree.Piece(kind, turned: false, _kinds[kind].SizeX, _kinds[kind].SizeY));
            at = points.Down(_kinds[kind].SizeX * copies)[at];
        }

        return [.. pieces];
    }
}
