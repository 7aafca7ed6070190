namespace Casewright.Model.Shop;

/// <summary>What decides between sheet layouts of one cost.</summary>
public enum SheetAim
{
    /// <summary>The fewest fence settings over all sheets, then the fewest cuts: quickest at the saw.</summary>
    FewestSettings,

    /// <summary>The most useful offcut in one piece, then the fewest settings: best for the rack.</summary>
    LargestOffcut,
}
