using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>Turns places along a part into places along the room's axis that it lies on, and back.</summary>
public static class PartAxis
{
    /// <summary>Whether the part stands upright.</summary>
    public static bool IsUpright(this Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Place.AlongLength is Axis.Up or Axis.Down;
    }

    /// <summary>Where a place of the part is in the room: its height, its distance along the wall or out from it.</summary>
    public static Length ToRoom(this Part part, Length x)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Ascends(part) ? Origin(part) + x : Origin(part) - x;
    }

    /// <summary>Where a place of the room is on the part; may lie outside it.</summary>
    public static Length FromRoom(this Part part, Length place)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Ascends(part) ? place - Origin(part) : Origin(part) - place;
    }

    /// <summary>A stretch of the room's axis as a stretch of the part.</summary>
    public static Stretch FromRoom(this Part part, Stretch stretch)
    {
        var (one, other) = (part.FromRoom(stretch.From), part.FromRoom(stretch.To));
        return new(Length.Min(one, other), Length.Max(one, other));
    }

    /// <summary>A stretch of the part as a stretch of the room's axis.</summary>
    public static Stretch ToRoom(this Part part, Stretch stretch)
    {
        var (one, other) = (part.ToRoom(stretch.From), part.ToRoom(stretch.To));
        return new(Length.Min(one, other), Length.Max(one, other));
    }

    private static bool Ascends(Part part) => part.Place.AlongLength is Axis.Up or Axis.Right or Axis.Out;

    private static Length Origin(Part part) => part.Place.AlongLength switch
    {
        Axis.Up or Axis.Down => part.Place.Origin.Y,
        Axis.Left or Axis.Right => part.Place.Origin.X,
        _ => part.Place.Origin.Z,
    };
}
