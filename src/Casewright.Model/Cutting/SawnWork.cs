using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Cutting;

/// <summary>What the saw has already made of a job. It stays as it is, and only the rest is planned.</summary>
public sealed record SawnWork
{
    /// <summary>Sheets cut or begun; ids unique.</summary>
    public ValueList<SawnSheet> Sheets { get; init; } = [];

    /// <summary>Boards cut or begun; ids unique.</summary>
    public ValueList<SawnBoard> Boards { get; init; } = [];
}

/// <summary>A panel or length left over by a sheet or board that is cut, from which another layout is cut.</summary>
/// <param name="Id">Id of the sheet or board it is left over from.</param>
/// <param name="X">Its corner nearest the origin of that sheet, along its length; on a board its nearest end.</param>
/// <param name="Y">The same across the sheet; zero on a board.</param>
public sealed record LeftoverPlace(string Id, Length X, Length Y);

/// <summary>A cut that was made, or will be as it was planned.</summary>
/// <param name="Kind">Rip or crosscut.</param>
/// <param name="Stage">Round of cuts: 0 for edge trim, then 1, 2, 3 ...</param>
/// <param name="At">Far side of the saw cut, from the raw edge; not negative.</param>
/// <param name="From">Where the panel it divides begins, along the cut.</param>
/// <param name="To">Where that panel ends.</param>
/// <param name="Setting">Fence or stop setting.</param>
public sealed record SawnCut(CutKind Kind, int Stage, Length At, Length From, Length To, Length Setting);

/// <summary>A sheet that is cut or begun: its layout does not change any more.</summary>
public sealed record SawnSheet
{
    /// <summary>Id of its layout, as written on the pieces, such as S4.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the sheet stock.</summary>
    public required string Stock { get; init; }

    /// <summary>Id of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Size along the grain when the material has one; x of the layout runs along it.</summary>
    public required Length Length { get; init; }

    /// <summary>Size across.</summary>
    public required Length Width { get; init; }

    /// <summary>Trim taken off every edge.</summary>
    public required Length Trim { get; init; }

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>What it cost: its price when bought, zero when on hand.</summary>
    public decimal Cost { get; init; }

    /// <summary>Whether it was bought.</summary>
    public bool Bought { get; init; }

    /// <summary>The panel of another sheet that it is; null for a whole sheet.</summary>
    public LeftoverPlace? LeftOver { get; init; }

    /// <summary>Cuts in working order.</summary>
    public ValueList<SawnCut> Cuts { get; init; } = [];

    /// <summary>Pieces, those that no part wants any more among them.</summary>
    public ValueList<SawnPiece> Pieces { get; init; } = [];
}

/// <summary>A board that is cut or begun.</summary>
public sealed record SawnBoard
{
    /// <summary>Id of its layout, as written on the pieces, such as B2.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the board stock.</summary>
    public required string Stock { get; init; }

    /// <summary>Id of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Length of the board.</summary>
    public required Length Length { get; init; }

    /// <summary>Trim taken off each end.</summary>
    public Length Trim { get; init; }

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>What it cost: its price when bought, zero when on hand.</summary>
    public decimal Cost { get; init; }

    /// <summary>Whether it was bought.</summary>
    public bool Bought { get; init; }

    /// <summary>The length of another board that it is; null for a whole board.</summary>
    public LeftoverPlace? LeftOver { get; init; }

    /// <summary>Far side of each saw cut from the raw end, ascending.</summary>
    public ValueList<Length> Cuts { get; init; } = [];

    /// <summary>Pieces, those that no part wants any more among them.</summary>
    public ValueList<SawnPiece> Pieces { get; init; } = [];
}
