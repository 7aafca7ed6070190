using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing;

/// <summary>
/// Dimension lines with the figure set into the line. Where the figure is wider than its span it stands beside the line instead, so it
/// is never crossed.
/// </summary>
public static class DimensionLine
{
    private const double Tick = 1.6;
    private const double Gap = 1.2;

    /// <summary>Dimension between two x at height <paramref name="y"/>; extension lines reach up or down to <paramref name="from"/>.</summary>
    public static void Horizontal(Sketch sketch, double x0, double x1, double y, double from, string figure, Lettering lettering)
    {
        Extend(sketch, x0, x1, y, from);
        var width = TextLayout.Width(figure, lettering) + (2 * Gap);
        var middle = (x0 + x1) / 2;
        if (width + (2 * Tick) <= x1 - x0)
        {
            sketch.Line(x0, y, middle - (width / 2), y, Pen.Dimension);
            sketch.Line(middle + (width / 2), y, x1, y, Pen.Dimension);
            sketch.TextCentred(figure, middle, y, lettering, Anchor.Middle);
        }
        else
        {
            sketch.Line(x0, y, x1, y, Pen.Dimension);
            sketch.Text(figure, middle, y + Tick + 0.8 + lettering.CapHeight, lettering, Anchor.Middle);
        }
    }

    /// <summary>Dimension between two y at <paramref name="x"/>, reading upwards; extension lines reach to <paramref name="from"/>.</summary>
    public static void Vertical(Sketch sketch, double y0, double y1, double x, double from, string figure, Lettering lettering)
    {
        var side = Math.Sign(from - x);
        foreach (var y in (double[])[y0, y1])
            sketch.Line(x - (side * Tick), y, from - side, y, Pen.Dimension);
        var width = TextLayout.Width(figure, lettering) + (2 * Gap);
        var middle = (y0 + y1) / 2;
        if (width + (2 * Tick) <= y1 - y0)
        {
            sketch.Line(x, y0, x, middle - (width / 2), Pen.Dimension);
            sketch.Line(x, middle + (width / 2), x, y1, Pen.Dimension);
            sketch.Text(figure, x + (lettering.CapHeight / 2), middle, lettering, Anchor.Middle, -90);
        }
        else
        {
            sketch.Line(x, y0, x, y1, Pen.Dimension);
            var away = x - (side * (Tick + Gap));
            sketch.TextCentred(figure, away, middle, lettering, side > 0 ? Anchor.End : Anchor.Start);
        }
    }

    private static void Extend(Sketch sketch, double x0, double x1, double y, double from)
    {
        var side = Math.Sign(from - y);
        foreach (var x in (double[])[x0, x1])
            sketch.Line(x, y - (side * Tick), x, from - side, Pen.Dimension);
    }
}
