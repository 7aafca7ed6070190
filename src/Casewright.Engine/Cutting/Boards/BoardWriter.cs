using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;
using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Boards;

/// <summary>Turns layouts of boards into pieces at their places, longest first.</summary>
internal sealed class BoardWriter(BoardProblem problem, ReducedProblem reduced, int[][] options)
{
    public BoardSolution Write(Incumbent incumbent, long work)
    {
        var choices = new List<CopyChoice>();
        var waiting = SolutionWriter.Wait(reduced, incumbent.OptionCounts, choices);
        var boards = incumbent.Layouts.Select(l => Board(reduced.Sheets[l.Sheet], l.Layout, waiting)).ToValueList();
        var prices = reduced.Prices;
        return new BoardSolution(
            boards, choices.Select(c => c with { Option = options[c.Demand][c.Option] }).ToValueList(), prices.ToPrice(incumbent.Cost),
            prices.ToPrice(incumbent.CostBound), boards.Count, incumbent.SheetBound, incumbent.IsProven, work);
    }

    private BoardCut Board(SheetKind kind, LayoutTree layout, Queue<PieceCopy>[] waiting)
    {
        var board = problem.Boards[kind.Index];
        var stretches = ClearStretches.Of(board, problem.Kerf, problem.EndTrim);
        var pieces = new List<BoardPiece>();
        var longestRest = 0L;
        // Stretches of one length serve alike, so a filling goes to the first of its length still free.
        var fillings = (kind.Segments is null ? [layout] : layout.Parts).ToList();
        foreach (var (from, to) in stretches)
        {
            var filling = fillings.Find(f => f.SizeX == to - from + problem.Kerf);
            if (filling is not null)
                fillings.Remove(filling);
            var end = filling is null ? from : Place(filling, from, waiting, pieces);
            longestRest = Math.Max(longestRest, to - end);
        }

        return new BoardCut(kind.Index, pieces.ToValueList(), longestRest);
    }

    private long Place(LayoutTree filling, long at, Queue<PieceCopy>[] waiting, List<BoardPiece> pieces)
    {
        foreach (var kind in Kinds(filling).OrderByDescending(k => reduced.Kinds[k].SizeX).ThenBy(k => k))
        {
            var copy = waiting[kind].Dequeue();
            pieces.Add(new BoardPiece(copy.Demand, copy.Copy, options[copy.Demand][copy.Option], copy.Piece, at, copy.Length));
            at += reduced.Kinds[kind].SizeX;
        }

        return at;
    }

    private static IEnumerable<int> Kinds(LayoutTree tree) => tree.IsPiece ? [tree.Kind] : tree.Parts.SelectMany(Kinds);
}
