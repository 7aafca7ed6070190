using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing;

/// <summary>The signs of the papers.</summary>
public static class Symbols
{
    /// <summary>
    /// The keyed mark, our sign for a splice: three short bars, unequally spaced. Centred at the point, <paramref name="size"/> high,
    /// 2.4 times as wide.
    /// </summary>
    public static void KeyedMark(Sketch sketch, double x, double y, double size, Tone tone = Tone.Chalk)
    {
        var bar = size * 0.4;
        double left = x - (size * 1.2), top = y - (size / 2);
        foreach (var offset in (double[])[0, size * 0.7, size * 2.0])
            sketch.Rectangle(new(left + offset, top, bar, size), null, tone);
    }

    /// <summary>An outlined arrow that points to the left, with its tip at the point; twice as long as high.</summary>
    public static void ArrowLeft(Sketch sketch, double x, double y, double height) => sketch.Area(Arrow(x, y, height, -1), Pen.Object);

    /// <summary>An outlined arrow that points to the right, with its tip at the point.</summary>
    public static void ArrowRight(Sketch sketch, double x, double y, double height) => sketch.Area(Arrow(x, y, height, 1), Pen.Object);

    /// <summary>The foot arrow: points to the foot, which lies to the left of the point, with the word under it.</summary>
    public static void Foot(Sketch sketch, double x, double y, double height, string word = "FOOT")
    {
        ArrowLeft(sketch, x, y, height);
        var lettering = new Lettering(Lettering.Smallest, Weight: FontWeight.Bold);
        sketch.Text(word, x, y + (height / 2) + 1 + lettering.CapHeight + 0.6, lettering);
    }

    /// <summary>An outlined arrow that points down, with its tip at the point.</summary>
    public static void ArrowDown(Sketch sketch, double x, double y, double width) =>
        sketch.Area(Arrow(0, 0, width, 1).Select(p => new Point(x + p.Y, y + p.X)), Pen.Object);

    /// <summary>A box to be ticked; its upper left corner at the point.</summary>
    public static void TickBox(Sketch sketch, double x, double y, double side = 4) => sketch.Rectangle(new(x, y, side, side), Pen.Object, Tone.Sheet);

    /// <summary>The cabinetmaker's triangle across a joint: a base line towards the reference edge and a point away from it.</summary>
    public static void Triangle(Sketch sketch, double x, double baseY, double tipY, double halfWidth) =>
        sketch.Area([new(x - halfWidth, baseY), new(x + halfWidth, baseY), new(x, tipY)], Pen.Hidden);

    /// <summary>The sign of a stop: a filled square with an upright bar in it, centred at the point.</summary>
    public static void Stop(Sketch sketch, double x, double y, double size)
    {
        sketch.Rectangle(new(x - (size / 2), y - (size / 2), size, size), null, Tone.Stop);
        sketch.Rectangle(new(x - (size * 0.3), y - (size * 0.09), size * 0.6, size * 0.18), null, Tone.Sheet);
    }

    /// <summary>The sign of a caution: a filled triangle with a stroke and a dot, centred at the point.</summary>
    public static void Caution(Sketch sketch, double x, double y, double size)
    {
        sketch.Area([new(x - (size * 0.55), y + (size * 0.45)), new(x + (size * 0.55), y + (size * 0.45)), new(x, y - (size * 0.5))], null, Tone.Caution);
        sketch.Rectangle(new(x - (size * 0.06), y - (size * 0.18), size * 0.12, size * 0.34), null, Tone.Sheet);
        sketch.Circle(x, y + (size * 0.3), size * 0.07, null, Tone.Sheet);
    }

    /// <summary>The sign of a pass: a filled bar, centred at the point.</summary>
    public static void Pass(Sketch sketch, double x, double y, double size) =>
        sketch.Rectangle(new(x - (size / 2), y - (size * 0.18), size, size * 0.36), null, Tone.Pass);

    /// <summary>A double arrow along the grain, centred at the point.</summary>
    public static void Grain(Sketch sketch, double x, double y, double length, bool upright = false)
    {
        double half = length / 2, tip = 1.4;
        Point At(double along, double across) => upright ? new(x + across, y + along) : new(x + along, y + across);
        void Stroke(Point a, Point b) => sketch.Line(a.X, a.Y, b.X, b.Y, Pen.Object);
        Stroke(At(-half, 0), At(half, 0));
        foreach (var end in (double[])[-1, 1])
        {
            Stroke(At(end * half, 0), At(end * (half - tip), tip * 0.6));
            Stroke(At(end * half, 0), At(end * (half - tip), -tip * 0.6));
        }
    }

    private static Point[] Arrow(double x, double y, double height, int direction)
    {
        double half = height / 2, neck = height * 0.2, head = height * 0.75, length = height * 1.7;
        double At(double along) => x - (direction * along);
        return
        [
            new(At(0), y), new(At(head), y - half), new(At(head), y - neck), new(At(length), y - neck),
            new(At(length), y + neck), new(At(head), y + neck), new(At(head), y + half),
        ];
    }
}
