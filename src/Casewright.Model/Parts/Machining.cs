using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>
/// Work done on a part, in part coordinates: x from the reference end, y from the reference edge, z from the reference face.
/// </summary>
/// <param name="For">What it takes: the name or id of the part that goes in, or the hardware.</param>
public abstract record Machining(string For);

/// <summary>A housing across the part, from <paramref name="X"/> to X + <paramref name="Width"/>, between <paramref name="FromY"/> and <paramref name="ToY"/>.</summary>
public sealed record Dado(string For, Face Face, Length X, Length Width, Length Depth, Length FromY, Length ToY) : Machining(For);

/// <summary>A groove along the part, from <paramref name="Y"/> to Y + <paramref name="Width"/>, between <paramref name="FromX"/> and <paramref name="ToX"/>.</summary>
public sealed record Groove(string For, Face Face, Length Y, Length Width, Length Depth, Length FromX, Length ToX) : Machining(For);

/// <summary>A step along one edge: <paramref name="Width"/> measured into the face from the edge, <paramref name="Depth"/> into the thickness.</summary>
public sealed record Rabbet(string For, Face Face, PartEdge Edge, Length Width, Length Depth) : Machining(For);

/// <summary>A row of shelf pin holes along the part.</summary>
public sealed record PinRow(string For, Face Face, Length Y, Length FirstX, Length Pitch, int Count, Length Diameter, Length Depth) : Machining(For)
{
    /// <summary>Centre of the last hole.</summary>
    public Length LastX => FirstX + (Pitch * (Count - 1));
}

/// <summary>A corner or edge cut away through the whole thickness.</summary>
public sealed record Notch(string For, Length X, Length Y, Length LengthX, Length LengthY) : Machining(For);

/// <summary>A stretch where screws or fittings go, which no splice may enter.</summary>
public sealed record HardwareZone(string For, Face Face, Length FromX, Length ToX) : Machining(For);

/// <summary>A cut-out through the whole thickness (outlet, register).</summary>
public sealed record CutOut(string For, Length X, Length Y, Length LengthX, Length LengthY) : Machining(For);

/// <summary>A round hole from a face: hinge cup, pull.</summary>
public sealed record Bore(string For, Face Face, Length X, Length Y, Length Diameter, Length Depth) : Machining(For);

/// <summary>
/// An end cut on a slant through the thickness: the part is as long as stated on <paramref name="LongFace"/> and shorter by
/// <paramref name="Setback"/> on the other face. The angle off square has the tangent setback ÷ thickness.
/// </summary>
public sealed record Bevel(string For, PartEdge Edge, Face LongFace, Length Setback) : Machining(For);

/// <summary>
/// A corner cut off on a straight line through the whole thickness, from <paramref name="AlongX"/> off the end <paramref name="End"/>
/// to <paramref name="AlongY"/> off the edge <paramref name="Edge"/>. Over the whole width it is a raked end.
/// </summary>
public sealed record Clip(string For, PartEdge End, PartEdge Edge, Length AlongX, Length AlongY) : Machining(For);
