using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>How each family of parts lies in the room: where its reference end, edge and face are.</summary>
internal static class Pose
{
    /// <summary>Left side: x up from the foot, reference edge in front, reference face inside (towards the right).</summary>
    public static Placement LeftSide(string wall, Length insideX, Length footY, Length frontZ) =>
        new(wall, new(insideX, footY, frontZ), Axis.Up, Axis.In, Axis.Left);

    /// <summary>Right side and partition: x up from the foot, reference edge in front, reference face towards the left.</summary>
    public static Placement FacingLeft(string wall, Length leftX, Length footY, Length frontZ) =>
        new(wall, new(leftX, footY, frontZ), Axis.Up, Axis.In, Axis.Right);

    /// <summary>End panel at a right end: x up from the foot, reference edge in front, reference face outside (towards the right).</summary>
    public static Placement FacingRight(string wall, Length rightX, Length footY, Length frontZ) =>
        new(wall, new(rightX, footY, frontZ), Axis.Up, Axis.In, Axis.Left);

    /// <summary>Level panel: x to the right from the left end, reference edge in front, reference face above.</summary>
    public static Placement Level(string wall, Length leftX, Length upperY, Length frontZ) =>
        new(wall, new(leftX, upperY, frontZ), Axis.Right, Axis.In, Axis.Down);

    /// <summary>Upright panel or strip that faces the room: x up from the foot, reference edge on the left, reference face in front.</summary>
    public static Placement UprightFacingRoom(string wall, Length leftX, Length footY, Length frontZ) =>
        new(wall, new(leftX, footY, frontZ), Axis.Up, Axis.Right, Axis.In);

    /// <summary>Upright strip that faces the room and is scribed on its left: as <see cref="UprightFacingRoom"/>, but measured from its right edge.</summary>
    public static Placement UprightFacingRoomFromRight(string wall, Length rightX, Length footY, Length frontZ) =>
        new(wall, new(rightX, footY, frontZ), Axis.Up, Axis.Left, Axis.In);

    /// <summary>Level strip that faces the room, measured from its lower edge.</summary>
    public static Placement StripFromBelow(string wall, Length leftX, Length lowerY, Length frontZ) =>
        new(wall, new(leftX, lowerY, frontZ), Axis.Right, Axis.Up, Axis.In);

    /// <summary>Level strip that faces the room, measured from its upper edge.</summary>
    public static Placement StripFromAbove(string wall, Length leftX, Length upperY, Length frontZ) =>
        new(wall, new(leftX, upperY, frontZ), Axis.Right, Axis.Down, Axis.In);

    /// <summary>Level strip that runs back to the wall, measured from its front end and upper edge, its reference face to the left.</summary>
    public static Placement ReturnFacingLeft(string wall, Length leftX, Length upperY, Length frontZ) =>
        new(wall, new(leftX, upperY, frontZ), Axis.In, Axis.Down, Axis.Right);

    /// <summary>As <see cref="ReturnFacingLeft"/>, its reference face to the right.</summary>
    public static Placement ReturnFacingRight(string wall, Length rightX, Length upperY, Length frontZ) =>
        new(wall, new(rightX, upperY, frontZ), Axis.In, Axis.Down, Axis.Left);
}
