using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Cutting;

/// <summary>One board and the crosscuts that turn it into pieces.</summary>
public sealed record BoardLayout
{
    /// <summary>Stable id, such as B7.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the board stock.</summary>
    public required string Stock { get; init; }

    /// <summary>Id of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Length of the board.</summary>
    public required Length Length { get; init; }

    /// <summary>Trim taken off each end.</summary>
    public required Length Trim { get; init; }

    /// <summary>Width of the saw cut.</summary>
    public required Length Kerf { get; init; }

    /// <summary>What it costs: its price when bought, zero when on hand.</summary>
    public required decimal Cost { get; init; }

    /// <summary>Whether it has to be bought.</summary>
    public required bool Bought { get; init; }

    /// <summary>Positions of the low side of each saw cut from the raw end, ascending.</summary>
    public required ValueList<Length> Cuts { get; init; }

    /// <summary>Length left over at the far end, end trim not counted.</summary>
    public Length Left { get; init; }

    /// <summary>Whether it is cut or begun already: it does not change any more.</summary>
    public bool Sawn { get; init; }

    /// <summary>The length of a board already cut that it is; null for a board of the job's stock.</summary>
    public LeftoverPlace? LeftOver { get; init; }
}
