using Casewright.Engine.Checks;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Pricing;
using Casewright.Engine.Surveying;
using Casewright.Engine.Timeline;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Engine.Verifying;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.Engine;

/// <summary>Runs the stages in their order: layout, splicing and cutting, checks, timetable and price; and lets no plan out that is not proven anew.</summary>
public static class Planner
{
    /// <summary>Plans a job. The same job gives the same plan, to the last digit.</summary>
    /// <param name="job">The job.</param>
    /// <param name="progress">Told of every stage and of every better cutting plan, on the calling thread.</param>
    /// <param name="effort">How long to search for the best layouts.</param>
    /// <param name="cancellation">Stops the planning; nothing is kept of it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PlanningResult Plan(
        Job job, IProgress<PlanningProgress>? progress = null, PlanningEffort effort = PlanningEffort.Usual, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        progress?.Report(new(PlanningStage.Layout, "Laying out cases and parts"));
        var layout = LayoutStage.Lay(job);
        if (!layout.Succeeded)
            return PlanningResult.Without(PlanningEnd.JobWrong, layout.Problems);

        cancellation.ThrowIfCancellationRequested();
        progress?.Report(new(PlanningStage.Cutting, "Deciding splices and sheets"));
        var cutting = CuttingStage.Plan(job, layout.Value, progress is null ? null : new CuttingReports(progress), effort, cancellation: cancellation);
        if (!cutting.Succeeded)
            return PlanningResult.Without(PlanningEnd.NoPlan, cutting.Problems);

        cancellation.ThrowIfCancellationRequested();
        progress?.Report(new(PlanningStage.Checks, "Checking what was planned"));
        var findings = layout.Value.Findings
            .Concat(SurveyStage.Read(job, layout.Value).Findings)
            .Concat(cutting.Value.Findings)
            .Concat(CheckStage.Run(job, layout.Value, cutting.Value))
            .ToValueList();

        progress?.Report(new(PlanningStage.Promise, "Making the timetable and the price"));
        var schedule = TimelineStage.Schedule(job, layout.Value, cutting.Value, job.Progress, effort: SchedulingOf(effort), cancel: cancellation);
        cancellation.ThrowIfCancellationRequested();
        var estimate = PricingStage.Price(job, layout.Value, cutting.Value);
        findings = findings
            .Concat(schedule.Value?.Findings ?? [])
            .Concat(estimate.Value?.Findings ?? [])
            .Concat(PromiseFindings.Of(PromiseFindings.Timetable, schedule.Problems))
            .Concat(PromiseFindings.Of("price", estimate.Problems))
            .OrderByDescending(f => Gravity(f.Severity))
            .ToValueList();

        progress?.Report(new(PlanningStage.Verification, "Proving the plan anew"));
        var defects = PlanVerifier.Verify(job, layout.Value, cutting.Value);
        return defects.Count > 0
            ? PlanningResult.Without(PlanningEnd.NotVerified, defects)
            : PlanningResult.Of(new Plan
            {
                Job = job,
                Cases = layout.Value.Cases,
                Parts = layout.Value.Parts,
                Cutting = cutting.Value,
                Findings = findings,
                Schedule = schedule.Value,
                Estimate = estimate.Value,
            });
    }

    /// <summary>A quick plan tries the timetable briefly; its gap then says so.</summary>
    private static SchedulingEffort SchedulingOf(PlanningEffort effort) => effort switch
    {
        PlanningEffort.Quick => new() { Work = 0.3, LevelWork = 0 },
        PlanningEffort.Usual => new() { Work = 2, LevelWork = 0.5 },
        _ => new() { Work = 20, LevelWork = 4 },
    };

    private static int Gravity(Severity severity) => severity switch
    {
        Severity.Stop => 3,
        Severity.Caution => 2,
        Severity.NotChecked => 1,
        _ => 0,
    };

    private sealed class CuttingReports(IProgress<PlanningProgress> progress) : IProgress<CutPlanProgress>
    {
        public void Report(CutPlanProgress value) =>
            progress.Report(new(PlanningStage.Cutting, $"Deciding splices and sheets, material {value.Number} of {value.Of}", value.Search.SheetsUsed, value.Search.SheetsLowerBound));
    }
}
