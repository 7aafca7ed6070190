using System.Globalization;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Bench.Jobs;

/// <summary>Cost for each bay, and time to plan, against the number of bays: the number on a logarithmic scale.</summary>
internal static class BayChart
{
    private const double Width = 200;
    private const double Height = 78;
    private const double Left = 30;
    private const double Right = 190;

    public static string Draw(IReadOnlyList<JobRow> rows)
    {
        var sketch = new Sketch();
        var sorted = rows.OrderBy(r => r.Bays).ToList();
        Panel(sketch, 16, "Cost for each bay: answer (line), lower bound (dashes)", sorted,
            (r => (double)r.Cost / r.Bays, Pen.Object), (r => (double)r.Bound / r.Bays, Pen.Hidden));
        Panel(sketch, 16 + Height + 28, "Seconds to plan: final (line), first answer (dashes)", sorted,
            (r => r.Seconds, Pen.Object), (r => r.First, Pen.Hidden));
        var scene = sketch.ToScene(Width, (2 * Height) + 64, "Cost and time against the number of bays", "Two charts over the number of bays from the fewest to the most.");
        return SvgRenderer.ToText(scene, SvgOptions.File);
    }

    private static void Panel(Sketch sketch, double top, string title, List<JobRow> rows, params (Func<JobRow, double> Value, Pen Pen)[] curves)
    {
        var most = Nice(rows.Max(r => curves.Max(c => c.Value(r))));
        var (low, high) = (Math.Log(rows[0].Bays), Math.Log(rows[^1].Bays));
        double X(JobRow r) => Left + ((Math.Log(r.Bays) - low) / Math.Max(1e-9, high - low) * (Right - Left));
        double Y(double value) => top + Height - (value / most * Height);
        sketch.Text(title, Left, top - 5, Lettering.BodyStrong);
        for (var step = 0; step <= 4; step++)
        {
            var value = most * step / 4;
            sketch.Line(Left, Y(value), Right, Y(value), Pen.Hair);
            sketch.TextCentred(value.ToString("0.##", CultureInfo.InvariantCulture), Left - 2, Y(value), Lettering.Small, Anchor.End);
        }

        foreach (var row in rows)
        {
            sketch.Line(X(row), top + Height, X(row), top + Height + 1.5, Pen.Thin);
            sketch.Text(row.Bays.ToString(CultureInfo.InvariantCulture), X(row), top + Height + 6, Lettering.Small, Anchor.Middle);
        }

        foreach (var (value, pen) in curves)
        {
            sketch.Chain(rows.Select(r => new Point(X(r), Y(value(r)))), pen);
            foreach (var row in rows)
                sketch.Circle(X(row), Y(value(row)), 0.8, null, Tone.Ink);
        }
    }

    private static readonly int[] s_nice = [1, 2, 5, 10];

    // The next of 1, 2, 5 times a power of ten.
    private static double Nice(double value)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(1e-6, value))));
        return s_nice.Select(n => n * power).First(n => n >= value - 1e-9);
    }
}
