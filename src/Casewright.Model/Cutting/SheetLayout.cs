using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Cutting;

/// <summary>Direction of a cut on its sheet.</summary>
public enum CutKind
{
    /// <summary>Along the sheet's length.</summary>
    Rip,

    /// <summary>Across it.</summary>
    Crosscut,
}

/// <summary>One saw cut, edge to edge of the panel it divides. The line runs at the low side of the kerf.</summary>
/// <param name="Order">Its turn on this sheet, from 1.</param>
/// <param name="Kind">Rip or crosscut.</param>
/// <param name="Stage">Round of cuts it belongs to: 0 for edge trim, then 1, 2, 3 ...</param>
/// <param name="X0">Start, along the sheet's length from its raw edge.</param>
/// <param name="Y0">Start, across the sheet from its raw edge.</param>
/// <param name="X1">End, along.</param>
/// <param name="Y1">End, across.</param>
/// <param name="Setting">Fence or stop setting: the size of what comes off or stays against the fence.</param>
public sealed record Cut(int Order, CutKind Kind, int Stage, Length X0, Length Y0, Length X1, Length Y1, Length Setting);

/// <summary>A rectangle left over on a sheet and worth keeping.</summary>
/// <param name="X">Corner nearest the sheet's origin, along its length.</param>
/// <param name="Y">Corner nearest the sheet's origin, across.</param>
/// <param name="Length">Size along the sheet's length.</param>
/// <param name="Width">Size across.</param>
public sealed record KeptOffcut(Length X, Length Y, Length Length, Length Width);

/// <summary>One sheet and the guillotine cuts that turn it into pieces.</summary>
public sealed record SheetLayout
{
    /// <summary>Stable id, such as S4.</summary>
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

    /// <summary>What it costs: its price when bought, zero when on hand.</summary>
    public required decimal Cost { get; init; }

    /// <summary>Whether it has to be bought.</summary>
    public required bool Bought { get; init; }

    /// <summary>Cuts in working order.</summary>
    public required ValueList<Cut> Cuts { get; init; }

    /// <summary>Leftovers worth keeping.</summary>
    public ValueList<KeptOffcut> Offcuts { get; init; } = [];

    /// <summary>Whether it is cut or begun already: its layout does not change any more.</summary>
    public bool Sawn { get; init; }

    /// <summary>The panel of a sheet already cut that it is; null for a sheet or offcut of the job's stock.</summary>
    public LeftoverPlace? LeftOver { get; init; }
}
