using Casewright.Engine.Cutting.Boards;

namespace Casewright.Engine.Cutting;

/// <summary>Cuts solid stock to length: the one-dimensional twin of <see cref="SheetCutting"/>.</summary>
public static class BoardCutting
{
    /// <summary>Solves a problem. The same problem gives the same answer on every machine.</summary>
    /// <param name="problem">What to cut.</param>
    /// <param name="progress">Is told of better answers and bounds.</param>
    /// <param name="cancellation">Stops the search within about 100 ms.</param>
    /// <exception cref="ArgumentException">A member is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static BoardOutcome Solve(BoardProblem problem, ICuttingProgress? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Solve(problem, new WorkBudget(problem.WorkLimit, null, cancellation), progress);
    }

    /// <summary>Solves a problem for a benchmark: ends by the clock instead of by work, so that runs do not repeat exactly.</summary>
    /// <inheritdoc cref="Solve(BoardProblem, ICuttingProgress?, CancellationToken)"/>
    public static BoardOutcome SolveWithin(
        BoardProblem problem, TimeSpan timeLimit, ICuttingProgress? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Solve(problem, new WorkBudget(long.MaxValue, timeLimit, cancellation), progress);
    }

    private static BoardOutcome Solve(BoardProblem problem, WorkBudget budget, ICuttingProgress? progress)
    {
        var (reduced, options, obstacles) = BoardReducer.Reduce(problem);
        if (reduced is null)
            return new BoardOutcome(null, obstacles);
        if (reduced.Demands.Length == 0)
            return new BoardOutcome(new BoardSolution([], [], 0, 0, 0, 0, Proven: true, 0), []);
        var run = new CuttingRun(reduced, budget, progress);
        return run.Search() is { } incumbent
            ? new BoardOutcome(new BoardWriter(problem, reduced, options).Write(incumbent, budget.Spent), [])
            : new BoardOutcome(null, [run.Obstacle()]);
    }
}
