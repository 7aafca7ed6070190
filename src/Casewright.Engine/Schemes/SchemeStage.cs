using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;

namespace Casewright.Engine.Schemes;

/// <summary>Compares the ways to build a job: each changes the job and is planned in full by the same planner.</summary>
public static class SchemeStage
{
    /// <summary>Plans all schemes of a job, in the order of <see cref="SchemeKind"/>.</summary>
    /// <param name="job">The job.</param>
    /// <param name="effort">How hard to plan each.</param>
    /// <param name="progress">Told which scheme is being planned; may be null.</param>
    /// <param name="cancellation">Stops the comparison.</param>
    /// <returns>The schemes, or what is wrong with the job itself.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Outcome<SchemeList> Compare(Job job, PlanningEffort effort = PlanningEffort.Usual, IProgress<SchemeKind>? progress = null, CancellationToken cancellation = default)
    {
        var laid = LayoutStage.Lay(job);
        if (!laid.Succeeded)
            return Outcome<SchemeList>.Failed(laid.Problems);
        var stated = Planned(job, effort, cancellation);
        var known = Stops(stated.Plan).ToHashSet(StringComparer.Ordinal);
        var schemes = new List<Scheme>();
        foreach (var variation in new SchemeVariations(job, laid.Value).All())
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(variation.Kind);
            schemes.Add(Plan(variation, stated, known, effort, cancellation));
        }

        return Outcome<SchemeList>.Of(new(schemes.ToValueList()));
    }

    private static Scheme Plan(SchemeVariation variation, PlanningResult stated, HashSet<string> known, PlanningEffort effort, CancellationToken cancellation)
    {
        if (variation.Obstacles.Count > 0)
            return Scheme(variation, variation.Obstacles, null);
        var result = IsAsStated(variation, stated) ? stated : Planned(variation.Job, effort, cancellation);
        if (result.Plan is not { } plan)
            return Scheme(variation, Problems(variation, result), null);
        var why = plan.Findings
            .Where(f => f.Severity == Severity.Stop && !known.Contains(f.Check))
            .Select(f => f.Message)
            .Distinct(StringComparer.Ordinal)
            .ToValueList();
        return Scheme(variation, why, FiguresOf(plan));
    }

    /// <summary>A little effort that finds no plan proves nothing: it is tried again with the usual one before a way is refused.</summary>
    private static PlanningResult Planned(Job job, PlanningEffort effort, CancellationToken cancellation)
    {
        var result = Planner.Plan(job, null, effort, cancellation);
        return result.End == PlanningEnd.NoPlan && effort == PlanningEffort.Quick ? Planner.Plan(job, null, PlanningEffort.Usual, cancellation) : result;
    }

    /// <summary>A job that has no joint as it stands, and is not changed but for forbidding them, has the same plan.</summary>
    private static bool IsAsStated(SchemeVariation variation, PlanningResult stated) => variation.Kind == SchemeKind.Mixed
        || (stated.Plan is { } plan && !PlanFigures.Splices(plan).Any() && variation.Job.Stock.Equals(plan.Job.Stock)
            && variation.Job.Runs.Select(r => r with { Splices = new() }).SequenceEqual(plan.Job.Runs.Select(r => r with { Splices = new() })));

    private static ValueList<string> Problems(SchemeVariation variation, PlanningResult result) =>
        variation.Kind == SchemeKind.LongSheets && result.End == PlanningEnd.NoPlan
            ? ["the long sheets that can be had do not suffice for all the uprights; the rest would have to be joined"]
            : result.Problems.Select(p => p.Message).Distinct(StringComparer.Ordinal).ToValueList();

    private static Scheme Scheme(SchemeVariation variation, ValueList<string> why, SchemeFigures? figures) => new()
    {
        Kind = variation.Kind,
        Job = variation.Job,
        Changes = variation.Changes,
        Feasible = why.Count == 0,
        Why = why,
        Figures = figures,
    };

    private static IEnumerable<string> Stops(Plan? plan) => plan?.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Check) ?? [];

    /// <summary>What a plan comes to.</summary>
    public static SchemeFigures FiguresOf(Plan plan) => new(
        plan.Cutting.Sheets.Count,
        PlanFigures.Splices(plan).Count(),
        PlanFigures.Material(plan),
        plan.Estimate?.TotalHours ?? 0,
        plan.Schedule?.StationDays,
        PlanFigures.LeadDays(plan),
        PlanFigures.LinesInView(plan),
        PlanFigures.HeaviestCase(plan),
        plan.Parts.Select(p => p.Length).Aggregate(Model.Measure.Length.Max),
        plan.Estimate?.Net,
        plan.Schedule is { } schedule ? DateOnly.FromDateTime(schedule.Finish) : null);
}

/// <summary>Schemes compared.</summary>
/// <param name="Schemes">In the order of their kinds.</param>
public sealed record SchemeList(ValueList<Scheme> Schemes);
