using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>Turns a layout into positions on the raw sheet, saw cuts in working order, pieces and offcuts.</summary>
internal sealed class SheetWriter
{
    private readonly CuttingRules _rules;
    private readonly Func<int, PieceCopy> _next;
    private readonly List<SawCut> _cuts = [];
    private readonly List<PlacedPiece> _pieces = [];
    private readonly List<Offcut> _offcuts = [];

    private SheetWriter(CuttingRules rules, Func<int, PieceCopy> next)
    {
        _rules = rules;
        _next = next;
    }

    /// <summary>Writes one sheet.</summary>
    /// <param name="problem">Gives the sheet and the rules.</param>
    /// <param name="sheetType">Index of the kind of sheet in the problem.</param>
    /// <param name="layout">The tidied layout.</param>
    /// <param name="next">Hands out, for a kind of piece, the next copy to cut.</param>
    public static SheetCut Write(CuttingProblem problem, int sheetType, LayoutTree layout, Func<int, PieceCopy> next)
    {
        var writer = new SheetWriter(problem.Rules, next);
        writer.TrimEdges(problem.Sheets[sheetType]);
        var trim = problem.Rules.EdgeTrim;
        var region = writer.Write(layout, trim, trim, stage: 1);
        writer._offcuts.Sort((a, b) => ((double)b.Length * b.Width).CompareTo((double)a.Length * a.Width) is var c and not 0 ? c : (a.X, a.Y).CompareTo((b.X, b.Y)));
        return new SheetCut(sheetType, region, writer._cuts.ToValueList(), writer._pieces.ToValueList(), writer._offcuts.ToValueList());
    }

    private void TrimEdges(SheetType sheet)
    {
        var trim = _rules.EdgeTrim;
        if (trim == 0)
            return;
        var (length, width) = (sheet.Length, sheet.Width);
        AddCut(0, SawCutKind.Rip, 0, trim, length, trim, trim);
        AddCut(0, SawCutKind.Rip, 0, width - trim, length, width - trim, width - (2 * trim));
        AddCut(0, SawCutKind.Crosscut, trim, trim, trim, width - trim, trim);
        AddCut(0, SawCutKind.Crosscut, length - trim, trim, length - trim, width - trim, length - (2 * trim));
    }

    private CutRegion Write(LayoutTree tree, long x, long y, int stage)
    {
        var length = tree.SizeX - _rules.Kerf;
        var width = tree.SizeY - _rules.Kerf;
        if (tree.IsPiece)
        {
            var copy = _next(tree.Kind);
            var (own, ownWidth, turned) = copy.Length == length && copy.Width == width ? (length, width, false) : (width, length, true);
            _pieces.Add(new PlacedPiece(copy.Demand, copy.Copy, copy.Option, copy.Piece, x, y, own, ownWidth, turned));
            return new CutRegion(RegionKind.Piece, x, y, length, width, [], _pieces.Count - 1);
        }

        var starts = CutParts(tree, x, y, stage);
        var parts = new List<CutRegion>();
        for (var i = 0; i < tree.Parts.Length; i++)
        {
            var part = tree.Parts[i];
            parts.Add(tree.Axis == Axis.X ? Write(part, starts[i], y, stage + 1) : Write(part, x, starts[i], stage + 1));
        }

        AddRest(tree, x, y, starts[^1], parts);
        return new CutRegion(tree.Axis == Axis.X ? RegionKind.Crosscut : RegionKind.Ripped, x, y, length, width, parts.ToValueList(), -1);
    }

    // All cuts of a row come before those of its parts: the saw keeps its direction as long as it can.
    private long[] CutParts(LayoutTree tree, long x, long y, int stage)
    {
        var starts = new long[tree.Parts.Length + 1];
        var at = tree.Axis == Axis.X ? x : y;
        var end = at + tree.Along(tree.Axis) - _rules.Kerf;
        for (var i = 0; i < tree.Parts.Length; i++)
        {
            starts[i] = at;
            var setting = tree.Parts[i].Along(tree.Axis) - _rules.Kerf;
            var line = at + setting;
            if (line < end)
            {
                if (tree.Axis == Axis.X)
                    AddCut(stage, SawCutKind.Crosscut, line, y, line, y + tree.SizeY - _rules.Kerf, setting);
                else
                    AddCut(stage, SawCutKind.Rip, x, line, x + tree.SizeX - _rules.Kerf, line, setting);
            }

            at = line + _rules.Kerf;
        }

        starts[^1] = at;
        return starts;
    }

    private void AddRest(LayoutTree tree, long x, long y, long start, List<CutRegion> parts)
    {
        var end = (tree.Axis == Axis.X ? x : y) + tree.Along(tree.Axis) - _rules.Kerf;
        if (start >= end)
            return;
        var rest = tree.Axis == Axis.X
            ? new Offcut(start, y, end - start, tree.SizeY - _rules.Kerf)
            : new Offcut(x, start, tree.SizeX - _rules.Kerf, end - start);
        _offcuts.Add(rest);
        parts.Add(new CutRegion(RegionKind.Rest, rest.X, rest.Y, rest.Length, rest.Width, [], -1));
    }

    private void AddCut(int stage, SawCutKind kind, long x0, long y0, long x1, long y1, long setting) =>
        _cuts.Add(new SawCut(_cuts.Count + 1, stage, kind, x0, y0, x1, y1, setting));
}

/// <summary>A piece of one copy of a demand, waiting for its place.</summary>
internal readonly record struct PieceCopy(int Demand, int Copy, int Option, int Piece, long Length, long Width);
