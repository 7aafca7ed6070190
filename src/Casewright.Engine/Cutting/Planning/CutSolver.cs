namespace Casewright.Engine.Cutting.Planning;

/// <summary>The cutting engine.</summary>
public sealed class CutSolver : ICutSolver
{
    /// <inheritdoc/>
    public CuttingOutcome Solve(CuttingProblem problem, ICuttingProgress? progress, CancellationToken cancellation) =>
        SheetCutting.Solve(problem, progress, cancellation);

    /// <inheritdoc/>
    public BoardOutcome Solve(BoardProblem problem, ICuttingProgress? progress, CancellationToken cancellation) =>
        BoardCutting.Solve(problem, progress, cancellation);
}
