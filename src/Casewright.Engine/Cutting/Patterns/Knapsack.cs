namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Fills a length with repeatable parts for the most value, for every point up to the whole.</summary>
internal sealed class Knapsack
{
    private readonly long[] _best;
    private readonly int[] _last;

    public Knapsack(int points)
    {
        _best = new long[points];
        _last = new int[points];
        Array.Fill(_last, -1);
    }

    public ReadOnlySpan<long> Best => _best;

    public void Clear()
    {
        Array.Clear(_best);
        Array.Fill(_last, -1);
    }

    /// <summary>Offers a part; <paramref name="down"/> gives the point left after it.</summary>
    public void Offer(int part, int[] down, long value)
    {
        if (value <= 0)
            return;
        for (var i = 0; i < _best.Length; i++)
        {
            var rest = down[i];
            if (rest < 0)
                continue;
            var total = _best[rest] + value;
            if (total > _best[i])
            {
                _best[i] = total;
                _last[i] = part;
            }
        }

        // A larger point holds whatever a smaller one does.
        for (var i = 1; i < _best.Length; i++)
        {
            if (_best[i - 1] > _best[i])
            {
                _best[i] = _best[i - 1];
                _last[i] = _last[i - 1];
            }
        }
    }

    /// <summary>The parts of the best filling up to a point.</summary>
    public List<int> Parts(int point, Func<int, int[]> down)
    {
        var parts = new List<int>();
        while (point >= 0 && _last[point] >= 0)
        {
            parts.Add(_last[point]);
            point = down(_last[point])[point];
        }

        return parts;
    }
}
