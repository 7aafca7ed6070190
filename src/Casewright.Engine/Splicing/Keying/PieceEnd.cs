using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>A mortise in the end of a piece.</summary>
/// <param name="Offset">From the reference edge to its centre.</param>
/// <param name="Depth">From the reference face to its centre plane.</param>
/// <param name="Thickness">Its size across the faces.</param>
/// <param name="Width">Its size along the joint, play included.</param>
/// <param name="Tenon">Width of the tenon that goes in.</param>
public sealed record EndMortise(Length Offset, Length Depth, Length Thickness, Length Width, Length Tenon);

/// <summary>One end of a piece as it lies on the bench: its cross-section and the mortises in it, in part coordinates.</summary>
/// <param name="Width">Width of the piece.</param>
/// <param name="Thickness">Its thickness.</param>
/// <param name="AtHead">Whether it is the end at high x (the head of an upright) rather than at low x.</param>
/// <param name="RightHanded">
/// Whether length, width and thickness of the part turn like the fingers of a right hand; a part and its mirror image differ in it.
/// </param>
/// <param name="Mortises">The mortises, by offset.</param>
public sealed record PieceEnd(Length Width, Length Thickness, bool AtHead, bool RightHanded, ValueList<EndMortise> Mortises)
{
    /// <summary>The end, at the joint, of the piece on the side of the reference end.</summary>
    public static PieceEnd Before(Part part, Splice splice) => Of(part, splice, atHead: true);

    /// <summary>The end, at the joint, of the piece on the other side.</summary>
    public static PieceEnd After(Part part, Splice splice) => Of(part, splice, atHead: false);

    /// <summary>Whether a part's length, width and thickness turn like the fingers of a right hand, as it stands in the room.</summary>
    public static bool IsRightHanded(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (along, across, into) = (Vector(part.Place.AlongLength), Vector(part.Place.AlongWidth), Vector(part.Place.IntoThickness));
        var determinant =
            (along.X * ((across.Y * into.Z) - (across.Z * into.Y)))
            - (along.Y * ((across.X * into.Z) - (across.Z * into.X)))
            + (along.Z * ((across.X * into.Y) - (across.Y * into.X)));
        return determinant > 0;
    }

    private static PieceEnd Of(Part part, Splice splice, bool atHead)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(splice);
        return new(part.Width, part.Thickness, atHead, IsRightHanded(part),
            [.. splice.Tenons.OrderBy(t => t.Offset).Select(t => new EndMortise(t.Offset, t.Depth, t.Thickness, t.Width + t.Play, t.Width))]);
    }

    private static (int X, int Y, int Z) Vector(Axis axis) => axis switch
    {
        Axis.Right => (1, 0, 0),
        Axis.Left => (-1, 0, 0),
        Axis.Up => (0, 1, 0),
        Axis.Down => (0, -1, 0),
        Axis.Out => (0, 0, 1),
        _ => (0, 0, -1),
    };
}
