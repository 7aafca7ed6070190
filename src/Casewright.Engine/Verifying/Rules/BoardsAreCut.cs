using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Boards: pieces lie within the end trims, and the crosscuts, made in order, leave every piece as exactly one length between two
/// cuts; what is left at the far end is stated truly.
/// </summary>
internal sealed class BoardsAreCut : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Plan.Boards.SelectMany(board => Board(evidence, board));

    private static IEnumerable<Problem> Board(Evidence evidence, BoardLayout board)
    {
        var pieces = evidence.PiecesOn(board).OrderBy(piece => piece.X).ToList();
        return Cuts(board).Concat(Pieces(board, pieces)).Concat(board.Sawn ? LeftOfSawn(evidence, board, pieces) : Left(board, pieces));
    }

    private static IEnumerable<Problem> Cuts(BoardLayout board)
    {
        for (var i = 1; i < board.Cuts.Count; i++)
        {
            if (board.Cuts[i] <= board.Cuts[i - 1])
                yield return new($"boards[{board.Id}].cuts[{i + 1}]", "The cuts do not follow each other along the board.", $"{board.Cuts[i]} after {board.Cuts[i - 1]}", "each beyond the one before");
        }

        for (var i = 0; i < board.Cuts.Count; i++)
        {
            if (board.Cuts[i] + board.Kerf <= Length.Zero || board.Cuts[i] >= board.Length)
                yield return new($"boards[{board.Id}].cuts[{i + 1}]", "The cut misses the board.", $"{board.Cuts[i]}", $"within {board.Length}");
        }
    }

    private static IEnumerable<Problem> Pieces(BoardLayout board, List<Piece> pieces)
    {
        var lengths = Lengths(board).ToHashSet();
        foreach (var piece in pieces)
        {
            var (from, to) = (piece.X, piece.X + piece.Length);
            if (piece.Y != Length.Zero)
                yield return new($"pieces[{piece.Id}].y", "A piece of a board has no place across it.", $"{piece.Y}", "0 mm");
            if (from < board.Trim || to > board.Length - board.Trim)
                yield return new($"pieces[{piece.Id}]", $"The piece reaches into the end trim of board {board.Id}.", $"{from} to {to}", $"{board.Trim} to {board.Length - board.Trim}");
            if (!lengths.Remove((from, to)))
                yield return new($"pieces[{piece.Id}]", $"The cuts of board {board.Id} do not leave this length.", $"{from} to {to}", "a cut at each end of it, and a length for each piece");
        }
    }

    /// <summary>What lies between the cuts, from the raw end.</summary>
    internal static IEnumerable<(Length From, Length To)> Lengths(BoardLayout board)
    {
        var start = Length.Zero;
        foreach (var cut in board.Cuts)
        {
            if (cut > start)
                yield return (start, cut);
            start = Length.Max(start, cut + board.Kerf);
        }

        if (start < board.Length)
            yield return (start, board.Length);
    }

    /// <summary>Of a sawn board the longest length is left that is no piece, none lost, not cut up further and worth keeping.</summary>
    private static IEnumerable<Problem> LeftOfSawn(Evidence evidence, BoardLayout board, List<Piece> pieces)
    {
        var taken = pieces.Select(piece => piece.X)
            .Concat(evidence.Plan.Boards.Where(other => other.LeftOver?.Id == board.Id).Select(other => other.LeftOver!.X))
            .Concat(evidence.Lost(board.Id, fromBoard: true).Select(lost => lost.X))
            .ToHashSet();
        var left = Lengths(board).Where(length => !taken.Contains(length.From)).Select(length => length.To - length.From)
            .Where(length => length >= evidence.Job.Shop.Saw.KeepLength).DefaultIfEmpty(Length.Zero).Max();
        if (board.Left != left)
            yield return new($"boards[{board.Id}].left", "What is left of the board is stated wrongly.", $"{board.Left}", $"{left}");
    }

    private static IEnumerable<Problem> Left(BoardLayout board, List<Piece> pieces)
    {
        if (pieces.Count == 0)
            yield break;

        var end = pieces.Max(piece => piece.X + piece.Length);
        var left = Length.Max(Length.Zero, board.Length - board.Trim - end - board.Kerf);
        if (board.Left != left)
            yield return new($"boards[{board.Id}].left", "What is left of the board is stated wrongly.", $"{board.Left}", $"{left}");
    }
}
