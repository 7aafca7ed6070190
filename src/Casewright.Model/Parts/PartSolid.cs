using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A point on a face of a part: x from the reference end, y from the reference edge.</summary>
public readonly record struct FacePoint(Length X, Length Y);

/// <summary>
/// The true shape of a part: its outline on the reference face and on the opposite one, clipped corners and bevelled edges taken off the
/// enclosing rectangle that is cut from the sheet. Notches and cut-outs are not taken off. The outlines go the same way round and answer
/// each other corner for corner.
/// </summary>
/// <param name="Reference">Outline on the reference face, from the corner of reference end and edge along the reference edge.</param>
/// <param name="Opposite">Outline on the opposite face, the same corners in the same order.</param>
/// <param name="Thickness">Thickness of the part.</param>
public sealed record PartSolid(ValueList<FacePoint> Reference, ValueList<FacePoint> Opposite, Length Thickness)
{
    /// <summary>The shape of a part.</summary>
    public static PartSolid Of(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        FacePoint[] outline = [.. Corners(part).Aggregate(new List<FacePoint>(), Joined)];
        var bevels = part.Machining.OfType<Bevel>().ToArray();
        return new(OnFace(outline, part, bevels, Face.Reference), OnFace(outline, part, bevels, Face.Opposite), part.Thickness);
    }

    /// <summary>Its corners in the room: those of the reference face, then those of the opposite one.</summary>
    public IEnumerable<Point3> In(Placement place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Reference.Select(p => place.At(p.X, p.Y, Length.Zero)).Concat(Opposite.Select(p => place.At(p.X, p.Y, Thickness)));
    }

    /// <summary>Whether a part is anything but the block that its three sizes give.</summary>
    public static bool IsCut(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Place.Tilt is not null || part.Machining.Any(work => work is Bevel or Clip);
    }

    /// <summary>
    /// The outline of a part seen from the front of its wall, anticlockwise: x along the wall, y up. Every cut of casework under a slope
    /// lies in the plane of the wall, so that the part is this outline, as deep as its box.
    /// </summary>
    public static ValueList<FacePoint> SeenFromFront(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!IsCut(part))
        {
            var (low, high) = (part.LowCorner, part.HighCorner);
            return [new(low.X, low.Y), new(high.X, low.Y), new(high.X, high.Y), new(low.X, high.Y)];
        }

        var points = Of(part).In(part.Place).Select(p => new FacePoint(p.X, p.Y)).Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        return [.. Chain(points), .. Chain(points.Reverse())];
    }

    /// <summary>Area in m² of a part, the mean of its two faces; notches, housings and holes not taken off.</summary>
    public static double AreaOf(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!IsCut(part))
            return part.Length.Metres * part.Width.Metres;
        var solid = Of(part);
        return (Area(solid.Reference) + Area(solid.Opposite)) / 2;
    }

    /// <summary>Lowest and highest point of a part at a place along the wall; null where it is not.</summary>
    public static (Length Low, Length High)? HeightsAt(Part part, Length x)
    {
        var outline = SeenFromFront(part);
        var heights = new List<Length>();
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            if (a.X == x)
                heights.Add(a.Y);
            if ((a.X < x && x < b.X) || (b.X < x && x < a.X))
                heights.Add(a.Y + new Slope(b.X > a.X ? b.Y - a.Y : a.Y - b.Y, (b.X - a.X).Abs()).Over(x - a.X));
        }

        return heights.Count == 0 ? null : (heights.Min(), heights.Max());
    }

    private static double Area(ValueList<FacePoint> outline) => Math.Abs(Enumerable.Range(0, outline.Count)
        .Select(i => (A: outline[i], B: outline[(i + 1) % outline.Count]))
        .Sum(edge => (edge.A.X.Metres * edge.B.Y.Metres) - (edge.B.X.Metres * edge.A.Y.Metres))) / 2;

    /// <summary>One half of the hull of points in order, its last point left to the other half.</summary>
    private static List<FacePoint> Chain(IEnumerable<FacePoint> points)
    {
        var chain = new List<FacePoint>();
        foreach (var point in points)
        {
            while (chain.Count >= 2 && Turn(chain[^2], chain[^1], point) <= 0)
                chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }

        chain.RemoveAt(chain.Count - 1);
        return chain;
    }

    private static Int128 Turn(FacePoint a, FacePoint b, FacePoint c) =>
        ((Int128)(b.X - a.X).Nanometres * (c.Y - a.Y).Nanometres) - ((Int128)(b.Y - a.Y).Nanometres * (c.X - a.X).Nanometres);

    private static IEnumerable<FacePoint> Corners(Part part) =>
    [
        .. Corner(part, PartEdge.Start, PartEdge.Reference),
        .. Corner(part, PartEdge.End, PartEdge.Reference),
        .. Corner(part, PartEdge.End, PartEdge.Opposite),
        .. Corner(part, PartEdge.Start, PartEdge.Opposite),
    ];

    private static FacePoint[] Corner(Part part, PartEdge end, PartEdge edge)
    {
        var (x, y) = (end == PartEdge.Start ? Length.Zero : part.Length, edge == PartEdge.Reference ? Length.Zero : part.Width);
        if (part.Machining.OfType<Clip>().FirstOrDefault(c => c.End == end && c.Edge == edge) is not { } clip)
            return [new(x, y)];
        FacePoint alongEdge = new(end == PartEdge.Start ? clip.AlongX : part.Length - clip.AlongX, y);
        FacePoint alongEnd = new(x, edge == PartEdge.Reference ? clip.AlongY : part.Width - clip.AlongY);

        // Round the part one goes along the reference edge from start to end, and back along the other.
        return (end == PartEdge.Start) == (edge == PartEdge.Reference) ? [alongEnd, alongEdge] : [alongEdge, alongEnd];
    }

    /// <summary>A cut over the whole width ends in the next corner, which then counts once.</summary>
    private static List<FacePoint> Joined(List<FacePoint> points, FacePoint next)
    {
        if (!points.Contains(next))
            points.Add(next);
        return points;
    }

    private static ValueList<FacePoint> OnFace(FacePoint[] outline, Part part, Bevel[] bevels, Face face)
    {
        var (low, high) = (new FacePoint(Length.Zero, Length.Zero), new FacePoint(part.Length, part.Width));
        foreach (var bevel in bevels.Where(b => b.LongFace != face))
        {
            (low, high) = bevel.Edge switch
            {
                PartEdge.Start => (low with { X = bevel.Setback }, high),
                PartEdge.End => (low, high with { X = part.Length - bevel.Setback }),
                PartEdge.Reference => (low with { Y = bevel.Setback }, high),
                _ => (low, high with { Y = part.Width - bevel.Setback }),
            };
        }

        return outline
            .Select(p => new FacePoint(Length.Max(low.X, Length.Min(high.X, p.X)), Length.Max(low.Y, Length.Min(high.Y, p.Y))))
            .ToValueList();
    }
}
