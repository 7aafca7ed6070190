using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Bevels, raked cuts and holes in words with their figures.</summary>
internal static class CutWords
{
    /// <summary>A bevelled end: what it takes off which face, and the angle to set.</summary>
    public static string Of(Figures figures, Part part, Bevel bevel)
    {
        var shorter = bevel.LongFace == Face.Reference ? part.OppositeFaceName : part.ReferenceFaceName;
        return $"{figures.Main(bevel.Setback)} shorter on the {shorter} face, {Angle(bevel.Setback, part.Thickness)} off square";
    }

    /// <summary>A corner or end cut off on a line.</summary>
    public static string Of(Figures figures, Part part, Clip clip)
    {
        var edge = clip.Edge == PartEdge.Reference ? Words.ReferenceEdgeOf(part) : OtherEdge(part);
        return clip.AlongY == part.Width
            ? $"{figures.Main(clip.AlongX)} shorter at the {edge} edge, {Angle(clip.AlongX, clip.AlongY)} off square"
            : $"{figures.Main(clip.AlongX)} along and {figures.Main(clip.AlongY)} across, off the corner at the {edge} edge";
    }

    /// <summary>A round hole.</summary>
    public static string Of(Figures figures, Part part, Bore bore)
    {
        var face = bore.Face == Face.Reference ? part.ReferenceFaceName : part.OppositeFaceName;
        var depth = bore.Depth >= part.Thickness ? "through" : figures.Main(bore.Depth) + " deep";
        return $"{figures.Main(bore.Y)} from the {Words.ReferenceEdgeOf(part)} edge, {figures.Main(bore.Diameter)} bit, {depth}, from the {face} face";
    }

    /// <summary>The angle off square of a cut.</summary>
    public static string Angle(Length rise, Length run) =>
        double.RadiansToDegrees(Math.Atan2(rise.Nanometres, run.Nanometres)).ToString("0.0", CultureInfo.InvariantCulture) + "°";

    /// <summary>Where the edge opposite the reference edge is.</summary>
    public static string OtherEdge(Part part) => part.Place.AlongWidth switch
    {
        Axis.In => "rear",
        Axis.Out => "front",
        Axis.Up => "upper",
        Axis.Down => "lower",
        Axis.Right => "right",
        _ => "left",
    };
}
