using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A point of the room: x along the wall from its left end, y up from the highest floor point, z out from the wall.</summary>
public readonly record struct Point3(Length X, Length Y, Length Z);

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
    /// <summary>Lowest corner of the box that a part of these sizes fills.</summary>
    public Point3 LowCorner(Length length, Length width, Length thickness) =>
        Shift(Shift(Shift(Origin, AlongLength, length, low: true), AlongWidth, width, low: true), IntoThickness, thickness, low: true);

    /// <summary>Highest corner of the box that a part of these sizes fills.</summary>
    public Point3 HighCorner(Length length, Length width, Length thickness) =>
        Shift(Shift(Shift(Origin, AlongLength, length, low: false), AlongWidth, width, low: false), IntoThickness, thickness, low: false);

    private static Point3 Shift(Point3 point, Axis axis, Length by, bool low) => (axis, low) switch
    {
        (Axis.Left, true) => point with { X = point.X - by },
        (Axis.Right, false) => point with { X = point.X + by },
        (Axis.Down, true) => point with { Y = point.Y - by },
        (Axis.Up, false) => point with { Y = point.Y + by },
        (Axis.In, true) => point with { Z = point.Z - by },
        (Axis.Out, false) => point with { Z = point.Z + by },
        _ => point,
    };
}
