using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;
using Google.OrTools.LinearSolver;

namespace Casewright.Engine.Cutting.Boards;

/// <summary>
/// Settles whether a better answer exists. An answer below the present one can hold only fillings whose reduced cost lies within
/// what its cost exceeds the bound by; these are listed completely, and an integer program over them either finds such an answer
/// or proves that there is none (after route enumeration, Baldacci, Christofides and Mingozzi 2008).
/// </summary>
internal sealed class BoardProof(ReducedProblem problem, WorkBudget budget, Incumbent incumbent, RunBounds bounds)
{
    private const int MostFillings = 60_000;
    private const double WorkForNode = 5_000;

    /// <summary>Tries; whether the present answer is settled now.</summary>
    public bool Run()
    {
        if (!incumbent.Exists || bounds.Costs is not { HonestValues.Length: > 0 } costs || Array.Exists(problem.Sheets, s => s.Segments is not null))
            return false;
        var target = incumbent.Cost - 1;
        var slack = ((Int128)target * costs.Scale) - costs.ScaledBound;
        if (slack < 0 || slack > long.MaxValue / 4)
            return false;
        var fillings = new List<(int Sheet, int[] Counts)>();
        for (var s = 0; s < problem.Sheets.Length; s++)
        {
            var least = (problem.Sheets[s].Cost * costs.Scale) - (long)slack;
            if (BoardFillings.Of(problem, problem.Sheets[s].SizeX, costs.HonestValues, least, MostFillings - fillings.Count, budget) is not { } found)
                return false;
            fillings.AddRange(found.Select(f => (s, f)));
        }

        return Solve(fillings, target);
    }

    private bool Solve(List<(int Sheet, int[] Counts)> fillings, long target)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var model = new FillingModel(problem, solver, fillings, target);
        if (budget.TimeLeft is { } time)
            solver.SetTimeLimit(Math.Max(1, (long)(0.4 * time.TotalMilliseconds)));
        solver.SetSolverSpecificParametersAsString(FormattableString.Invariant(
            $"limits/nodes = {Math.Max(1, (long)(Math.Min(budget.Left, 50_000_000) / WorkForNode))}\nrandomization/randomseedshift = 1\n"));
        Solver.ResultStatus status;
        using (budget.Cancellation.Register(() => solver.InterruptSolve()))
            status = solver.Solve();
        budget.Cancellation.ThrowIfCancellationRequested();
        budget.Spend((long)(Math.Max(1, solver.Nodes()) * WorkForNode) + fillings.Count);
        if (status == Solver.ResultStatus.INFEASIBLE)
        {
            incumbent.Raise(target + 1, 0);
            return true;
        }

        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
            return false;
        var (layouts, options) = model.Answer();
        incumbent.Offer(layouts, options);
        if (status == Solver.ResultStatus.OPTIMAL)
            incumbent.Raise(incumbent.Cost, 0);
        return status == Solver.ResultStatus.OPTIMAL;
    }
}
