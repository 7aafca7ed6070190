using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Papers.Documents;

/// <summary>Sheets that are cut alike; only the codes of the pieces differ.</summary>
/// <param name="Sheets">The sheets, in the order of the plan.</param>
/// <param name="Places">The pieces of the first sheet, in reading order; each other sheet has one of the same size in the same place.</param>
public sealed record SheetGroup(ValueList<SheetLayout> Sheets, ValueList<Piece> Places)
{
    /// <summary>One of them, for what they share.</summary>
    public SheetLayout First => Sheets[0];
}

/// <summary>Puts alike sheets together.</summary>
public static class SheetGroups
{
    /// <summary>Groups in the order of their first sheet.</summary>
    public static IReadOnlyList<SheetGroup> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return [.. index.Plan.Cutting.Sheets
            .GroupBy(sheet => Key.Of(sheet, index.PiecesFrom(sheet.Id)))
            .Select(group => new SheetGroup(group.ToValueList(), index.PiecesFrom(group.First().Id).ToValueList()))];
    }

    private sealed record Place(Length X, Length Y, Length Length, Length Width, bool Rotated);

    private sealed record Key(string Stock, bool Sawn, bool LeftOver, Length Length, Length Width, Length Trim, ValueList<Cut> Cuts, ValueList<KeptOffcut> Offcuts, ValueList<Place> Places)
    {
        public static Key Of(SheetLayout sheet, IReadOnlyList<Piece> pieces) => new(
            sheet.Stock, sheet.Sawn, sheet.LeftOver is not null, sheet.Length, sheet.Width, sheet.Trim, sheet.Cuts, sheet.Offcuts,
            pieces.Select(piece => new Place(piece.X, piece.Y, piece.Length, piece.Width, piece.Rotated)).ToValueList());
    }
}
