using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The three directions of a room, without sense.</summary>
internal enum Axis3
{
    /// <summary>Along the wall.</summary>
    X,

    /// <summary>Up.</summary>
    Y,

    /// <summary>Out from the wall.</summary>
    Z,
}

/// <summary>The room that a part fills.</summary>
internal readonly record struct Box(Point3 LowCorner, Point3 HighCorner)
{
    public static Box Of(Part part) => new(
        part.LowCorner,
        part.HighCorner);

    public static Axis3 AxisOf(Axis axis) => axis switch
    {
        Axis.Right or Axis.Left => Axis3.X,
        Axis.Up or Axis.Down => Axis3.Y,
        _ => Axis3.Z,
    };

    public static Length Coordinate(Point3 point, Axis3 axis) => axis switch
    {
        Axis3.X => point.X,
        Axis3.Y => point.Y,
        _ => point.Z,
    };

    public Length Low(Axis3 axis) => Coordinate(LowCorner, axis);

    public Length High(Axis3 axis) => Coordinate(HighCorner, axis);
}
