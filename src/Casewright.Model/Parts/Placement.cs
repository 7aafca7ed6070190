using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A point of the room: x along the wall from its left end, y up from the highest floor point, z out from the wall.</summary>
public readonly record struct Point3(Length X, Length Y, Length Z)
{
    /// <summary>The least of either point in each direction.</summary>
    public Point3 Lowest(Point3 other) => new(Length.Min(X, other.X), Length.Min(Y, other.Y), Length.Min(Z, other.Z));

    /// <summary>The most of either point in each direction.</summary>
    public Point3 Highest(Point3 other) => new(Length.Max(X, other.X), Length.Max(Y, other.Y), Length.Max(Z, other.Z));
}

/// <summary>A direction of the room.</summary>
public enum Axis
{
    /// <summary>To the right along the wall.</summary>
    Right,

    /// <summary>To the left along the wall.</summary>
    Left,

    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,

    /// <summary>Out from the wall.</summary>
    Out,

    /// <summary>In towards the wall.</summary>
    In,
}

/// <summary>Where a part is in its wall's room coordinates.</summary>
/// <param name="Wall">Id of the wall.</param>
/// <param name="Origin">Where the part's reference end, edge and face meet.</param>
/// <param name="AlongLength">Direction of the part's x.</param>
/// <param name="AlongWidth">Direction of the part's y.</param>
/// <param name="IntoThickness">Direction of the part's z.</param>
public sealed record Placement(string Wall, Point3 Origin, Axis AlongLength, Axis AlongWidth, Axis IntoThickness)
{
    /// <summary>
    /// Slope on which the part lies, counted to the right: it is turned in the plane of the wall about its origin, so that what runs along
    /// the wall follows the slope. Null for a part that is level or plumb. The box is then that of the turned block.
    /// </summary>
    public Slope? Tilt { get; init; }

    /// <summary>
    /// Eighths of a full turn about the plumb line through the origin, counted from right to out: 1 or −1 for a part that stands at 45 degrees to the wall,
    /// 0 for all others. The box is then that of the turned block.
    /// </summary>
    public int Eighths { get; init; }

    /// <summary>The point of the room at part coordinates x, y and z.</summary>
    public Point3 At(Length x, Length y, Length z) => Move(Move(Move(Origin, AlongLength, x), AlongWidth, y), IntoThickness, z);

    /// <summary>Lowest corner of the box that a part of these sizes fills.</summary>
    public Point3 LowCorner(Length length, Length width, Length thickness) =>
        Corners(length, width, thickness).Aggregate((a, b) => a.Lowest(b));

    /// <summary>Highest corner of the box that a part of these sizes fills.</summary>
    public Point3 HighCorner(Length length, Length width, Length thickness) =>
        Corners(length, width, thickness).Aggregate((a, b) => a.Highest(b));

    private Point3[] Corners(Length length, Length width, Length thickness)
    {
        // A block along the axes of the room is known by two opposite corners.
        Point3[] ends = [Origin, At(length, width, thickness)];
        if (Tilt is null && Eighths == 0)
            return ends;
        return
        [
            .. ends,
            At(length, Length.Zero, Length.Zero),
            At(Length.Zero, width, Length.Zero),
            At(Length.Zero, Length.Zero, thickness),
            At(length, width, Length.Zero),
            At(length, Length.Zero, thickness),
            At(Length.Zero, width, thickness),
        ];
    }

    private Point3 Move(Point3 point, Axis axis, Length by) => Eighths == 0 ? Straight(point, axis, by) : axis switch
    {
        Axis.Right => Turned(point, Share(by), Share(by * Eighths)),
        Axis.Left => Turned(point, -Share(by), -Share(by * Eighths)),
        Axis.Out => Turned(point, -Share(by * Eighths), Share(by)),
        Axis.In => Turned(point, Share(by * Eighths), -Share(by)),
        _ => Straight(point, axis, by),
    };

    /// <summary>What a length at 45 degrees measures along the wall: l/√2, to the nanometre.</summary>
    private static Length Share(Length length) => Length.FromNanometres((long)Math.Round(length.Nanometres / Math.Sqrt(2)));

    private static Point3 Turned(Point3 point, Length right, Length @out) => point with { X = point.X + right, Z = point.Z + @out };

    private Point3 Straight(Point3 point, Axis axis, Length by) => (axis, Tilt) switch
    {
        (Axis.Right, { } slope) => Shift(point, slope.Level(by), slope.Up(by)),
        (Axis.Left, { } slope) => Shift(point, -slope.Level(by), -slope.Up(by)),
        (Axis.Up, { } slope) => Shift(point, -slope.Up(by), slope.Level(by)),
        (Axis.Down, { } slope) => Shift(point, slope.Up(by), -slope.Level(by)),
        (Axis.Right, null) => Shift(point, by, Length.Zero),
        (Axis.Left, null) => Shift(point, -by, Length.Zero),
        (Axis.Up, null) => Shift(point, Length.Zero, by),
        (Axis.Down, null) => Shift(point, Length.Zero, -by),
        (Axis.Out, _) => point with { Z = point.Z + by },
        _ => point with { Z = point.Z - by },
    };

    private static Point3 Shift(Point3 point, Length right, Length up) => point with { X = point.X + right, Y = point.Y + up };
}
