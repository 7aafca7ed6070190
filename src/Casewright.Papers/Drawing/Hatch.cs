namespace Casewright.Papers.Drawing;

/// <summary>Fills an area with parallel lines.</summary>
public static class Hatch
{
    /// <summary>
    /// Lines at an angle (degrees, anticlockwise from the horizontal) and a distance (millimetres), clipped to an area. The lines
    /// stand on a raster fixed to the paper, so neighbouring areas match.
    /// </summary>
    public static IEnumerable<LineItem> Lines(IReadOnlyList<Point> area, double angle, double distance, Pen pen)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distance);
        var (sine, cosine) = Math.SinCos(angle * Math.PI / 180);
        double Across(Point p) => (p.X * sine) + (p.Y * cosine);
        double Along(Point p) => (p.X * cosine) - (p.Y * sine);
        var first = (long)Math.Ceiling(area.Min(Across) / distance);
        var last = (long)Math.Floor(area.Max(Across) / distance);
        for (var index = first; index <= last; index++)
        {
            var level = index * distance;
            var cuts = Crossings(area, Across, Along, level);
            for (var i = 0; i + 1 < cuts.Count; i += 2)
                yield return new(Back(cuts[i], level, sine, cosine), Back(cuts[i + 1], level, sine, cosine), pen);
        }
    }

    private static List<double> Crossings(IReadOnlyList<Point> area, Func<Point, double> across, Func<Point, double> along, double level)
    {
        var cuts = new List<double>();
        for (var i = 0; i < area.Count; i++)
        {
            var (from, to) = (area[i], area[(i + 1) % area.Count]);
            var (a, b) = (across(from) - level, across(to) - level);
            if ((a <= 0) != (b <= 0))
                cuts.Add(along(from) + ((along(to) - along(from)) * a / (a - b)));
        }

        cuts.Sort();
        return cuts;
    }

    private static Point Back(double along, double across, double sine, double cosine) =>
        new((along * cosine) + (across * sine), (across * cosine) - (along * sine));
}
