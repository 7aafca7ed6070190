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
