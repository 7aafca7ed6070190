using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>Reads a layout back from the places of its pieces.</summary>
internal sealed class LayoutReader(ReducedProblem problem)
{
    private readonly long _kerf = problem.Source.Rules.Kerf;

    /// <summary>The layout of a sheet; null when no piece of it is wanted any more or the saw cannot part them within the rules.</summary>
    public LayoutTree? Read(SheetKind sheet, StartSheet start)
    {
        var boxes = start.Pieces.Select(Box).Where(b => b.Kind >= 0).ToArray();
        if (boxes.Length == 0)
            return null;
        var limits = new CutLimits(problem.Stages, problem.LongestRip, problem.FirstCut);
        LayoutTree? best = null;
        foreach (var axis in new[] { Axis.Y, Axis.X }.Where(a => limits.MayStart(a, sheet.SizeX)))
        {
            if (Row(boxes, axis, sheet.SizeX, sheet.SizeY) is { } row && Levels(row) <= problem.Stages && (best is null || Levels(row) < Levels(best)))
                best = row;
        }

        return best;
    }

    private Placed Box(StartPiece piece)
    {
        var (x, y) = (piece.SizeX + _kerf, piece.SizeY + _kerf);
        var kind = Array.FindIndex(problem.Kinds, k => k.SizeX == x && k.SizeY == y);
        var turned = kind < 0;
        if (turned)
            kind = Array.FindIndex(problem.Kinds, k => k.MayTurn && k.SizeX == y && k.SizeY == x);
        return new Placed(kind, turned, piece.X, piece.Y, x, y);
    }

    private static LayoutTree? Row(Placed[] boxes, byte axis, long sizeX, long sizeY)
    {
        var parts = new List<LayoutTree>();
        var groups = Split(boxes, axis);
        foreach (var group in groups)
        {
            if (group is [var one])
            {
                parts.Add(LayoutTree.Piece(one.Kind, one.Turned, one.SizeX, one.SizeY));
                continue;
            }

            var other = (byte)(1 - axis);
            if (Split(group, other).Count == 1)
                return null;
            var extent = group.Max(b => b.End(axis)) - group.Min(b => b.Start(axis));
            if (Row(group, other, axis == Axis.X ? extent : sizeX, axis == Axis.X ? sizeY : extent) is not { } row)
                return null;
            parts.Add(row);
        }

        return LayoutTree.Row(axis, sizeX, sizeY, [.. parts]);
    }

    private static List<Placed[]> Split(Placed[] boxes, byte axis)
    {
        var sorted = boxes.OrderBy(b => b.Start(axis)).ToArray();
        var groups = new List<Placed[]>();
        var (from, end) = (0, long.MinValue);
        for (var i = 0; i < sorted.Length; i++)
        {
            if (i > from && sorted[i].Start(axis) >= end)
            {
                groups.Add(sorted[from..i]);
                from = i;
            }

            end = Math.Max(end, sorted[i].End(axis));
        }

        groups.Add(sorted[from..]);
        return groups;
    }

    private static int Levels(LayoutTree tree) => tree.IsPiece ? 0 : 1 + tree.Parts.Max(Levels);

    private readonly record struct Placed(int Kind, bool Turned, long X, long Y, long SizeX, long SizeY)
    {
        public long Start(byte axis) => axis == Axis.X ? X : Y;

        public long End(byte axis) => axis == Axis.X ? X + SizeX : Y + SizeY;
    }
}
