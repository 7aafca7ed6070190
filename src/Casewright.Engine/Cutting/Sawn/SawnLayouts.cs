using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>Sawn sheets and boards as layouts of a plan, and back.</summary>
internal static class SawnLayouts
{
    /// <summary>A sawn sheet in a plan.</summary>
    public static SheetLayout Of(SawnSheet sheet, ValueList<KeptOffcut> offcuts) => new()
    {
        Id = sheet.Id,
        Stock = sheet.Stock,
        Material = sheet.Material,
        Length = sheet.Length,
        Width = sheet.Width,
        Trim = sheet.Trim,
        Kerf = sheet.Kerf,
        Cost = sheet.Cost,
        Bought = sheet.Bought,
        Cuts = [.. sheet.Cuts.Index().Select(c => Cut(c.Item, c.Index + 1, sheet.Kerf))],
        Offcuts = offcuts,
        Sawn = true,
        LeftOver = sheet.LeftOver,
    };

    /// <summary>A sawn board in a plan.</summary>
    public static BoardLayout Of(SawnBoard board, Length left) => new()
    {
        Id = board.Id,
        Stock = board.Stock,
        Material = board.Material,
        Length = board.Length,
        Trim = board.Trim,
        Kerf = board.Kerf,
        Cost = board.Cost,
        Bought = board.Bought,
        Cuts = [.. board.Cuts.Select(c => c - board.Kerf)],
        Left = left,
        Sawn = true,
        LeftOver = board.LeftOver,
    };

    /// <summary>A sheet of a plan, once it is cut.</summary>
    public static SawnSheet Of(SheetLayout sheet, IEnumerable<SawnPiece> pieces) => new()
    {
        Id = sheet.Id,
        Stock = sheet.Stock,
        Material = sheet.Material,
        Length = sheet.Length,
        Width = sheet.Width,
        Trim = sheet.Trim,
        Kerf = sheet.Kerf,
        Cost = sheet.Cost,
        Bought = sheet.Bought,
        LeftOver = sheet.LeftOver,
        Cuts = [.. sheet.Cuts.Select(c => Cut(c, sheet.Kerf))],
        Pieces = pieces.ToValueList(),
    };

    /// <summary>A board of a plan, once it is cut.</summary>
    public static SawnBoard Of(BoardLayout board, IEnumerable<SawnPiece> pieces) => new()
    {
        Id = board.Id,
        Stock = board.Stock,
        Material = board.Material,
        Length = board.Length,
        Trim = board.Trim,
        Kerf = board.Kerf,
        Cost = board.Cost,
        Bought = board.Bought,
        LeftOver = board.LeftOver,
        Cuts = [.. board.Cuts.Select(c => c + board.Kerf)],
        Pieces = pieces.ToValueList(),
    };

    /// <summary>A piece of a plan, once it is sawn.</summary>
    public static SawnPiece Of(Piece piece, bool lost) => new()
    {
        Id = piece.Id,
        Part = piece.Part,
        Length = piece.Length,
        Width = piece.Width,
        X = piece.X,
        Y = piece.Y,
        Rotated = piece.Rotated,
        From = piece.From,
        To = piece.To,
        AllowanceStart = piece.AllowanceStart,
        AllowanceEnd = piece.AllowanceEnd,
        Strip = piece.Strip,
        Lost = lost,
    };

    private static Cut Cut(SawnCut cut, int order, Length kerf)
    {
        var near = cut.At - kerf;
        return cut.Kind == CutKind.Rip
            ? new(order, cut.Kind, cut.Stage, cut.From, near, cut.To, near, cut.Setting)
            : new(order, cut.Kind, cut.Stage, near, cut.From, near, cut.To, cut.Setting);
    }

    private static SawnCut Cut(Cut cut, Length kerf) => cut.Kind == CutKind.Rip
        ? new(cut.Kind, cut.Stage, cut.Y0 + kerf, cut.X0, cut.X1, cut.Setting)
        : new(cut.Kind, cut.Stage, cut.X0 + kerf, cut.Y0, cut.Y1, cut.Setting);
}
