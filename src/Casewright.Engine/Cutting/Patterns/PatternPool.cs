using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>All layouts met, each set of pieces once, in the order met.</summary>
internal sealed class PatternPool(ReducedProblem problem)
{
    private readonly HashSet<UInt128> _seen = [];
    private readonly List<PatternColumn> _columns = [];
    private readonly int[] _counts = new int[problem.Kinds.Length];

    public IReadOnlyList<PatternColumn> Columns => _columns;

    /// <summary>Adds a layout; false when its pieces are known already.</summary>
    public bool Add(int sheet, LayoutTree layout)
    {
        Array.Clear(_counts);
        layout.Count(_counts);
        if (!_seen.Add(KeyOf(sheet)))
            return false;
        _columns.Add(PatternColumn.Of(sheet, _counts, layout));
        return true;
    }

    /// <summary>Adds a copy of a bin.</summary>
    public void Add(Bin bin)
    {
        Array.Clear(_counts);
        foreach (ref readonly var node in bin.Nodes)
        {
            if (node.Kind >= 0)
                _counts[node.Kind]++;
        }

        if (!_seen.Add(KeyOf(bin.Sheet)))
            return;
        var copy = new Bin();
        copy.CopyFrom(bin);
        _columns.Add(PatternColumn.Of(bin.Sheet, _counts, copy));
    }

    // A digest of 128 bits: two different sets of pieces practically never share one, and then only a column is lost.
    private UInt128 KeyOf(int sheet)
    {
        ulong a = 0x9E3779B97F4A7C15UL + (ulong)sheet, b = 0xD1B54A32D192ED03UL ^ (ulong)sheet;
        for (var k = 0; k < _counts.Length; k++)
        {
            if (_counts[k] == 0)
                continue;
            var word = ((ulong)k << 32) | (uint)_counts[k];
            a = (a ^ word) * 0xBF58476D1CE4E5B9UL;
            a ^= a >> 29;
            b = (b + word) * 0x94D049BB133111EBUL;
            b ^= b >> 31;
        }

        return new UInt128(a, b);
    }
}
