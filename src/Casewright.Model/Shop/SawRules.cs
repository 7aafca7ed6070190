using Casewright.Model.Measure;

namespace Casewright.Model.Shop;

/// <summary>Which way the first cuts of a sheet go.</summary>
public enum FirstCut
{
    /// <summary>Rips along the sheet's length first, crosscuts after: the safe and usual way.</summary>
    Rip,

    /// <summary>Crosscuts first.</summary>
    Crosscut,

    /// <summary>Whichever uses less, sheet by sheet.</summary>
    Either,
}

/// <summary>How sheets and boards are sawn.</summary>
public sealed record SawRules
{
    /// <summary>Width of the saw cut; not negative. Zero only for stock that is sheared, not sawn.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Cut off every factory edge of a sheet before it is used; not negative.</summary>
    public required Length EdgeTrim { get; init; }

    /// <summary>Cut off each end of a board; not negative.</summary>
    public Length BoardEndTrim { get; init; }

    /// <summary>Rounds of cuts, the sheet turned between them: 2, 3, or null when there is no limit.</summary>
    public int? Stages { get; init; } = 3;

    /// <summary>Direction of the first round.</summary>
    public FirstCut FirstCut { get; init; } = FirstCut.Rip;

    /// <summary>What decides between layouts of one cost.</summary>
    public SheetAim Aim { get; init; }

    /// <summary>Longest rip that the saw takes; null when there is no limit.</summary>
    public Length? LongestRip { get; init; }

    /// <summary>Narrowest strip that may be ripped; null when there is no limit.</summary>
    public Length? NarrowestStrip { get; init; }

    /// <summary>Smallest leftover worth keeping, along the grain.</summary>
    public Length KeepLength { get; init; } = Length.FromMillimetres(300);

    /// <summary>Smallest leftover worth keeping, across the grain.</summary>
    public Length KeepWidth { get; init; } = Length.FromMillimetres(100);
}
