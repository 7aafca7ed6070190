using Casewright.Model.Measure;

namespace Casewright.Model.Cutting;

/// <summary>What is cut from one sheet or board: a whole part, or one length of a spliced part.</summary>
public sealed record Piece
{
    /// <summary>Stable id, such as C3-L/a.</summary>
    public required string Id { get; init; }

    /// <summary>Id of its part.</summary>
    public required string Part { get; init; }

    /// <summary>Id of the sheet or board layout it is cut from.</summary>
    public required string Stock { get; init; }

    /// <summary>Whether <see cref="Stock"/> is a board.</summary>
    public required bool FromBoard { get; init; }

    /// <summary>Size along the part's length as sawn, allowances and joint included.</summary>
    public required Length Length { get; init; }

    /// <summary>Size along the part's width as sawn.</summary>
    public required Length Width { get; init; }

    /// <summary>Corner nearest the sheet's origin, along the sheet's length from its raw edge; along a board from its raw end.</summary>
    public required Length X { get; init; }

    /// <summary>Corner nearest the sheet's origin, across the sheet from its raw edge; zero on a board.</summary>
    public required Length Y { get; init; }

    /// <summary>Whether the piece's length lies across the sheet.</summary>
    public bool Rotated { get; init; }

    /// <summary>Start of the stretch of the finished part that this piece covers, at the joint line.</summary>
    public required Length From { get; init; }

    /// <summary>End of the stretch of the finished part that this piece covers, at the joint line.</summary>
    public required Length To { get; init; }

    /// <summary>Sawn beyond the stretch at its start: squaring, half a lap or scarf, or the outer end's trim.</summary>
    public Length AllowanceStart { get; init; }

    /// <summary>Sawn beyond the stretch at its end.</summary>
    public Length AllowanceEnd { get; init; }

    /// <summary>Strip of a part that is joined edge to edge, from 0 at the reference edge; 0 for all others.</summary>
    public int Strip { get; init; }
}
