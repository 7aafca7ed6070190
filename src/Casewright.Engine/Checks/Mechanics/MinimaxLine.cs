namespace Casewright.Engine.Checks.Mechanics;

/// <summary>The straight line that strays least from measured offsets (Chebyshev line): y = Slope x + Intercept, never farther off than Deviation.</summary>
/// <param name="Slope">Rise per unit of x.</param>
/// <param name="Intercept">Height at x = 0.</param>
/// <param name="Deviation">Largest distance of a reading from the line.</param>
public readonly record struct MinimaxLine(double Slope, double Intercept, double Deviation)
{
    /// <summary>
    /// The best line through readings, at least one. It runs parallel to two readings on one side, midway to the farthest on the other;
    /// every such pair is tried, so the answer is exact.
    /// </summary>
    public static MinimaxLine Through(IReadOnlyList<(double X, double Y)> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentOutOfRangeException.ThrowIfZero(readings.Count, nameof(readings));
        var best = WithSlope(readings, 0);
        for (var i = 0; i < readings.Count; i++)
        {
            for (var j = i + 1; j < readings.Count; j++)
            {
                if (readings[i].X == readings[j].X)
                    continue;
                var line = WithSlope(readings, (readings[j].Y - readings[i].Y) / (readings[j].X - readings[i].X));
                best = line.Deviation < best.Deviation ? line : best;
            }
        }

        return best;
    }

    private static MinimaxLine WithSlope(IReadOnlyList<(double X, double Y)> readings, double slope)
    {
        var low = readings.Min(r => r.Y - (slope * r.X));
        var high = readings.Max(r => r.Y - (slope * r.X));
        return new(slope, (low + high) / 2, (high - low) / 2);
    }
}
