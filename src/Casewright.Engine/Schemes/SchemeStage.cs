using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Timeline;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;

namespace Casewright.Engine.Schemes;

/// <summary>Compares the ways to build a job: each changes the job and is planned in full by the same planner.</summary>
public static class SchemeStage
{
    /// <summary>Plans all schemes of a job, in the order of <see cref="SchemeKind"/>: ways to build it from the beginning, whatever is done of it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="effort">How hard to plan each.</param>
    /// <param name="progress">Told how each scheme comes on; may be null.</param>
    /// <param name="stated">What came of planning the job as it stands with this effort, so that it is not planned twice; null plans it.</param>
    /// <param name="cancellation">Stops the comparison.</param>
    /// <returns>The schemes, or what is wrong with the job itself.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Outcome<SchemeList> Compare(
        Job job, PlanningEffort effort = PlanningEffort.Usual, IProgress<SchemeProgress>? progress = null, PlanningResult? stated = null, CancellationToken cancellation = default)
    {
        var laid = LayoutStage.Lay(job);
        if (!laid.Succeeded)
            return Outcome<SchemeList>.Failed(laid.Problems);
        var (planning, fresh) = (new Planning(effort, cancellation), job with { Progress = null });
        stated = fresh.Equals(stated?.Plan?.Job) ? stated! : planning.Of(fresh, Report(progress, SchemeKind.Mixed));
        var known = Stops(stated.Plan).ToHashSet(StringComparer.Ordinal);
        var schemes = new List<Scheme>();
        foreach (var variation in new SchemeVariations(fresh, laid.Value).All())
        {
            cancellation.ThrowIfCancellationRequested();
            var scheme = Plan(variation, stated, known, planning, Report(progress, variation.Kind));
            schemes.Add(scheme with { Job = scheme.Job with { Progress = job.Progress } });
        }

        var lacks = ShopProblems.BeforeWork(job).Select(p => p.Message).Distinct(StringComparer.Ordinal).ToValueList();
        return Outcome<SchemeList>.Of(new(schemes.ToValueList()) { NoTimetable = lacks });
    }

    private static Scheme Plan(SchemeVariation variation, PlanningResult stated, HashSet<string> known, Planning planning, IProgress<PlanningProgress>? progress)
    {
        if (variation.Obstacles.Count > 0)
            return Scheme(variation, variation.Obstacles, null);
        var result = IsAsStated(variation, stated) ? stated : planning.Of(variation.Job, progress);
        if (result.Plan is not { } plan)
            return Scheme(variation, Problems(variation, result), null);
        var why = plan.Findings
            .Where(f => f.Severity == Severity.Stop && !known.Contains(f.Check))
            .Select(f => f.Message)
            .Concat(Untimed(plan))
            .Distinct(StringComparer.Ordinal)
            .ToValueList();
        return Scheme(variation, why, FiguresOf(plan));
    }

    /// <summary>Why a way has no timetable, when that is for its own work: a shop without people or without a first day has none for any way.</summary>
    private static IEnumerable<string> Untimed(Plan plan) =>
        plan.Schedule is null && !ShopProblems.BeforeWork(plan.Job).Any() ? plan.Findings.Where(f => f.Check == PromiseFindings.Timetable).Select(f => f.Message) : [];

    private static IProgress<PlanningProgress>? Report(IProgress<SchemeProgress>? progress, SchemeKind kind) => progress is null ? null : new Forwarding(progress, kind);

    /// <summary>A job that has no joint as it stands, and is not changed but for forbidding them, has the same plan.</summary>
    private static bool IsAsStated(SchemeVariation variation, PlanningResult stated) => variation.Kind == SchemeKind.Mixed
        || variation.Job.Equals(stated.Plan?.Job)
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

    private sealed record Planning(PlanningEffort Effort, CancellationToken Cancellation)
    {
        /// <summary>A little effort that finds no plan proves nothing: it is tried again with the usual one before a way is refused.</summary>
        public PlanningResult Of(Job job, IProgress<PlanningProgress>? progress)
        {
            var result = Planner.Plan(job, progress, Effort, Cancellation);
            return result.End == PlanningEnd.NoPlan && Effort == PlanningEffort.Quick ? Planner.Plan(job, progress, PlanningEffort.Usual, Cancellation) : result;
        }
    }

    private sealed class Forwarding(IProgress<SchemeProgress> progress, SchemeKind kind) : IProgress<PlanningProgress>
    {
        public void Report(PlanningProgress value) => progress.Report(new(kind, value));
    }

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

/// <summary>How far a comparison has come.</summary>
/// <param name="Kind">The scheme that is being planned; <see cref="SchemeKind.Mixed"/> is the job as it stands, and comes first.</param>
/// <param name="Planning">How far its planning has come.</param>
public sealed record SchemeProgress(SchemeKind Kind, PlanningProgress Planning);

/// <summary>Schemes compared.</summary>
/// <param name="Schemes">In the order of their kinds.</param>
public sealed record SchemeList(ValueList<Scheme> Schemes)
{
    /// <summary>What keeps every way from having a timetable, such as nobody to do the work; empty when nothing does.</summary>
    public ValueList<string> NoTimetable { get; init; } = [];
}
