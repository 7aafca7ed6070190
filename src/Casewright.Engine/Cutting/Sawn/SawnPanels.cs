using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>A panel that lies on the table when a sheet is cut, in raw coordinates of the sheet; of a board, a length.</summary>
internal readonly record struct SawnPanel(Length X0, Length Y0, Length X1, Length Y1)
{
    public Length SizeX => X1 - X0;

    public Length SizeY => Y1 - Y0;

    public static SawnPanel Of(SawnPiece piece, Length? boardWidth = null)
    {
        var (x, y) = piece.Rotated ? (piece.Width, piece.Length) : (piece.Length, piece.Width);
        return new(piece.X, piece.Y, piece.X + x, piece.Y + (boardWidth ?? y));
    }
}

/// <summary>What the cuts of a sheet or board leave on the table.</summary>
internal static class SawnPanels
{
    /// <summary>The panels of a sheet within its usable area, in no order. A cut that finds no panel changes nothing.</summary>
    public static IEnumerable<SawnPanel> Of(SawnSheet sheet)
    {
        var table = new List<SawnPanel> { new(Length.Zero, Length.Zero, sheet.Length, sheet.Width) };
        foreach (var cut in sheet.Cuts)
        {
            var place = table.FindIndex(panel => RunsThrough(cut, sheet.Kerf, panel));
            if (place < 0)
                continue;
            var panel = table[place];
            table.RemoveAt(place);
            var near = cut.At - sheet.Kerf;
            SawnPanel[] sides = cut.Kind == CutKind.Rip ? [panel with { Y1 = near }, panel with { Y0 = cut.At }] : [panel with { X1 = near }, panel with { X0 = cut.At }];
            table.AddRange(sides.Where(side => side.SizeX > Length.Zero && side.SizeY > Length.Zero));
        }

        return table.Select(panel => Within(panel, sheet)).Where(panel => panel.SizeX > Length.Zero && panel.SizeY > Length.Zero);
    }

    /// <summary>The lengths of a board between its cuts, from the raw end; as wide as nothing, since a board has no place across it.</summary>
    public static IEnumerable<SawnPanel> Of(SawnBoard board)
    {
        var start = Length.Zero;
        foreach (var cut in board.Cuts)
        {
            if (cut - board.Kerf > start)
                yield return new(start, Length.Zero, cut - board.Kerf, Length.Zero);
            start = Length.Max(start, cut);
        }

        if (start < board.Length)
            yield return new(start, Length.Zero, board.Length, Length.Zero);
    }

    private static bool RunsThrough(SawnCut cut, Length kerf, SawnPanel panel)
    {
        var rip = cut.Kind == CutKind.Rip;
        var (from, to) = rip ? (panel.X0, panel.X1) : (panel.Y0, panel.Y1);
        var (low, high) = rip ? (panel.Y0, panel.Y1) : (panel.X0, panel.X1);
        var near = cut.At - kerf;
        return cut.From == from && cut.To == to && (kerf == Length.Zero ? low < near && near < high : near < high && low < cut.At);
    }

    private static SawnPanel Within(SawnPanel panel, SawnSheet sheet) => new(
        Length.Max(panel.X0, sheet.Trim),
        Length.Max(panel.Y0, sheet.Trim),
        Length.Min(panel.X1, sheet.Length - sheet.Trim),
        Length.Min(panel.Y1, sheet.Width - sheet.Trim));
}
