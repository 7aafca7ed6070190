namespace Casewright.Papers.Drawing;

/// <summary>A point on paper: millimetres from the left (<paramref name="X"/>) and from the top (<paramref name="Y"/>, downwards).</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The point moved by millimetres to the right and down.</summary>
    public Point Moved(double dx, double dy) => new(X + dx, Y + dy);
}
