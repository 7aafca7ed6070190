using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>
/// Best layout of one sheet in two or three stages, pieces repeated at will. Strips run one way; in two stages pieces lie
/// side by side in a strip, in three stages sections lie side by side and pieces are stacked in a section. A piece smaller
/// than its strip or section is trimmed.
/// </summary>
internal sealed class StagedPricer : IPricer
{
    private readonly PieceKind[] _kinds;
    private readonly bool _runX;
    private readonly long _run;
    private readonly long _depth;
    private readonly long _deepest;
    private readonly bool _three;
    private readonly SizePoints _runPoints;
    private readonly SizePoints _depthPoints;

    /// <summary>Prepares a sheet.</summary>
    /// <param name="kinds">All kinds of piece.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="runX">Whether strips run along x (rips first).</param>
    /// <param name="stages">2 or 3.</param>
    /// <param name="longestRip">Longest rip, kerf added.</param>
    /// <param name="active">Values of the kinds; those of 0 get no points.</param>
    /// <param name="pointLimit">Most points along an axis before sizes are rounded.</param>
    /// <param name="roundUp">Whether rounded sizes grow, so that layouts are real.</param>
    public StagedPricer(PieceKind[] kinds, SheetKind sheet, bool runX, int stages, long longestRip, long[] active, int pointLimit, bool roundUp)
    {
        _kinds = kinds;
        _runX = runX;
        (_run, _depth) = runX ? (sheet.SizeX, sheet.SizeY) : (sheet.SizeY, sheet.SizeX);
        _three = stages >= 3;
        // A section longer than the saw rips can only be a single piece as wide as the sheet.
        _deepest = runX ? long.MaxValue : longestRip;
        var fitting = PricedPiece.Of(kinds, active, runX, _run, _depth);
        _runPoints = SizePoints.Of(fitting.Select(p => p.Run), _run, pointLimit, roundUp);
        _depthPoints = SizePoints.Of(fitting.Select(p => p.Depth), _depth, pointLimit, roundUp);
    }

    /// <summary>Whether no size was rounded.</summary>
    public bool IsExact => _runPoints.IsExact && _depthPoints.IsExact;

    /// <summary>Rough work of one pricing, in work units.</summary>
    public long Work => 1 + ((_three ? (long)_depthPoints.Count * _runPoints.Count * Math.Min(_kinds.Length, 40) : (long)_kinds.Length * (_runPoints.Count + _depthPoints.Count)) / 500);

    public PricedLayout Price(long[] values, bool wantLayout)
    {
        var pieces = PricedPiece.Of(_kinds, values, _runX, _run, _depth);
        return _three ? PriceThree(pieces, wantLayout) : PriceTwo(pieces, wantLayout);
    }

    private PricedLayout PriceTwo(PricedPiece[] pieces, bool wantLayout)
    {
        var sheet = new Knapsack(_depthPoints.Count);
        var strip = new Knapsack(_runPoints.Count);
        var sorted = pieces.OrderBy(p => p.Depth).ThenBy(p => p.Kind).ToArray();
        var depths = sorted.Select(p => p.Depth).Distinct().ToArray();
        var fillings = new List<(long Depth, List<int> Parts)>();
        var next = 0;
        foreach (var depth in depths.Where(d => d <= _deepest))
        {
            for (; next < sorted.Length && sorted[next].Depth <= depth; next++)
                strip.Offer(next, _runPoints.Down(sorted[next].Run), sorted[next].Value);
            if (wantLayout)
                fillings.Add((depth, strip.Parts(_runPoints.Count - 1, p => _runPoints.Down(sorted[p].Run))));
            else
                fillings.Add((depth, []));
            sheet.Offer(fillings.Count - 1, _depthPoints.Down(depth), strip.Best[^1]);
        }

        OfferUnripped(sheet, sorted, fillings);
        if (!wantLayout)
            return new PricedLayout(sheet.Best[^1], null);
        var strips = sheet.Parts(_depthPoints.Count - 1, p => _depthPoints.Down(fillings[p].Depth));
        return new PricedLayout(sheet.Best[^1], Root([.. strips.Select(s => Strip(fillings[s].Depth, [.. fillings[s].Parts.Select(p => Piece(sorted[p]))]))]));
    }

    private PricedLayout PriceThree(PricedPiece[] pieces, bool wantLayout)
    {
        var sorted = pieces.OrderBy(p => p.Run).ThenBy(p => p.Kind).ToArray();
        var runs = sorted.Select(p => p.Run).Distinct().ToArray();
        var sections = SectionValues(sorted, runs);
        var strip = new Knapsack(_runPoints.Count);
        var stripValues = new long[_depthPoints.Count];
        for (var d = 1; d < stripValues.Length; d++)
        {
            if (_depthPoints.LengthAt(d) > _deepest)
                break;
            FillStrip(strip, sections, runs, d);
            stripValues[d] = strip.Best[^1];
        }

        var sheet = new Knapsack(_depthPoints.Count);
        var fillings = new List<(long Depth, List<int> Parts)>();
        for (var d = 1; d < stripValues.Length; d++)
        {
            // A strip is worth offering only when it beats all lower ones.
            if (stripValues[d] > stripValues[d - 1])
            {
                fillings.Add((_depthPoints.LengthAt(d), [d]));
                sheet.Offer(fillings.Count - 1, _depthPoints.Down(_depthPoints.LengthAt(d)), stripValues[d]);
            }
            else
            {
                stripValues[d] = Math.Max(stripValues[d], stripValues[d - 1]);
            }
        }

        var ripped = fillings.Count;
        OfferUnripped(sheet, sorted, fillings);
        if (!wantLayout)
            return new PricedLayout(sheet.Best[^1], null);
        var strips = sheet.Parts(_depthPoints.Count - 1, p => _depthPoints.Down(fillings[p].Depth));
        return new PricedLayout(sheet.Best[^1], Root([.. strips.Select(s => s < ripped ? Strip(sorted, sections, runs, strip, fillings[s]) : Strip(fillings[s].Depth, [Piece(sorted[fillings[s].Parts[0]])]))]));
    }

    // Best stack of pieces no longer than each section, for every depth.
    private long[][] SectionValues(PricedPiece[] sorted, long[] runs)
    {
        var stack = new Knapsack(_depthPoints.Count);
        var values = new long[runs.Length][];
        var next = 0;
        for (var r = 0; r < runs.Length; r++)
        {
            for (; next < sorted.Length && sorted[next].Run <= runs[r]; next++)
                stack.Offer(next, _depthPoints.Down(sorted[next].Depth), sorted[next].Value);
            values[r] = stack.Best.ToArray();
        }

        return values;
    }

    private void FillStrip(Knapsack strip, long[][] sections, long[] runs, int depth)
    {
        strip.Clear();
        var before = 0L;
        for (var r = 0; r < runs.Length; r++)
        {
            // A longer section is worth offering only when it holds more than all shorter ones.
            if (sections[r][depth] <= before)
                continue;
            before = sections[r][depth];
            strip.Offer(r, _runPoints.Down(runs[r]), before);
        }
    }

    private LayoutTree Strip(PricedPiece[] sorted, long[][] sections, long[] runs, Knapsack strip, (long Depth, List<int> Parts) filling)
    {
        var depth = filling.Parts[0];
        FillStrip(strip, sections, runs, depth);
        var parts = strip.Parts(_runPoints.Count - 1, r => _runPoints.Down(runs[r]));
        return Strip(filling.Depth, [.. parts.Select(r => Section(sorted, runs[r], depth, filling.Depth))]);
    }

    private LayoutTree Section(PricedPiece[] sorted, long run, int depthPoint, long depth)
    {
        var stack = new Knapsack(_depthPoints.Count);
        for (var p = 0; p < sorted.Length && sorted[p].Run <= run; p++)
            stack.Offer(p, _depthPoints.Down(sorted[p].Depth), sorted[p].Value);
        var parts = stack.Parts(depthPoint, p => _depthPoints.Down(sorted[p].Depth));
        return Row(acrossStrips: true, run, depth, [.. parts.Select(p => Piece(sorted[p]))]);
    }

    // Pieces as wide as the sheet need no rip, however long.
    private void OfferUnripped(Knapsack sheet, PricedPiece[] sorted, List<(long Depth, List<int> Parts)> fillings)
    {
        for (var p = 0; p < sorted.Length; p++)
        {
            if (sorted[p].Depth <= _deepest || sorted[p].Run != _run)
                continue;
            fillings.Add((sorted[p].Depth, [p]));
            sheet.Offer(fillings.Count - 1, _depthPoints.Down(sorted[p].Depth), sorted[p].Value);
        }
    }

    private LayoutTree Root(LayoutTree[] strips) => Row(acrossStrips: true, _run, _depth, strips);

    private LayoutTree Strip(long depth, LayoutTree[] parts) => Row(acrossStrips: false, _run, depth, parts);

    private LayoutTree Row(bool acrossStrips, long run, long depth, LayoutTree[] parts)
    {
        var axis = acrossStrips == _runX ? Axis.Y : Axis.X;
        return _runX ? LayoutTree.Row(axis, run, depth, parts) : LayoutTree.Row(axis, depth, run, parts);
    }

    private LayoutTree Piece(PricedPiece piece) => _runX
        ? LayoutTree.Piece(piece.Kind, piece.Turned, piece.Run, piece.Depth)
        : LayoutTree.Piece(piece.Kind, piece.Turned, piece.Depth, piece.Run);
}
