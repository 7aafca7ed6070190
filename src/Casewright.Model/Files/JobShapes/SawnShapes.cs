using Casewright.Model.Cutting;
using Casewright.Model.Files.Shapes;

namespace Casewright.Model.Files.JobShapes;

/// <summary>What the saw has already made of a job, in a job file.</summary>
internal static class SawnShapes
{
    private const int MostSheets = 5000;
    private const int MostCuts = 2000;
    private const int MostPieces = 2000;
    private const int MostStages = 100;

    private static readonly TextShape s_code = new(60, "^[A-Za-z0-9][A-Za-z0-9_./\\-]*$", "an id of the plan, such as S4 or C3-L/a");

    private static readonly RecordShape<LeftoverPlace> s_leftOver = new("leftOver", "A panel or length left over by a sheet or board that is cut.", f => new(
        f.Required("of", l => l.Id, s_code, "Id of the sheet or board it is left over from."),
        f.Required("x", l => l.X, LengthShape.ZeroOrMore(), "Its corner nearest the origin, along that sheet or board."),
        f.Required("y", l => l.Y, LengthShape.ZeroOrMore(), "The same across the sheet; 0 on a board.")));

    private static readonly RecordShape<SawnCut> s_cut = new("sawnCut", "A cut that was made, or will be as it was planned.", f => new(
        f.Required("kind", c => c.Kind, Choices.CutKind, "Direction."),
        f.Required("stage", c => c.Stage, new CountShape(0, MostStages), "Round of cuts: 0 for edge trim, then 1, 2, 3 ..."),
        f.Required("at", c => c.At, LengthShape.ZeroOrMore(), "Far side of the saw cut, from the raw edge."),
        f.Required("from", c => c.From, LengthShape.ZeroOrMore(), "Where the panel it divides begins, along the cut."),
        f.Required("to", c => c.To, LengthShape.Positive(), "Where that panel ends."),
        f.Required("setting", c => c.Setting, LengthShape.Positive(), "Fence or stop setting.")));

    private static readonly RecordShape<SawnPiece> s_piece = new("sawnPiece", "A piece of a sheet or board that is cut or begun.", f => new()
    {
        Id = f.Required("id", p => p.Id, s_code, "Id written on it."),
        Part = f.Required("part", p => p.Part, s_code, "Id of the part it was cut for."),
        Length = f.Required("length", p => p.Length, LengthShape.Positive(), "Size along the part's length as sawn."),
        Width = f.Required("width", p => p.Width, LengthShape.Positive(), "Size along the part's width as sawn."),
        X = f.Required("x", p => p.X, LengthShape.ZeroOrMore(), "Corner nearest the sheet's origin, along its length from the raw edge."),
        Y = f.Default("y", p => p.Y, LengthShape.ZeroOrMore(), Measure.Length.Zero, "The same across the sheet."),
        Rotated = f.Default("rotated", p => p.Rotated, FlagShape.Instance, false, "Whether its length lies across the sheet."),
        From = f.Required("from", p => p.From, LengthShape.ZeroOrMore(), "Start of the stretch of the finished part that it covers."),
        To = f.Required("to", p => p.To, LengthShape.Positive(), "End of that stretch."),
        AllowanceStart = f.Default("allowanceStart", p => p.AllowanceStart, LengthShape.ZeroOrMore(), Measure.Length.Zero, "Sawn beyond its start."),
        AllowanceEnd = f.Default("allowanceEnd", p => p.AllowanceEnd, LengthShape.ZeroOrMore(), Measure.Length.Zero, "Sawn beyond its end."),
        Strip = f.Default("strip", p => p.Strip, new CountShape(0, MostPieces), 0, "Strip of a part joined edge to edge."),
        Lost = f.Default("lost", p => p.Lost, FlagShape.Instance, false, "true when it is spoiled or gone and has to be made again."),
    });

    private static readonly RecordShape<SawnSheet> s_sheet = new("sawnSheet", "A sheet that is cut or begun: its layout does not change any more.", f => new()
    {
        Id = f.Required("id", s => s.Id, s_code, "Id of its layout, as written on the pieces."),
        Stock = f.Required("stock", s => s.Stock, TextShape.Id, "Id of the sheet stock."),
        Material = f.Required("material", s => s.Material, Ids.Sheet, "Id of the material."),
        Length = f.Required("length", s => s.Length, LengthShape.Positive(), "Size along the grain; x runs along it."),
        Width = f.Required("width", s => s.Width, LengthShape.Positive(), "Size across."),
        Trim = f.Required("trim", s => s.Trim, LengthShape.ZeroOrMore(), "Trim taken off every edge."),
        Kerf = f.Required("kerf", s => s.Kerf, LengthShape.ZeroOrMore(), "Width of the saw cut."),
        Cost = f.Default("cost", s => s.Cost, MoneyShape.Instance, 0, "What it cost: its price when bought, 0 when on hand."),
        Bought = f.Default("bought", s => s.Bought, FlagShape.Instance, false, "Whether it was bought."),
        LeftOver = f.Optional("leftOver", s => s.LeftOver, s_leftOver, "The panel of another sheet that it is; left out for a whole sheet."),
        Cuts = f.Items("cuts", s => s.Cuts, s_cut, 0, MostCuts, "Cuts in working order."),
        Pieces = f.Items("pieces", s => s.Pieces, s_piece, 0, MostPieces, "Pieces, those that no part wants any more among them."),
    })
    {
        Check = (sheet, spot) =>
        {
            for (var i = 0; i < sheet.Pieces.Count; i++)
                CheckPiece(sheet.Pieces[i], sheet.Length, sheet.Width, spot["pieces"][i]);
        },
    };

    private static readonly RecordShape<SawnBoard> s_board = new("sawnBoard", "A board that is cut or begun.", f => new()
    {
        Id = f.Required("id", b => b.Id, s_code, "Id of its layout, as written on the pieces."),
        Stock = f.Required("stock", b => b.Stock, TextShape.Id, "Id of the board stock."),
        Material = f.Required("material", b => b.Material, Ids.Board, "Id of the material."),
        Length = f.Required("length", b => b.Length, LengthShape.Positive(), "Length of the board."),
        Trim = f.Default("trim", b => b.Trim, LengthShape.ZeroOrMore(), Measure.Length.Zero, "Trim taken off each end."),
        Kerf = f.Required("kerf", b => b.Kerf, LengthShape.ZeroOrMore(), "Width of the saw cut."),
        Cost = f.Default("cost", b => b.Cost, MoneyShape.Instance, 0, "What it cost: its price when bought, 0 when on hand."),
        Bought = f.Default("bought", b => b.Bought, FlagShape.Instance, false, "Whether it was bought."),
        LeftOver = f.Optional("leftOver", b => b.LeftOver, s_leftOver, "The length of another board that it is; left out for a whole board."),
        Cuts = f.Items("cuts", b => b.Cuts, LengthShape.ZeroOrMore(), 0, MostCuts, "Far side of each saw cut from the raw end, ascending."),
        Pieces = f.Items("pieces", b => b.Pieces, s_piece, 0, MostPieces, "Pieces, those that no part wants any more among them."),
    })
    {
        Check = (board, spot) =>
        {
            for (var i = 0; i < board.Pieces.Count; i++)
                CheckPiece(board.Pieces[i], board.Length, null, spot["pieces"][i]);
        },
    };

    public static RecordShape<SawnWork> Work { get; } = new("sawn", "What the saw has already made: it stays as it is, and only the rest is planned.", f => new()
    {
        Sheets = f.Items("sheets", w => w.Sheets, s_sheet, 0, MostSheets, "Sheets cut or begun."),
        Boards = f.Items("boards", w => w.Boards, s_board, 0, MostSheets, "Boards cut or begun."),
    })
    {
        Check = (work, spot) =>
        {
            CheckIds([.. work.Sheets.Select(s => (s.Id, s.LeftOver?.Id))], spot["sheets"], "sheet");
            CheckIds([.. work.Boards.Select(b => (b.Id, b.LeftOver?.Id))], spot["boards"], "board");
        },
    };

    private static void CheckPiece(SawnPiece piece, Measure.Length along, Measure.Length? across, Spot spot)
    {
        var (x, y) = piece.Rotated ? (piece.Width, piece.Length) : (piece.Length, piece.Width);
        if (piece.X + x > along || (across is { } width && piece.Y + y > width))
            spot.Fail("The piece reaches beyond its sheet or board.", null, "a piece that lies inside");
        if (piece.From + piece.Length != piece.To + piece.AllowanceStart + piece.AllowanceEnd)
            spot["length"].Fail("The sawn length is not that of its stretch and its allowances.", null, "to - from + allowanceStart + allowanceEnd");
        if (across is null && piece.Rotated)
            spot["rotated"].Fail("A piece cannot lie across a board.", null, "false");
    }

    private static void CheckIds(IReadOnlyList<(string Id, string? Of)> ids, Spot spot, string kind)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < ids.Count; i++)
        {
            if (ids[i].Of is { } of && !seen.Contains(of))
                spot[i]["leftOver"]["of"].Fail("Nothing before this in the list has the id.", null, $"the id of a {kind} earlier in the list");
            if (!seen.Add(ids[i].Id))
                spot[i]["id"].Fail("Two share this id.", null, "an id of its own for each");
        }
    }
}
