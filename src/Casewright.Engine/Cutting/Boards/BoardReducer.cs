using System.Globalization;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Boards;

/// <summary>Sees boards as sheets of width 1, so that one engine serves both.</summary>
internal sealed class BoardReducer
{
    private readonly BoardProblem _problem;
    private readonly List<CuttingObstacle> _obstacles = [];

    private BoardReducer(BoardProblem problem) => _problem = problem;

    /// <summary>Options of every demand that some board can give, as indexes into the problem.</summary>
    public static (ReducedProblem? Problem, int[][] Options, ValueList<CuttingObstacle> Obstacles) Reduce(BoardProblem problem)
    {
        Check(problem);
        var reducer = new BoardReducer(problem);
        var options = problem.Demands.Select(reducer.Usable).ToArray();
        if (reducer._obstacles.Count > 0)
            return (null, options, reducer._obstacles.ToValueList());
        var (reduced, obstacles) = ProblemReducer.Reduce(reducer.AsSheets(options));
        if (reduced is null)
            return (null, options, obstacles);
        SheetKind[] boards = [.. reduced.Sheets.Select(s => s with { Segments = reducer.Segments(problem.Boards[s.Index]) })];
        return (reduced with { IsBoards = true, Sheets = boards }, options, obstacles);
    }

    private static void Check(BoardProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        for (var b = 0; b < problem.Boards.Count; b++)
        {
            if (problem.Boards[b].Defects.Any(d => d.From < 0 || d.To <= d.From))
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Boards[{b}] has a defect that ends before it starts."));
        }
    }

    private CuttingProblem AsSheets(int[][] options)
    {
        var trim = _problem.EndTrim;
        return new CuttingProblem(
            _problem.Boards.Select(b => new SheetType(b.Id, b.Length, 1 + (2 * trim), b.Cost, b.Available)).ToValueList(),
            _problem.Demands.Select((d, i) => d with { Options = options[i].Select(o => Narrow(d.Options[o])).ToValueList() }).ToValueList(),
            new CuttingRules(_problem.Kerf, trim, Stages: null, FirstCut.Across),
            _problem.WorkLimit);
    }

    private static CuttingOption Narrow(CuttingOption option) =>
        option with { Pieces = option.Pieces.Select(p => new CuttingPiece(p.Length, 1, MayTurn: false)).ToValueList() };

    private int[] Usable(CuttingDemand demand)
    {
        var longest = _problem.Boards.Where(b => b.Available is not 0).SelectMany(Clear).Select(c => c.To - c.From).DefaultIfEmpty(0).Max();
        int[] usable = [.. Enumerable.Range(0, demand.Options.Count).Where(o => demand.Options[o].Pieces.All(p => p.Length <= longest))];
        if (usable.Length == 0 && demand.Count > 0)
        {
            _obstacles.Add(new CuttingObstacle(ObstacleKind.FitsNoSheet, demand.Id, string.Create(CultureInfo.InvariantCulture,
                $"{demand.Id}: a piece of {demand.Options.Min(o => o.Pieces.Max(p => p.Length))} is longer than any clear stretch of the boards; the longest is {longest}, {_problem.EndTrim} trimmed off each end.")));
        }

        return usable.Length == 0 ? [.. Enumerable.Range(0, demand.Options.Count)] : usable;
    }

    private long[]? Segments(BoardType board) =>
        board.Defects.Count == 0 ? null : [.. Clear(board).Select(c => c.To - c.From + _problem.Kerf)];

    private List<(long From, long To)> Clear(BoardType board) => ClearStretches.Of(board, _problem.Kerf, _problem.EndTrim);
}
