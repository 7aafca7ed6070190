using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>A complete answer: every copy of every demand cut by one of its options.</summary>
/// <param name="Sheets">The sheets cut, in order of cutting.</param>
/// <param name="Choices">The option of every copy, by demand and copy.</param>
/// <param name="Cost">Price of the sheets and the options together.</param>
/// <param name="LowerBound">No answer within the rules costs less.</param>
/// <param name="SheetsUsed">Number of sheets cut, those on hand included.</param>
/// <param name="SheetsLowerBound">No answer within the rules cuts fewer sheets.</param>
/// <param name="Proven">Whether the cost is proven least.</param>
/// <param name="Work">Work units spent.</param>
public sealed record CuttingSolution(
    ValueList<SheetCut> Sheets,
    ValueList<CopyChoice> Choices,
    decimal Cost,
    decimal LowerBound,
    int SheetsUsed,
    int SheetsLowerBound,
    bool Proven,
    long Work);

/// <summary>Which option a copy of a demand is made by. All are indexes from 0 into the problem.</summary>
public sealed record CopyChoice(int Demand, int Copy, int Option);

/// <summary>One sheet and how it is cut.</summary>
/// <param name="SheetType">Index of the kind of sheet in the problem.</param>
/// <param name="Layout">The cuts as a tree, from the usable sheet down to the pieces.</param>
/// <param name="Cuts">The same cuts in working order, each edge to edge of what is on the saw.</param>
/// <param name="Pieces">The pieces, in the order they come off the saw.</param>
/// <param name="Offcuts">What is left, largest first; slivers no wider than a kerf left out.</param>
public sealed record SheetCut(
    int SheetType,
    CutRegion Layout,
    ValueList<SawCut> Cuts,
    ValueList<PlacedPiece> Pieces,
    ValueList<Offcut> Offcuts);

/// <summary>A piece on its sheet. Corner (X, Y) is the one nearest the raw sheet's origin.</summary>
/// <param name="Demand">Index of the demand in the problem.</param>
/// <param name="Copy">Copy of the demand, from 0.</param>
/// <param name="Option">Index of the option that this copy is made by.</param>
/// <param name="Piece">Index of the piece in the option.</param>
/// <param name="X">Along the sheet's length.</param>
/// <param name="Y">Across.</param>
/// <param name="Length">The piece's own length; lies along y when turned.</param>
/// <param name="Width">The piece's own width.</param>
/// <param name="Turned">Whether the length lies along y.</param>
public sealed record PlacedPiece(int Demand, int Copy, int Option, int Piece, long X, long Y, long Length, long Width, bool Turned)
{
    /// <summary>Size along the sheet's length.</summary>
    public long SizeX => Turned ? Width : Length;

    /// <summary>Size across the sheet.</summary>
    public long SizeY => Turned ? Length : Width;
}

/// <summary>A rectangle left over, in raw sheet coordinates.</summary>
public sealed record Offcut(long X, long Y, long Length, long Width);
