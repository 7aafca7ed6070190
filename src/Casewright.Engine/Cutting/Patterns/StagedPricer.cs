using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>
/// Best layouts of one sheet in two or three stages. Strips run one way; in two stages pieces lie side by side in a strip, in
/// three stages sections lie side by side and pieces are stacked in a section. A piece smaller than its strip or section is
/// trimmed. No section, nor a strip of two stages, holds a piece oftener than it can be wanted, and there are no more sections of
/// one length than pieces of that length; beyond that, pieces repeat at will, which keeps the value an upper bound.
/// </summary>
internal sealed class StagedPricer : IPricer
{
    private const int MostLayouts = 6;
    private readonly PieceKind[] _kinds;
    private readonly int[] _copies;
    private readonly bool _runX;
    private readonly long _run;
    private readonly long _depth;
    private readonly long _deepest;
    private readonly bool _three;
    private readonly SizePoints _runPoints;
    private readonly SizePoints _depthPoints;

    /// <summary>Prepares a sheet.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="runX">Whether strips run along x (rips first).</param>
    /// <param name="stages">2 or 3.</param>
    /// <param name="active">Values of the kinds; those of 0 get no points.</param>
    /// <param name="pointLimit">Most points along an axis before sizes are rounded.</param>
    /// <param name="roundUp">Whether rounded sizes grow, so that layouts are real.</param>
    public StagedPricer(ReducedProblem problem, SheetKind sheet, bool runX, int stages, long[] active, int pointLimit, bool roundUp)
    {
        _kinds = problem.Kinds;
        _copies = problem.MostPieces();
        _runX = runX;
        (_run, _depth) = runX ? (sheet.SizeX, sheet.SizeY) : (sheet.SizeY, sheet.SizeX);
        _three = stages >= 3;
        // A section longer than the saw rips can only be a single piece as wide as the sheet.
        _deepest = runX ? long.MaxValue : problem.LongestRip;
        var fitting = PricedPiece.Of(_kinds, active, runX, _run, _depth);
        _runPoints = SizePoints.Of(fitting.Select(p => p.Run), _run, pointLimit, roundUp, evenly: true);
        _depthPoints = SizePoints.Of(fitting.Select(p => p.Depth), _depth, pointLimit, roundUp);
    }

    /// <summary>Whether no size was rounded.</summary>
    public bool IsExact => _runPoints.IsExact && _depthPoints.IsExact;

    /// <summary>Rough work of one pricing, in work units, from what the last one did.</summary>
    public long Work { get; private set; } = 1;

    public PricedLayout Price(long[] values, bool wantLayout, CancellationToken cancellation)
    {
        var pieces = PricedPiece.Of(_kinds, values, _runX, _run, _depth);
        return _three ? PriceThree(pieces, wantLayout, cancellation) : PriceTwo(pieces, wantLayout);
    }

    private PricedLayout PriceTwo(PricedPiece[] pieces, bool wantLayout)
    {
        var sorted = pieces.OrderBy(p => p.Depth).ThenBy(p => p.Kind).ToArray();
        var strip = new Filling(_runPoints);
        var strips = new List<Strip>();
        var next = 0;
        foreach (var depth in sorted.Select(p => p.Depth).Distinct().Where(d => d <= _deepest))
        {
            for (; next < sorted.Length && sorted[next].Depth <= depth; next++)
                strip.Offer(next, sorted[next].Run, sorted[next].Value, _copies[sorted[next].Kind]);
            if (strip.Best[^1] == 0)
                continue;
            var parts = wantLayout ? strip.Parts(_runPoints.Count - 1) : [];
            strips.Add(new Strip(depth, strip.Best[^1], () => Row(acrossStrips: false, _run, depth, [.. parts.Select(p => Piece(sorted[p]))])));
        }

        Work = 1 + ((long)sorted.Length * _runPoints.Count / 1000) + ((long)strips.Count * _depthPoints.Count / 1000);
        return Sheet(strips, sorted, wantLayout);
    }

    private PricedLayout PriceThree(PricedPiece[] pieces, bool wantLayout, CancellationToken cancellation)
    {
        var sorted = pieces.OrderBy(p => p.Run).ThenBy(p => p.Kind).ToArray();
        var sections = Sections(sorted);
        var filled = new FillValues(_runPoints);
        var strips = new List<Strip>();
        var offered = 0L;
        for (var d = 1; d < _depthPoints.Count && _depthPoints.LengthAt(d) <= _deepest; d++)
        {
            if (!sections.Exists(s => s.Values[d] > s.Values[d - 1]))
                continue;
            cancellation.ThrowIfCancellationRequested();
            filled.Clear();
            foreach (var (section, value) in Worthy(sections, d))
            {
                filled.Offer(section.Run, value, section.Copies);
                offered++;
            }

            var point = d;
            // A strip is worth offering only when it beats all lower ones.
            if (filled.Best[^1] > (strips.Count == 0 ? 0 : strips[^1].Value))
                strips.Add(new Strip(_depthPoints.LengthAt(d), filled.Best[^1], () => StripAt(point, sorted, sections)));
        }

        Work = 1 + (((offered * _runPoints.Count) + ((long)sorted.Length * _depthPoints.Count)) / 2500) + ((long)strips.Count * _depthPoints.Count / 1000);
        return Sheet(strips, sorted, wantLayout);
    }

    // Best stack of pieces no longer than each section, for every depth.
    private List<Section> Sections(PricedPiece[] sorted)
    {
        var stack = new FillValues(_depthPoints);
        var sections = new List<Section>();
        var next = 0;
        foreach (var run in sorted.Select(p => p.Run).Distinct())
        {
            var copies = 0;
            for (; next < sorted.Length && sorted[next].Run <= run; next++)
            {
                stack.Offer(sorted[next].Depth, sorted[next].Value, _copies[sorted[next].Kind]);
                copies += _copies[sorted[next].Kind];
            }

            sections.Add(new Section(run, copies, stack.Best.ToArray()));
        }

        return sections;
    }

    // A longer section is worth offering only when it holds more than all shorter ones.
    private static IEnumerable<(Section Section, long Value)> Worthy(List<Section> sections, int depth)
    {
        var before = 0L;
        foreach (var section in sections)
        {
            if (section.Values[depth] <= before)
                continue;
            before = section.Values[depth];
            yield return (section, before);
        }
    }

    private LayoutTree StripAt(int point, PricedPiece[] sorted, List<Section> sections)
    {
        var strip = new Filling(_runPoints);
        foreach (var (section, value) in Worthy(sections, point))
            strip.Offer(sections.IndexOf(section), section.Run, value, section.Copies);
        var depth = _depthPoints.LengthAt(point);
        return Row(acrossStrips: false, _run, depth, [.. strip.Parts(_runPoints.Count - 1).Select(s => SectionAt(sections[s].Run, point, sorted))]);
    }

    private LayoutTree SectionAt(long run, int point, PricedPiece[] sorted)
    {
        var stack = new Filling(_depthPoints);
        for (var p = 0; p < sorted.Length && sorted[p].Run <= run; p++)
            stack.Offer(p, sorted[p].Depth, sorted[p].Value, _copies[sorted[p].Kind]);
        return Row(acrossStrips: true, run, _depthPoints.LengthAt(point), [.. stack.Parts(point).Select(p => Piece(sorted[p]))]);
    }

    private PricedLayout Sheet(List<Strip> strips, PricedPiece[] sorted, bool wantLayout)
    {
        AddUnripped(strips, sorted);
        var sheet = new Knapsack(_depthPoints);
        for (var s = 0; s < strips.Count; s++)
            sheet.Offer(s, strips[s].Depth, strips[s].Value);
        if (!wantLayout)
            return new PricedLayout(sheet.Best[^1], []);
        var built = new Dictionary<int, LayoutTree>();
        return new PricedLayout(sheet.Best[^1], [.. First(strips, sheet).Select(first => Root([.. Chosen(first, strips, sheet).Select(s => Built(s, strips, built))]))]);
    }

    // The strips that begin the best layouts.
    private IEnumerable<int> First(List<Strip> strips, Knapsack sheet) => strips
        .Index()
        .Select(s => (s.Index, After: _depthPoints.Down(s.Item.Depth)[^1], s.Item.Value))
        .Where(s => s.After >= 0)
        .OrderByDescending(s => s.Value + sheet.Best[s.After]).ThenBy(s => s.Index)
        .Take(MostLayouts).Select(s => s.Index);

    private List<int> Chosen(int first, List<Strip> strips, Knapsack sheet) =>
        [first, .. sheet.Parts(_depthPoints.Down(strips[first].Depth)[^1], s => strips[s].Depth)];

    private static LayoutTree Built(int strip, List<Strip> strips, Dictionary<int, LayoutTree> built)
    {
        if (!built.TryGetValue(strip, out var tree))
            built.Add(strip, tree = strips[strip].Build());
        return tree;
    }

    // Pieces as wide as the sheet need no rip, however long.
    private void AddUnripped(List<Strip> strips, PricedPiece[] sorted)
    {
        foreach (var piece in sorted.Where(p => p.Depth > _deepest && p.Run == _run))
            strips.Add(new Strip(piece.Depth, piece.Value, () => Row(acrossStrips: false, _run, piece.Depth, [Piece(piece)])));
    }

    private LayoutTree Root(LayoutTree[] strips) => Row(acrossStrips: true, _run, _depth, strips);

    private LayoutTree Row(bool acrossStrips, long run, long depth, LayoutTree[] parts)
    {
        var axis = acrossStrips == _runX ? Axis.Y : Axis.X;
        return _runX ? LayoutTree.Row(axis, run, depth, parts) : LayoutTree.Row(axis, depth, run, parts);
    }

    private LayoutTree Piece(PricedPiece piece) => _runX
        ? LayoutTree.Piece(piece.Kind, piece.Turned, piece.Run, piece.Depth)
        : LayoutTree.Piece(piece.Kind, piece.Turned, piece.Depth, piece.Run);

    // Sections of one length, the number that pieces of that length allow, and the value of the best stack at every depth.
    private sealed record Section(long Run, int Copies, long[] Values);

    private sealed record Strip(long Depth, long Value, Func<LayoutTree> Build);
}
