using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Schemes;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;

namespace Casewright.Engine.Nudges;

/// <summary>How far the search for nudges has come.</summary>
/// <param name="Tried">Changes planned.</param>
/// <param name="Most">Changes that will be planned at most.</param>
/// <param name="Words">The change at hand.</param>
public sealed record NudgeProgress(int Tried, int Most, string Words);

/// <summary>Looks for small changes that save something, by planning the job with each of them in full.</summary>
public static class NudgeSearch
{
    /// <summary>Share of the price below which a saving of money alone is not worth changing a drawing for (our judgement).</summary>
    private const decimal LeastWorth = 0.01m;

    /// <summary>Searches for nudges; each is planned from the beginning, whatever is done of the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="most">Most changes to plan; at least 1. Bounds the work, so that results repeat.</param>
    /// <param name="effort">How hard to plan each, the job as stated included, so that like is compared with like.</param>
    /// <param name="progress">Told of every change tried; may be null.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Nudges that mend a stop, save sheets or joints for no more money, or a hundredth of the price; those that mend first, then the most money; or why the job as stated cannot be planned.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Outcome<NudgeList> Search(
        Job job, int most = 24, PlanningEffort effort = PlanningEffort.Quick, IProgress<NudgeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        var fresh = job with { Progress = null };
        var stated = Planner.Plan(fresh, null, effort, cancellation);
        if (stated.Plan is not { } plan)
            return Outcome<NudgeList>.Failed(stated.Problems);
        var found = new List<Nudge>();
        var seen = new HashSet<Job> { fresh };
        var tried = 0;
        foreach (var candidate in new NudgeCandidates(plan).All().Where(c => seen.Add(c.Job)).Take(most))
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(new(tried, most, candidate.Words));
            tried++;
            if (Planner.Plan(candidate.Job, null, effort, cancellation).Plan is { } other && Nudge(candidate, plan, other) is { } nudge)
                found.Add(nudge with { Job = nudge.Job with { Progress = job.Progress } });
        }

        return Outcome<NudgeList>.Of(new(Fold(found), tried));
    }

    /// <summary>What a change saves and mends; null when that is nothing, or when it brings a stop or loses a timetable that was there.</summary>
    internal static Nudge? Nudge(NudgeCandidate candidate, Plan before, Plan after)
    {
        var (stopped, stops) = (Stops(before), Stops(after));
        if (stops.Any(s => !stopped.Contains(s)) || (before.Schedule is not null && after.Schedule is null))
            return null;
        var (was, now) = (SchemeStage.FiguresOf(before), SchemeStage.FiguresOf(after));
        var (money, sheets, splices) = (PlanFigures.Money(before) - PlanFigures.Money(after), was.Sheets - now.Sheets, was.Splices - now.Splices);
        var mends = before.Findings.Where(f => f.Severity == Severity.Stop && !stops.Contains((f.Check, f.Subject))).ToList();
        var worth = money >= 0 && (money >= PlanFigures.Money(before) * LeastWorth || sheets > 0 || splices > 0);
        if (!worth && mends.Count == 0)
            return null;
        return new()
        {
            Change = candidate.Words,
            Job = candidate.Job,
            Sheets = sheets,
            Splices = splices,
            Hours = Math.Round(was.Hours - now.Hours, 2, MidpointRounding.AwayFromZero),
            Days = before.Schedule is { } then && after.Schedule is { } later ? then.WorkingDays - later.WorkingDays : 0,
            Money = money,
            Costs = NudgeCosts.Of(before, after).ToValueList(),
            Mends = mends.Select(f => f.Message).Distinct(StringComparer.Ordinal).ToValueList(),
        };
    }

    /// <summary>Counted by check and subject, so that a stop on another part is a new one.</summary>
    private static HashSet<(string, string)> Stops(Plan plan) =>
        plan.Findings.Where(f => f.Severity == Severity.Stop).Select(f => (f.Check, f.Subject)).ToHashSet();

    /// <summary>Of changes that save the same and cost the same the first one found is kept; then those that mend a stop, the most money, sheets and joints first.</summary>
    internal static ValueList<Nudge> Fold(IEnumerable<Nudge> nudges) => nudges
        .DistinctBy(n => (n.Sheets, n.Splices, n.Hours, n.Days, n.Money, n.Costs, n.Mends))
        .OrderByDescending(n => n.Mends.Count > 0)
        .ThenByDescending(n => n.Money)
        .ThenByDescending(n => n.Sheets)
        .ThenByDescending(n => n.Splices)
        .ThenBy(n => n.Change, StringComparer.Ordinal)
        .ToValueList();
}

/// <summary>What a search for nudges found.</summary>
/// <param name="Nudges">The nudges, those that mend a stop first, then the most money first.</param>
/// <param name="Tried">How many changes were planned.</param>
public sealed record NudgeList(ValueList<Nudge> Nudges, int Tried);
