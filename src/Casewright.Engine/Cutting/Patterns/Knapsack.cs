namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Fills a length with parts taken any number of times for the most value, for every point up to the whole; remembers which.</summary>
internal sealed class Knapsack(SizePoints points)
{
    private readonly long[] _best = new long[points.Count];
    private readonly int[] _last = Filled(points.Count);

    public ReadOnlySpan<long> Best => _best;

    /// <summary>Offers a part.</summary>
    public void Offer(int part, long size, long value)
    {
        if (value <= 0)
            return;
        var down = points.Down(size);
        for (var i = 0; i < _best.Length; i++)
        {
            var rest = down[i];
            if (rest < 0 || _best[rest] + value <= _best[i])
                continue;
            _best[i] = _best[rest] + value;
            _last[i] = part;
        }
    }

    /// <summary>The parts of the best filling up to a point.</summary>
    public List<int> Parts(int point, Func<int, long> size)
    {
        var parts = new List<int>();
        while (point >= 0 && _last[point] >= 0)
        {
            parts.Add(_last[point]);
            point = points.Down(size(_last[point]))[point];
        }

        return parts;
    }

    private static int[] Filled(int count)
    {
        var last = new int[count];
        Array.Fill(last, -1);
        return last;
    }
}
