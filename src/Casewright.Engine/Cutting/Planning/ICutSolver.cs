namespace Casewright.Engine.Cutting.Planning;

/// <summary>Solves cutting problems; the planner's way to the cutting engine.</summary>
public interface ICutSolver
{
    /// <summary>Cuts sheets.</summary>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    CuttingOutcome Solve(CuttingProblem problem, ICuttingProgress? progress, CancellationToken cancellation);

    /// <summary>Cuts boards.</summary>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    BoardOutcome Solve(BoardProblem problem, ICuttingProgress? progress, CancellationToken cancellation);
}
