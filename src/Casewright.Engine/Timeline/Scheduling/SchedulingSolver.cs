using System.Globalization;
using Casewright.Model.Collections;
using Google.OrTools.Sat;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>
/// Solves scheduling problems with a constraint solver: the least finish first; then, the finish kept, the even load. A list schedule
/// gives the first answer and the horizon. Effort is counted in work, with a fixed seed, so that results repeat to the last digit.
/// </summary>
public static class SchedulingSolver
{
    /// <summary>List schedules times tasks before the search: a second or so on a plain machine.</summary>
    private const int FirstTries = 20_000;

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How hard to try.</param>
    /// <param name="progress">Is told of better answers; may be null.</param>
    /// <param name="cancel">Ends the search early with the best answer so far.</param>
    /// <returns>The best schedule found, with its bound; or why there is none.</returns>
    public static SchedulingOutcome Solve(
        SchedulingProblem problem, SchedulingEffort effort, ISchedulingProgress? progress = null, CancellationToken cancel = default)
    {
        var first = ListScheduler.Schedule(problem, Math.Clamp(FirstTries / Math.Max(1, problem.Tasks.Count), 1, 100));
        var horizon = first?.Makespan ?? problem.Axis.Length;
        var model = new SchedulingModel(problem, horizon);
        if (first is not null)
            Hint(model, first.Tasks);
        var least = Math.Min(WorkBound.Of(problem), horizon);
        model.Model.Add(model.Makespan >= least);
        model.Model.Minimize(model.Makespan);
        var (solver, status) = Run(model.Model, effort, effort.Work, progress, cancel);
        using (solver)
        {
            if (status is CpSolverStatus.Infeasible)
                return new(null, true);
            var bound = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Unknown ? Math.Max(least, Bound(solver)) : 0;
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
                return new(first is null ? null : first with { LowerBound = Math.Min(bound, first.Makespan), Proven = bound >= first.Makespan }, false);
            var best = Read(problem, model, solver, bound);
            return new(Level(problem, best, effort, cancel), false);
        }
    }

    /// <summary>Keeps the finish and evens the load of the days.</summary>
    private static SchedulingSolution Level(SchedulingProblem problem, SchedulingSolution best, SchedulingEffort effort, CancellationToken cancel)
    {
        if (effort.LevelWork <= 0 || problem.DayStarts.Count == 0 || best.Makespan == 0 || cancel.IsCancellationRequested)
            return best;
        var model = new SchedulingModel(problem, best.Makespan);
        var peak = model.AddPeakLoad();
        Hint(model, best.Tasks);

        // Among equal peaks the earliest starts: glue is let cure and coats let dry as soon as they can be.
        var early = LinearExpr.Sum(model.Starts);
        model.Model.Minimize((peak * (best.Makespan * Math.Max(1, problem.Tasks.Count) + 1)) + early);
        var (solver, status) = Run(model.Model, effort, effort.LevelWork, null, cancel);
        using (solver)
        {
            return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
                ? Read(problem, model, solver, best.LowerBound) with { Makespan = best.Makespan, Proven = best.Proven, Work = best.Work + (solver.Response?.DeterministicTime ?? 0) }
                : best;
        }
    }

    private static (CpSolver Solver, CpSolverStatus Status) Run(
        CpModel model, SchedulingEffort effort, double work, ISchedulingProgress? progress, CancellationToken cancel)
    {
        var solver = new CpSolver { StringParameters = Parameters(effort, work) };
        using var stop = cancel.Register(solver.StopSearch);
        var status = cancel.IsCancellationRequested
            ? CpSolverStatus.Unknown
            : solver.Solve(model, progress is null ? null : new Reporter(progress));
        return (solver, status);
    }

    private static string Parameters(SchedulingEffort effort, double work)
    {
        var limit = effort.Seconds is { } seconds
            ? string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{seconds}")
            : string.Create(CultureInfo.InvariantCulture, $"max_deterministic_time:{work}");

        // One worker without linear relaxation proves the instances of the literature about twice as fast as one with it.
        var search = effort.Workers == 1 ? "num_workers:1,linearization_level:0" : $"num_workers:{effort.Workers}";
        return $"random_seed:1,{search},{limit}";
    }

    private static void Hint(SchedulingModel model, ValueList<TaskPlacement> tasks)
    {
        for (var t = 0; t < tasks.Count; t++)
        {
            if (model.Starts[t] is IntVar start)
                model.Model.AddHint(start, tasks[t].Start);
        }
    }

    private static long Bound(CpSolver solver) =>
        solver.Response is null ? 0 : Math.Max(0, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));

    private static SchedulingSolution Read(SchedulingProblem problem, SchedulingModel model, CpSolver solver, long bound)
    {
        var placements = new TaskPlacement[problem.Tasks.Count];
        for (var t = 0; t < placements.Length; t++)
        {
            var start = solver.Value(model.Starts[t]);
            var crew = model.Crew(t).Select(c => new CrewShare(c.Resource, (int)solver.Value(c.Count))).Where(c => c.Count > 0);
            placements[t] = new(start, start + problem.Tasks[t].Duration, crew.ToValueList());
        }

        var choices = Enumerable.Range(0, problem.Holds.Count).Select(h =>
            model.HoldOptions(h) is { Count: > 0 } options ? options.First(o => solver.BooleanValue(o.Chosen)).Resource : problem.Holds[h].Options[0]);
        var makespan = placements.Length == 0 ? 0 : placements.Max(p => p.End);
        return new(placements.ToValueList(), choices.ToValueList(), makespan, bound, bound >= makespan, (solver.Response?.DeterministicTime ?? 0));
    }

    private sealed class Reporter(ISchedulingProgress progress) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback() =>
            progress.Report((long)ObjectiveValue(), Math.Max(0, (long)Math.Ceiling(BestObjectiveBound() - 1e-6)));
    }
}
