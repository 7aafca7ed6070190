using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// What is sawn stays: every sheet and board of the record is in the plan as it was cut, nothing else is called sawn, only good pieces
/// of the record lie on them, and no piece is cut anew while a good one like it is there.
/// </summary>
internal sealed class SawnStays : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var work = evidence.Job.Sawn ?? new();
        return work.Sheets.SelectMany(sheet => Sheet(evidence, sheet))
            .Concat(work.Boards.SelectMany(board => Board(evidence, board)))
            .Concat(Invented(evidence, work))
            .Concat(Anew(evidence, work));
    }

    private static IEnumerable<Problem> Sheet(Evidence evidence, SawnSheet sheet)
    {
        var place = $"sheets[{sheet.Id}]";
        if (evidence.Plan.Sheets.FirstOrDefault(candidate => candidate.Id == sheet.Id) is not { Sawn: true } found)
            return [new Problem(place, "A sheet that is sawn is not in the plan as such.", "nothing", "the sheet as it was cut")];
        var same = (found.Stock, found.Material, found.Length, found.Width, found.Trim, found.Kerf, found.Cost, found.Bought, found.LeftOver)
            == (sheet.Stock, sheet.Material, sheet.Length, sheet.Width, sheet.Trim, sheet.Kerf, sheet.Cost, sheet.Bought, sheet.LeftOver);
        var cuts = found.Cuts.Select(cut => Far(cut, sheet.Kerf)).SequenceEqual(sheet.Cuts);
        return (same && cuts ? [] : new[] { new Problem(place, "A sheet that is sawn is not as it was cut.", $"{found.Cuts.Count} cuts of {found.Stock}", $"{sheet.Cuts.Count} cuts of {sheet.Stock}, as recorded") })
            .Concat(Pieces(evidence.PiecesOn(found), sheet.Id, sheet.Pieces));
    }

    private static IEnumerable<Problem> Board(Evidence evidence, SawnBoard board)
    {
        var place = $"boards[{board.Id}]";
        if (evidence.Plan.Boards.FirstOrDefault(candidate => candidate.Id == board.Id) is not { Sawn: true } found)
            return [new Problem(place, "A board that is sawn is not in the plan as such.", "nothing", "the board as it was cut")];
        var same = (found.Stock, found.Material, found.Length, found.Trim, found.Kerf, found.Cost, found.Bought, found.LeftOver)
            == (board.Stock, board.Material, board.Length, board.Trim, board.Kerf, board.Cost, board.Bought, board.LeftOver);
        var cuts = found.Cuts.Select(cut => cut + board.Kerf).SequenceEqual(board.Cuts);
        return (same && cuts ? [] : new[] { new Problem(place, "A board that is sawn is not as it was cut.", $"{found.Cuts.Count} cuts of {found.Stock}", $"{board.Cuts.Count} cuts of {board.Stock}, as recorded") })
            .Concat(Pieces(evidence.PiecesOn(found), board.Id, board.Pieces));
    }

    private static IEnumerable<Problem> Pieces(IEnumerable<Piece> pieces, string stock, IEnumerable<SawnPiece> record)
    {
        var good = record.Where(piece => !piece.Lost).Select(Figures.Of).ToHashSet();
        return from piece in pieces
               where !good.Contains(Figures.Of(piece))
               select new Problem($"pieces[{piece.Id}]", $"No good piece of these figures was sawn from {stock}.", $"{piece.Length} × {piece.Width} at {piece.X}, {piece.Y}", "a piece of the record that is not lost");
    }

    private static IEnumerable<Problem> Invented(Evidence evidence, SawnWork work)
    {
        foreach (var sheet in evidence.Plan.Sheets.Where(sheet => sheet.Sawn && work.Sheets.All(known => known.Id != sheet.Id)))
            yield return new($"sheets[{sheet.Id}].sawn", "The job has no record that this sheet is sawn.", "sawn", "not sawn");
        foreach (var board in evidence.Plan.Boards.Where(board => board.Sawn && work.Boards.All(known => known.Id != board.Id)))
            yield return new($"boards[{board.Id}].sawn", "The job has no record that this board is sawn.", "sawn", "not sawn");
    }

    private static IEnumerable<Problem> Anew(Evidence evidence, SawnWork work)
    {
        var sheets = work.Sheets.SelectMany(sheet => sheet.Pieces.Where(piece => !piece.Lost).Select(piece => (sheet.Id, sheet.Material, Piece: piece)));
        var boards = work.Boards.SelectMany(board => board.Pieces.Where(piece => !piece.Lost).Select(piece => (board.Id, board.Material, Piece: piece)));
        var there = sheets.Concat(boards).ToLookup(sawn => (sawn.Material, sawn.Piece.Id, Figures.Of(sawn.Piece).Cut, sawn.Piece.Rotated));
        var sawnIds = work.Sheets.Select(sheet => (sheet.Id, false)).Concat(work.Boards.Select(board => (board.Id, true))).ToHashSet();
        return from piece in evidence.Plan.Pieces
               where !sawnIds.Contains((piece.Stock, piece.FromBoard))
               let material = evidence.Part(piece.Part)?.Material ?? ""
               from sawn in there[(material, piece.Id, Figures.Of(piece).Cut, piece.Rotated)]
               select new Problem($"pieces[{piece.Id}].stock", "The piece is cut anew though a good one is there.", piece.Stock, sawn.Id);
    }

    private static SawnCut Far(Cut cut, Length kerf) => cut.Kind == CutKind.Rip
        ? new(cut.Kind, cut.Stage, cut.Y0 + kerf, cut.X0, cut.X1, cut.Setting)
        : new(cut.Kind, cut.Stage, cut.X0 + kerf, cut.Y0, cut.Y1, cut.Setting);

    /// <summary>What a piece is: its name and size, the stretch that it covers, and its place.</summary>
    private sealed record Figures(CutFigures Cut, Length X, Length Y, bool Rotated)
    {
        public static Figures Of(Piece p) => new(new(p.Id, p.Part, p.Length, p.Width, p.From, p.To, p.AllowanceStart, p.AllowanceEnd, p.Strip), p.X, p.Y, p.Rotated);

        public static Figures Of(SawnPiece p) => new(new(p.Id, p.Part, p.Length, p.Width, p.From, p.To, p.AllowanceStart, p.AllowanceEnd, p.Strip), p.X, p.Y, p.Rotated);
    }

    private sealed record CutFigures(
        string Id, string Part, Length Length, Length Width, Length From, Length To, Length AllowanceStart, Length AllowanceEnd, int Strip);
}
