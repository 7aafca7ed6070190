using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>
/// Parts that face the room under a slope: upright ones with a raked end, and strips that lie along the slope with both ends cut plumb.
/// All are right or left handed: by the side to which they fall, seen from the front.
/// </summary>
internal static class RakedStrips
{
    /// <summary>The hand of a raked part: the side to which it falls, seen from the front.</summary>
    public static Hand HandOf(RakeFigures rake) => rake.FallsRight ? Hand.Right : Hand.Left;

    /// <summary>An upright part that faces the room, its end raked over the whole width; as it is without a rake.</summary>
    public static Part Upright(RakeFigures? rake, Part part)
    {
        if (rake is null)
            return part;
        var edge = part.Place.AlongWidth == Axis.Right == rake.FallsRight ? PartEdge.Opposite : PartEdge.Reference;
        return part with
        {
            Hand = HandOf(rake),
            Machining = [.. part.Machining, new Clip(RakedUprights.For, PartEdge.End, edge, rake.Slope.Lean(part.Width), part.Width)],
        };
    }

    /// <summary>Length of the blank of a strip along the slope: w/cos θ, and b·tan θ for the plumb ends over its width.</summary>
    /// <param name="rake">The rake.</param>
    /// <param name="level">What it covers, level.</param>
    /// <param name="across">Its width.</param>
    public static Rule Length(RakeFigures rake, Rule level, Length across) => Rule
        .Of(new("wk", $"what it covers along the slope: w/cos θ, w = {level.Formula}", rake.Slope.Along(level.Exact)))
        .Plus(new("bk", "lean of the plumb ends over its width: b·tan θ", rake.Slope.Lean(across)));

    /// <summary>Lays a strip along the slope: its reference edge from a point on its left, both ends plumb.</summary>
    public static Part Along(RakeFigures rake, Part part, Length left, Length height)
    {
        var lean = rake.Slope.Lean(part.Width);
        var startsAtOther = part.Place.AlongWidth == Axis.Down != rake.FallsRight;
        var start = startsAtOther ? PartEdge.Reference : PartEdge.Opposite;
        var end = startsAtOther ? PartEdge.Opposite : PartEdge.Reference;
        return part with
        {
            Hand = HandOf(rake),
            Place = part.Place with { Origin = Origin(rake, part.Place, left, height, startsAtOther ? lean : Model.Measure.Length.Zero), Tilt = rake.Slope },
            Machining =
            [
                .. part.Machining,
                new Clip(RakedUprights.For, PartEdge.Start, start, lean, part.Width),
                new Clip(RakedUprights.For, PartEdge.End, end, lean, part.Width),
            ],
        };
    }

    /// <summary>Where the blank begins: before its reference edge by what the other edge or face reaches past it.</summary>
    public static Point3 Origin(RakeFigures rake, Placement place, Length left, Length height, Length before) =>
        place.Origin with { X = left - rake.Slope.Level(before), Y = height - rake.Slope.Up(before) };
}
