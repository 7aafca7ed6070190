using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Layout;

/// <summary>A box in the room.</summary>
internal readonly record struct RoomBox(Point3 Low, Point3 High)
{
    public static RoomBox Of(Part part) => new(
        part.Place.LowCorner(part.Length, part.Width, part.Thickness),
        part.Place.HighCorner(part.Length, part.Width, part.Thickness));

    /// <summary>Whether two boxes reach into each other by more than a tolerance in all three directions.</summary>
    public bool Meets(RoomBox other, Length tolerance) =>
        Common(Low.X, High.X, other.Low.X, other.High.X) > tolerance
        && Common(Low.Y, High.Y, other.Low.Y, other.High.Y) > tolerance
        && Common(Low.Z, High.Z, other.Low.Z, other.High.Z) > tolerance;

    public RoomBox Common(RoomBox other) => new(
        new(Length.Max(Low.X, other.Low.X), Length.Max(Low.Y, other.Low.Y), Length.Max(Low.Z, other.Low.Z)),
        new(Length.Min(High.X, other.High.X), Length.Min(High.Y, other.High.Y), Length.Min(High.Z, other.High.Z)));

    public bool Contains(RoomBox other, Length tolerance) =>
        other.Low.X >= Low.X - tolerance && other.High.X <= High.X + tolerance
        && other.Low.Y >= Low.Y - tolerance && other.High.Y <= High.Y + tolerance
        && other.Low.Z >= Low.Z - tolerance && other.High.Z <= High.Z + tolerance;

    /// <summary>What machining takes out of a part, as boxes in the room.</summary>
    public static IEnumerable<RoomBox> Removed(Part part)
    {
        foreach (var machining in part.Machining)
        {
            switch (machining)
            {
                case Dado d:
                    yield return InRoom(part, d.X, d.X + d.Width, d.FromY, d.ToY, d.Face, d.Depth);
                    break;
                case Groove g:
                    yield return InRoom(part, g.FromX, g.ToX, g.Y, g.Y + g.Width, g.Face, g.Depth);
                    break;
                case Rabbet { Edge: PartEdge.Opposite } r:
                    yield return InRoom(part, Length.Zero, part.Length, part.Width - r.Width, part.Width, r.Face, r.Depth);
                    break;
                case Notch n:
                    yield return InRoom(part, n.X, n.X + n.LengthX, n.Y, n.Y + n.LengthY, Face.Reference, part.Thickness);
                    break;
            }
        }
    }

    private static RoomBox InRoom(Part part, Length x0, Length x1, Length y0, Length y1, Face face, Length depth)
    {
        var (z0, z1) = face == Face.Reference ? (Length.Zero, depth) : (part.Thickness - depth, part.Thickness);
        var a = Point(part.Place, x0, y0, z0);
        var b = Point(part.Place, x1, y1, z1);
        return new(
            new(Length.Min(a.X, b.X), Length.Min(a.Y, b.Y), Length.Min(a.Z, b.Z)),
            new(Length.Max(a.X, b.X), Length.Max(a.Y, b.Y), Length.Max(a.Z, b.Z)));
    }

    private static Point3 Point(Placement place, Length x, Length y, Length z) =>
        Move(Move(Move(place.Origin, place.AlongLength, x), place.AlongWidth, y), place.IntoThickness, z);

    private static Point3 Move(Point3 p, Axis axis, Length by) => axis switch
    {
        Axis.Right => p with { X = p.X + by },
        Axis.Left => p with { X = p.X - by },
        Axis.Up => p with { Y = p.Y + by },
        Axis.Down => p with { Y = p.Y - by },
        Axis.Out => p with { Z = p.Z + by },
        _ => p with { Z = p.Z - by },
    };

    private static Length Common(Length low, Length high, Length otherLow, Length otherHigh) =>
        Length.Min(high, otherHigh) - Length.Max(low, otherLow);
}
