namespace Casewright.Papers.Drawing;

/// <summary>An upright rectangle on paper, in millimetres, y downwards.</summary>
public readonly record struct Box(double Left, double Top, double Width, double Height)
{
    /// <summary>X of the right edge.</summary>
    public double Right => Left + Width;

    /// <summary>Y of the lower edge.</summary>
    public double Bottom => Top + Height;

    /// <summary>The middle.</summary>
    public Point Centre => new(Left + (Width / 2), Top + (Height / 2));

    /// <summary>The smallest box that holds all points; an empty box at the origin for none.</summary>
    public static Box Around(IEnumerable<Point> points)
    {
        double left = double.PositiveInfinity, top = double.PositiveInfinity, right = double.NegativeInfinity, bottom = double.NegativeInfinity;
        foreach (var point in points)
        {
            left = Math.Min(left, point.X);
            top = Math.Min(top, point.Y);
            right = Math.Max(right, point.X);
            bottom = Math.Max(bottom, point.Y);
        }

        return double.IsInfinity(left) ? default : new(left, top, right - left, bottom - top);
    }

    /// <summary>The smallest box that holds both.</summary>
    public Box Union(Box other) => Around([new(Left, Top), new(Right, Bottom), new(other.Left, other.Top), new(other.Right, other.Bottom)]);

    /// <summary>The box moved by millimetres to the right and down.</summary>
    public Box Moved(double dx, double dy) => this with { Left = Left + dx, Top = Top + dy };

    /// <summary>The box made smaller by the same millimetres on all sides (larger if negative).</summary>
    public Box Inset(double margin) => Inset(margin, margin);

    /// <summary>The box made smaller at left and right, and at top and bottom.</summary>
    public Box Inset(double horizontal, double vertical) =>
        new(Left + horizontal, Top + vertical, Width - (2 * horizontal), Height - (2 * vertical));

    /// <summary>The part of the box above a height, counted from its top.</summary>
    public Box TakeTop(double height) => this with { Height = height };

    /// <summary>What is left of the box under a height, counted from its top.</summary>
    public Box WithoutTop(double height) => new(Left, Top + height, Width, Height - height);

    /// <summary>Column <paramref name="index"/> (from 0) of <paramref name="count"/> equal columns with a gap between.</summary>
    public Box Column(int index, int count, double gap)
    {
        var width = (Width - (gap * (count - 1))) / count;
        return new(Left + (index * (width + gap)), Top, width, Height);
    }

    /// <summary>Whether the other box lies inside this one, with a tolerance in millimetres.</summary>
    public bool Contains(Box other, double tolerance = 0.01) =>
        other.Left >= Left - tolerance && other.Top >= Top - tolerance && other.Right <= Right + tolerance && other.Bottom <= Bottom + tolerance;

    /// <summary>Whether the boxes share an area deeper than <paramref name="tolerance"/> millimetres in both directions.</summary>
    public bool Overlaps(Box other, double tolerance = 0) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > tolerance && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > tolerance;
}
