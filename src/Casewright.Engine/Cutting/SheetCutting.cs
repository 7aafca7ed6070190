using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting;

/// <summary>Cuts parts from sheets: chooses for every part how it is made and lays out every sheet, at the least cost found, with a bound that no answer can beat.</summary>
public static class SheetCutting
{
    /// <summary>Solves a problem. The same problem gives the same answer on every machine.</summary>
    /// <param name="problem">What to cut.</param>
    /// <param name="progress">Is told of better answers and bounds.</param>
    /// <param name="cancellation">Stops the search within about 100 ms.</param>
    /// <exception cref="ArgumentException">A member is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static CuttingOutcome Solve(CuttingProblem problem, ICuttingProgress? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Solve(problem, new WorkBudget(problem.Start is null ? problem.WorkLimit : Math.Max(1, problem.WorkLimit / 3), null, cancellation), progress);
    }

    /// <summary>Solves a problem for a benchmark: ends by the clock instead of by work, so that runs do not repeat exactly.</summary>
    /// <inheritdoc cref="Solve(CuttingProblem, ICuttingProgress?, CancellationToken)"/>
    public static CuttingOutcome SolveWithin(
        CuttingProblem problem, TimeSpan timeLimit, ICuttingProgress? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Solve(problem, new WorkBudget(long.MaxValue, timeLimit, cancellation), progress);
    }

    private static CuttingOutcome Solve(CuttingProblem problem, WorkBudget budget, ICuttingProgress? progress)
    {
        var (reduced, obstacles) = ProblemReducer.Reduce(problem);
        if (reduced is null)
            return new CuttingOutcome(null, obstacles);
        if (reduced.Demands.Length == 0)
            return new CuttingOutcome(new CuttingSolution([], [], 0, 0, 0, 0, Proven: true, 0), []);
        return new CuttingRun(reduced, budget, progress).Run();
    }
}
