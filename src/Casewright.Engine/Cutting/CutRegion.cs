using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>What becomes of a rectangle of the sheet.</summary>
public enum RegionKind
{
    /// <summary>It is a finished piece.</summary>
    Piece,

    /// <summary>It is left over.</summary>
    Rest,

    /// <summary>It is ripped along the sheet into <see cref="CutRegion.Parts"/>, ordered by y.</summary>
    Ripped,

    /// <summary>It is crosscut into <see cref="CutRegion.Parts"/>, ordered by x.</summary>
    Crosscut,
}

/// <summary>A rectangle of the sheet in the tree of cuts. Neighbouring parts lie one kerf apart.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="X">Corner nearest the raw sheet's origin, along the length.</param>
/// <param name="Y">The same, across.</param>
/// <param name="Length">Extent along x.</param>
/// <param name="Width">Extent along y.</param>
/// <param name="Parts">What it is cut into; empty for a piece or a rest.</param>
/// <param name="Piece">Index into <see cref="SheetCut.Pieces"/>; -1 unless this is a piece.</param>
public sealed record CutRegion(RegionKind Kind, long X, long Y, long Length, long Width, ValueList<CutRegion> Parts, int Piece);

/// <summary>Direction of one saw cut.</summary>
public enum SawCutKind
{
    /// <summary>Along the sheet.</summary>
    Rip,

    /// <summary>Across the sheet.</summary>
    Crosscut,
}

/// <summary>One saw cut in working order. The line is the side of the kerf nearest the sheet's origin, except trims of the first edges: there it is the far side.</summary>
/// <param name="Order">From 1, over the sheet.</param>
/// <param name="Stage">0 for edge trims; else the turn of direction, from 1.</param>
/// <param name="Kind">Direction.</param>
/// <param name="X0">Start along x.</param>
/// <param name="Y0">Start along y.</param>
/// <param name="X1">End along x.</param>
/// <param name="Y1">End along y.</param>
/// <param name="Setting">Distance from the fence: the size of what is cut off and kept.</param>
public sealed record SawCut(int Order, int Stage, SawCutKind Kind, long X0, long Y0, long X1, long Y1, long Setting);
