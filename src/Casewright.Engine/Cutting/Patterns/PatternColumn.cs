using Casewright.Engine.Cutting.Layouts;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>A layout of one kind of sheet as a column of the master program.</summary>
/// <param name="Sheet">Kind of sheet.</param>
/// <param name="Kinds">Kinds of piece in it, ascending.</param>
/// <param name="Counts">How many of each.</param>
internal sealed record PatternColumn(int Sheet, int[] Kinds, int[] Counts)
{
    private LayoutTree? _layout;
    private Bin? _bin;

    /// <summary>The layout; made from the bin when first asked for.</summary>
    public LayoutTree Layout
    {
        get
        {
            _layout ??= LayoutTree.Of(_bin!);
            _bin = null;
            return _layout;
        }
    }

    public static PatternColumn Of(int sheet, int[] counts, LayoutTree layout) => Make(sheet, counts, layout, null);

    public static PatternColumn Of(int sheet, int[] counts, Bin bin) => Make(sheet, counts, null, bin);

    private static PatternColumn Make(int sheet, int[] counts, LayoutTree? layout, Bin? bin)
    {
        int[] kinds = [.. Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0)];
        return new PatternColumn(sheet, kinds, [.. kinds.Select(k => counts[k])]) { _layout = layout, _bin = bin };
    }
}
