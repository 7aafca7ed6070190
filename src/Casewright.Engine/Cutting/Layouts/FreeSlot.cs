namespace Casewright.Engine.Cutting.Layouts;

/// <summary>The free end of a row.</summary>
/// <param name="Node">The row.</param>
/// <param name="Level">Level of the row.</param>
/// <param name="Axis">Axis of the row.</param>
/// <param name="SizeX">Free extent along x.</param>
/// <param name="SizeY">Free extent along y.</param>
internal readonly record struct FreeSlot(int Node, int Level, byte Axis, long SizeX, long SizeY);

/// <summary>A way to put a piece into a free end.</summary>
/// <param name="Kind">Kind of the piece.</param>
/// <param name="Turned">Whether it lies turned.</param>
/// <param name="Across">Whether the free end is first cut across the row's axis.</param>
internal readonly record struct Placement(int Kind, bool Turned, bool Across);
