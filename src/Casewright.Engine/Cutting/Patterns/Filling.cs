namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Fills a length with parts, each taken at most a number of times, for the most value; remembers which.</summary>
internal sealed class Filling(SizePoints points)
{
    private readonly long[] _best = new long[points.Count];
    private readonly List<Batch> _batches = [];

    public ReadOnlySpan<long> Best => _best;

    /// <summary>Offers a part of a size and value.</summary>
    public void Offer(int part, long size, long value, int copies)
    {
        if (value <= 0)
            return;
        copies = (int)Math.Min(copies, points.LengthAt(points.Count - 1) / size);
        for (var batch = 1; copies > 0; batch *= 2)
        {
            var taken = Math.Min(batch, copies);
            OfferOnce(new Batch(part, taken, size, new bool[_best.Length]), value * taken);
            copies -= taken;
        }
    }

    /// <summary>The parts of the best filling up to a point.</summary>
    public List<int> Parts(int point)
    {
        var parts = new List<int>();
        for (var b = _batches.Count - 1; b >= 0; b--)
        {
            var batch = _batches[b];
            if (!batch.Taken[point])
                continue;
            for (var n = 0; n < batch.Copies; n++)
                parts.Add(batch.Part);
            point = After(batch, point);
        }

        return parts;
    }

    private void OfferOnce(Batch batch, long value)
    {
        for (var i = _best.Length - 1; i >= 0; i--)
        {
            var rest = After(batch, i);
            if (rest < 0)
                break;
            if (_best[rest] + value <= _best[i])
                continue;
            _best[i] = _best[rest] + value;
            batch.Taken[i] = true;
        }

        _batches.Add(batch);
    }

    private int After(Batch batch, int point) =>
        points.StepsOf(batch.Size) is > 0 and var steps ? point - (steps * batch.Copies) : points.Down(batch.Size * batch.Copies)[point];

    private sealed record Batch(int Part, int Copies, long Size, bool[] Taken);
}
