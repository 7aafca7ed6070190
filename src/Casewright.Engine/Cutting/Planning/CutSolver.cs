namespace Casewright.Engine.Cutting.Planning;

/// <summary>The cutting engine. Boards are cut as sheets one unit wide.</summary>
public sealed class CutSolver : ICutSolver
{
    /// <inheritdoc/>
    public CuttingOutcome Solve(CuttingProblem problem, ICuttingProgress? progress, CancellationToken cancellation) =>
        SheetCutting.Solve(problem, progress, cancellation);

    /// <inheritdoc/>
    public BoardOutcome Solve(BoardProblem problem, ICuttingProgress? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var width = 1 + (2 * problem.EndTrim);
        var sheets = problem.Boards.Select(b => new SheetType(b.Id, b.Length, width, b.Cost, b.Available, b.Cost == 0 ? 0 : 1));
        var demands = problem.Demands.Select(d => d with { Options = [.. d.Options.Select(Narrow)] });
        var rules = new CuttingRules(problem.Kerf, problem.EndTrim, Stages: 2, FirstCut.Across);
        var outcome = SheetCutting.Solve(
            new CuttingProblem([.. sheets], [.. demands], rules, problem.WorkLimit), progress, cancellation);
        return new BoardOutcome(outcome.Solution is { } solution ? Boards(solution) : null, outcome.Obstacles);
    }

    private static CuttingOption Narrow(CuttingOption option) =>
        option with { Pieces = [.. option.Pieces.Select(p => p with { Width = 1, MayTurn = false })] };

    private static BoardSolution Boards(CuttingSolution solution) => new(
        [.. solution.Sheets.Select(Board)],
        solution.Choices,
        solution.Cost,
        solution.LowerBound,
        solution.SheetsUsed,
        solution.SheetsLowerBound,
        solution.Proven,
        solution.Work);

    private static BoardCut Board(SheetCut sheet) => new(
        sheet.SheetType,
        [.. sheet.Pieces.OrderBy(p => p.X).Select(p => new BoardPiece(p.Demand, p.Copy, p.Option, p.Piece, p.X, p.Length))],
        sheet.Offcuts.Select(o => o.Length).DefaultIfEmpty(0).Max());
}
