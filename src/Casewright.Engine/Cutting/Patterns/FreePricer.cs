using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Best guillotine layout of one sheet without limit of stages, pieces repeated at will (Gilmore and Gomory's recursion over cut points).</summary>
internal sealed class FreePricer : IPricer
{
    private readonly PieceKind[] _kinds;
    private readonly SheetKind _sheet;
    private readonly long _longestRip;
    private readonly SizePoints _x;
    private readonly SizePoints _y;
    private long[] _best = [];
    private int[] _choice = [];
    private PricedPiece[] _pieces = [];

    public FreePricer(PieceKind[] kinds, SheetKind sheet, long longestRip, long[] active, int pointLimit, bool roundUp)
    {
        _kinds = kinds;
        _sheet = sheet;
        _longestRip = longestRip;
        var fitting = PricedPiece.Of(kinds, active, runX: true, sheet.SizeX, sheet.SizeY);
        _x = SizePoints.Of(fitting.Select(p => p.Run), sheet.SizeX, pointLimit, roundUp);
        _y = SizePoints.Of(fitting.Select(p => p.Depth), sheet.SizeY, pointLimit, roundUp);
    }

    public bool IsExact => _x.IsExact && _y.IsExact;

    /// <summary>Rough work of one pricing, in work units.</summary>
    public long Work => 1 + ((long)_x.Count * _y.Count * (_x.Count + _y.Count) / 2000);

    public PricedLayout Price(long[] values, bool wantLayout, CancellationToken cancellation)
    {
        _pieces = PricedPiece.Of(_kinds, values, runX: true, _sheet.SizeX, _sheet.SizeY);
        int nx = _x.Count, ny = _y.Count;
        _best = new long[nx * ny];
        _choice = new int[nx * ny];
        PlacePieces(nx, ny);
        var downX = Enumerable.Range(0, nx).Select(i => _x.Down(_x.LengthAt(i))).ToArray();
        var downY = Enumerable.Range(0, ny).Select(j => _y.Down(_y.LengthAt(j))).ToArray();
        for (var i = 1; i < nx; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var mayRip = _x.LengthAt(i) <= _longestRip;
            for (var j = 1; j < ny; j++)
                Cut(i, j, ny, downX, downY, mayRip);
        }

        return new PricedLayout(_best[^1], wantLayout && Root(downX, downY) is { } layout ? [layout] : []);
    }

    // One piece alone: exact, or trimmed where the saw takes the rip.
    private void PlacePieces(int nx, int ny)
    {
        for (var p = 0; p < _pieces.Length; p++)
        {
            int i = _x.PointOf(_pieces[p].Run), j = _y.PointOf(_pieces[p].Depth);
            if (i < nx && j < ny && _pieces[p].Value > _best[(i * ny) + j])
            {
                _best[(i * ny) + j] = _pieces[p].Value;
                _choice[(i * ny) + j] = -1 - p;
            }
        }
    }

    // Choice: 0 inherits nothing; -1-p is piece p; 4c+0/1 cuts at x or y point c; +2/+3 trims to the point before.
    private void Cut(int i, int j, int ny, int[][] downX, int[][] downY, bool mayRip)
    {
        var at = (i * ny) + j;
        var (best, choice) = (_best[at], _choice[at]);
        if (_best[at - ny] > best)
            (best, choice) = (_best[at - ny], 2);
        if (mayRip && _best[at - 1] > best)
            (best, choice) = (_best[at - 1], 3);
        for (var c = 1; c < i; c++)
        {
            var rest = downX[c][i];
            if (rest < c)
                break;
            var total = _best[(c * ny) + j] + _best[(rest * ny) + j];
            if (total > best)
                (best, choice) = (total, 4 * c);
        }

        for (var c = 1; mayRip && c < j; c++)
        {
            var rest = downY[c][j];
            if (rest < c)
                break;
            var total = _best[(i * ny) + c] + _best[(i * ny) + rest];
            if (total > best)
                (best, choice) = (total, (4 * c) + 1);
        }

        _best[at] = best;
        _choice[at] = choice;
    }

    private LayoutTree? Root(int[][] downX, int[][] downY)
    {
        var tree = Tree(_x.Count - 1, _y.Count - 1, downX, downY);
        if (tree is null)
            return null;
        var axis = tree.IsPiece ? Axis.X : tree.Axis;
        return LayoutTree.Row(axis, _sheet.SizeX, _sheet.SizeY, tree.IsPiece ? [tree] : tree.Parts);
    }

    private LayoutTree? Tree(int i, int j, int[][] downX, int[][] downY)
    {
        var choice = _choice[(i * _y.Count) + j];
        if (choice == 0)
            return null;
        if (choice < 0)
            return LayoutTree.Piece(_pieces[-1 - choice].Kind, _pieces[-1 - choice].Turned, _pieces[-1 - choice].Run, _pieces[-1 - choice].Depth);
        var c = choice / 4;
        if (c == 0)
            return choice == 2 ? Tree(i - 1, j, downX, downY) : Tree(i, j - 1, downX, downY);
        var axis = (byte)(choice % 4);
        var (first, second) = axis == Axis.X
            ? (Tree(c, j, downX, downY), Tree(downX[c][i], j, downX, downY))
            : (Tree(i, c, downX, downY), Tree(i, downY[c][j], downX, downY));
        LayoutTree[] parts = [.. Flat(first, axis), .. Flat(second, axis)];
        if (parts.Length == 0)
            return null;
        var along = parts.Sum(p => p.Along(axis));
        var across = parts.Max(p => p.Along((byte)(1 - axis)));
        return axis == Axis.X ? LayoutTree.Row(axis, along, across, parts) : LayoutTree.Row(axis, across, along, parts);
    }

    private static LayoutTree[] Flat(LayoutTree? tree, byte axis) => tree is null ? [] : !tree.IsPiece && tree.Axis == axis ? tree.Parts : [tree];
}
