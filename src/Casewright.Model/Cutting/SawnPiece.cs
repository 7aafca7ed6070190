using Casewright.Model.Measure;

namespace Casewright.Model.Cutting;

/// <summary>A piece of a sheet or board that is cut or begun.</summary>
public sealed record SawnPiece
{
    /// <summary>Id written on it, such as C3-L/a.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the part it was cut for.</summary>
    public required string Part { get; init; }

    /// <summary>Size along the part's length as sawn.</summary>
    public required Length Length { get; init; }

    /// <summary>Size along the part's width as sawn.</summary>
    public required Length Width { get; init; }

    /// <summary>Corner nearest the origin of its sheet, along its length from the raw edge; along a board from its raw end.</summary>
    public required Length X { get; init; }

    /// <summary>The same across the sheet; zero on a board.</summary>
    public Length Y { get; init; }

    /// <summary>Whether its length lies across the sheet.</summary>
    public bool Rotated { get; init; }

    /// <summary>Start of the stretch of the finished part that it covers, at the joint line.</summary>
    public required Length From { get; init; }

    /// <summary>End of that stretch.</summary>
    public required Length To { get; init; }

    /// <summary>Sawn beyond the stretch at its start.</summary>
    public Length AllowanceStart { get; init; }

    /// <summary>Sawn beyond the stretch at its end.</summary>
    public Length AllowanceEnd { get; init; }

    /// <summary>Strip of a part that is joined edge to edge; 0 for all others.</summary>
    public int Strip { get; init; }

    /// <summary>Whether it is spoiled or gone: it has to be made again, and nothing can be cut from it.</summary>
    public bool Lost { get; init; }
}
