namespace Casewright.Engine.Cutting.Patterns;

/// <summary>
/// Where cuts along one axis can lie: all sums of sizes up to the capacity. When there are too many, a grid takes their
/// place, on which sizes are rounded down (every real layout fits, so values are upper bounds) or up (every layout found
/// is real).
/// </summary>
internal sealed class SizePoints
{
    private const long DenseLimit = 400_000;
    private readonly long[] _points;
    private readonly long _grid;
    private readonly bool _roundUp;
    private readonly Dictionary<long, int[]> _down = [];

    private SizePoints(long[] points, long grid, bool roundUp, bool isExact)
    {
        _points = points;
        _grid = grid;
        _roundUp = roundUp;
        IsExact = isExact;
    }

    /// <summary>Number of points; the last stands for the whole capacity.</summary>
    public int Count => _grid > 0 ? (int)(_points[0] / _grid) + 1 : _points.Length;

    /// <summary>Whether every sum of sizes has its own point.</summary>
    public bool IsExact { get; }

    /// <summary>Makes the points for sizes up to a capacity.</summary>
    /// <param name="sizes">The sizes.</param>
    /// <param name="capacity">The largest sum that counts.</param>
    /// <param name="limit">Most points before sizes are rounded.</param>
    /// <param name="roundUp">Whether rounded sizes grow.</param>
    /// <param name="evenly">Whether evenly spaced points are preferred where they are exact: more of them, but quicker to go over.</param>
    public static SizePoints Of(IEnumerable<long> sizes, long capacity, int limit, bool roundUp, bool evenly = false)
    {
        var distinct = sizes.Where(s => s <= capacity).Distinct().Order().ToArray();
        if (distinct.Length == 0)
            return new SizePoints([0], 0, roundUp, isExact: true);
        var step = distinct.Aggregate(0L, GreatestCommonDivisor);
        if (evenly && capacity / step < limit)
            return new SizePoints([capacity], step, roundUp, isExact: true);
        if (Sums(distinct, capacity, step, limit) is { } sums)
            return new SizePoints(sums, 0, roundUp, isExact: true);
        // No coarser than the smallest size, which must not round down to nothing.
        var grid = Math.Min(Math.Max(1, capacity / limit), distinct[0]);
        return new SizePoints([capacity], grid, roundUp, isExact: false);
    }

    /// <summary>Points that a size spans where they are evenly spaced; 0 where they are not.</summary>
    public int StepsOf(long size) => _grid > 0 ? PointOf(size) : 0;

    /// <summary>The point of a size: the size itself, or rounded on the grid.</summary>
    public int PointOf(long size)
    {
        if (_grid > 0)
            return (int)Math.Min(Count - 1, _roundUp ? (size + _grid - 1) / _grid : size / _grid);
        var index = Array.BinarySearch(_points, size);
        return index >= 0 ? index : ~index - 1;
    }

    /// <summary>For every point, the point left when a size is taken off; -1 when it does not fit.</summary>
    public int[] Down(long size)
    {
        if (_down.TryGetValue(size, out var table))
            return table;
        table = new int[Count];
        if (_grid > 0)
        {
            var step = PointOf(size);
            for (var i = 0; i < table.Length; i++)
                table[i] = i >= step ? i - step : -1;
        }
        else
        {
            var below = -1;
            for (var i = 0; i < table.Length; i++)
            {
                while (below + 1 < table.Length && _points[below + 1] <= _points[i] - size)
                    below++;
                table[i] = below;
            }
        }

        _down.Add(size, table);
        return table;
    }

    /// <summary>The length a point stands for: never more than the real one when sizes are rounded up.</summary>
    public long LengthAt(int point) => _grid > 0 ? (point == Count - 1 ? _points[0] : point * _grid) : _points[point];

    // All sums including 0; null when there are more than the limit. The largest stands for the capacity: nothing ends beyond it.
    private static long[]? Sums(long[] sizes, long capacity, long step, int limit) =>
        capacity / step <= DenseLimit ? DenseSums(sizes, capacity, step, limit) : SparseSums(sizes, capacity, limit);

    private static long[]? DenseSums(long[] sizes, long capacity, long step, int limit)
    {
        var reached = new bool[(capacity / step) + 1];
        reached[0] = true;
        foreach (var size in sizes)
        {
            var jump = size / step;
            for (var i = jump; i < reached.Length; i++)
                reached[i] |= reached[i - jump];
        }

        var sums = reached.Index().Where(r => r.Item).Select(r => r.Index * step).ToArray();
        return sums.Length <= limit ? sums : null;
    }

    private static long[]? SparseSums(long[] sizes, long capacity, int limit)
    {
        var sums = new SortedSet<long> { 0 };
        var frontier = new SortedSet<long> { 0 };
        while (frontier.Count > 0)
        {
            var sum = frontier.Min;
            frontier.Remove(sum);
            foreach (var size in sizes)
            {
                if (sum + size > capacity)
                    break;
                if (sums.Add(sum + size))
                    frontier.Add(sum + size);
            }

            if (sums.Count > limit)
                return null;
        }

        return [.. sums];
    }

    private static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}
