using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>An earlier answer to a problem much like this one: the search starts from it and ends no worse, as far as it still holds.</summary>
/// <param name="Sheets">Its sheets; pieces of sizes that are no longer wanted leave their places free.</param>
/// <param name="OptionCounts">How many copies took each option, by demand and option of the present problem; shortfalls are made up.</param>
public sealed record CuttingStart(ValueList<StartSheet> Sheets, ValueList<ValueList<int>> OptionCounts);

/// <summary>A sheet of an earlier answer.</summary>
/// <param name="SheetType">Index of the kind of sheet in the present problem.</param>
/// <param name="Pieces">Where its pieces lie.</param>
public sealed record StartSheet(int SheetType, ValueList<StartPiece> Pieces);

/// <summary>A piece of an earlier answer, in raw sheet coordinates.</summary>
/// <param name="X">Corner nearest the origin, along the length.</param>
/// <param name="Y">The same, across.</param>
/// <param name="SizeX">Size along the sheet.</param>
/// <param name="SizeY">Size across.</param>
public sealed record StartPiece(long X, long Y, long SizeX, long SizeY);

/// <summary>What decides between answers of one cost.</summary>
public enum LayoutAim
{
    /// <summary>Fewest fence settings over all sheets, then fewest cuts, then rests in one piece.</summary>
    FewestSettings,

    /// <summary>The most useful rests in one piece, then fewest settings, then fewest cuts.</summary>
    LargestOffcut,
}
