using System.Numerics;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>
/// The value of the best filling of every length up to the whole, without remembering which: the inner loop of pricing.
/// A larger point is always worth at least as much as a smaller one.
/// </summary>
internal sealed class FillValues(SizePoints points)
{
    private readonly long[] _best = new long[points.Count];

    public ReadOnlySpan<long> Best => _best;

    public void Clear() => Array.Clear(_best);

    /// <summary>Offers a part that may be taken at most a number of times.</summary>
    public void Offer(long size, long value, int copies)
    {
        if (value <= 0)
            return;
        var most = points.LengthAt(points.Count - 1) / size;
        if (copies >= most)
        {
            OfferAnyNumber(size, value);
            return;
        }

        // Batches of 1, 2, 4 ... so that every number up to the limit is some sum of them.
        for (var batch = 1; copies > 0; batch *= 2)
        {
            var taken = Math.Min(batch, copies);
            OfferOnce(size * taken, value * taken, taken);
            copies -= taken;
        }
    }

    private void OfferAnyNumber(long size, long value)
    {
        var best = _best.AsSpan();
        var step = points.StepsOf(size);
        if (step == 0)
        {
            var down = points.Down(size);
            for (var i = 0; i < best.Length; i++)
            {
                if (down[i] >= 0)
                    best[i] = Math.Max(best[i], best[down[i]] + value);
            }

            return;
        }

        var at = step;
        if (step >= Vector<long>.Count)
        {
            var more = new Vector<long>(value);
            for (; at <= best.Length - Vector<long>.Count; at += Vector<long>.Count)
                Vector.Max(new Vector<long>(best[(at - step)..]) + more, new Vector<long>(best[at..])).CopyTo(best[at..]);
        }

        for (; at < best.Length; at++)
            best[at] = Math.Max(best[at], best[at - step] + value);
    }

    // From the far end, so that nothing is taken twice. Several copies span as many steps as each of them.
    private void OfferOnce(long size, long value, int taken)
    {
        var best = _best.AsSpan();
        var step = points.StepsOf(size / taken) * taken;
        if (step == 0)
        {
            var down = points.Down(size);
            for (var i = best.Length - 1; i >= 0 && down[i] >= 0; i--)
                best[i] = Math.Max(best[i], best[down[i]] + value);
            return;
        }

        var end = best.Length;
        var more = new Vector<long>(value);
        for (; end - Vector<long>.Count >= step; end -= Vector<long>.Count)
        {
            var at = end - Vector<long>.Count;
            Vector.Max(new Vector<long>(best[(at - step)..]) + more, new Vector<long>(best[at..])).CopyTo(best[at..]);
        }

        for (var at = end - 1; at >= step; at--)
            best[at] = Math.Max(best[at], best[at - step] + value);
    }
}
