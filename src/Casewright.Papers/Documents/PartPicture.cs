using Casewright.Model.Parts;
using Casewright.Papers.Drawing;

namespace Casewright.Papers.Documents;

/// <summary>A part seen from the front: doors with the sign of their swing, fronts with the holes of their pulls.</summary>
internal static class PartPicture
{
    /// <summary>Draws it as a group with the part's id.</summary>
    public static void Draw(Sketch sketch, RoomView view, Part part)
    {
        var tone = part.Role switch
        {
            PartRole.Back => Tone.Sheet,
            PartRole.Crown or PartRole.BaseMould or PartRole.LightRail or PartRole.ToeFace or PartRole.BaseRail or PartRole.Nosing or PartRole.TrimBand => Tone.WoodEdge,
            _ => Tone.Wood,
        };
        sketch.Group("part:" + part.Id, $"{part.Name}, {part.Id}", "part", group =>
        {
            var area = view.At(part);
            var pen = part.Role == PartRole.Back ? Pen.Hair : Pen.Thin;
            if (PartSolid.IsCut(part))
                group.Area(view.Outline(part), pen, tone);
            else
                group.Rectangle(area, pen, tone);
            if (part.Role == PartRole.Door)
                DrawSwing(group, area, part.Hand == Hand.Left);
            foreach (var bore in part.Role is PartRole.Door or PartRole.DrawerFront ? part.Machining.OfType<Bore>().Where(b => b.Face == Face.Reference) : [])
                DrawPullHole(group, view, part, bore);
        });
    }

    // Two lines that meet at the hinged edge: the usual sign of the way a door opens.
    private static void DrawSwing(Sketch sketch, Box area, bool hingedLeft)
    {
        var (free, hinged) = hingedLeft ? (area.Right, area.Left) : (area.Left, area.Right);
        sketch.Line(free, area.Top, hinged, area.Centre.Y, Pen.Hidden);
        sketch.Line(free, area.Bottom, hinged, area.Centre.Y, Pen.Hidden);
    }

    private static void DrawPullHole(Sketch sketch, RoomView view, Part part, Bore bore)
    {
        var low = part.Place.Origin;
        var (x, y) = part.Place.AlongLength == Axis.Up ? (low.X + bore.Y, low.Y + bore.X) : (low.X + bore.X, low.Y + bore.Y);
        sketch.Circle(view.X(x), view.Y(y), 0.5, Pen.Thin);
    }
}
