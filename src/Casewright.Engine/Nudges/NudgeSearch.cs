using System.Globalization;
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
    /// <summary>Growth of the worst sag that is worth a word.</summary>
    private const double LeastSag = 1.05;

    /// <summary>Searches for nudges.</summary>
    /// <param name="job">The job.</param>
    /// <param name="most">Most changes to plan; at least 1. Bounds the work, so that results repeat.</param>
    /// <param name="effort">How hard to plan each, the job as stated included, so that like is compared with like.</param>
    /// <param name="progress">Told of every change tried; may be null.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Nudges that save money or sheets, the most money first; or why the job as stated cannot be planned.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Outcome<NudgeList> Search(
        Job job, int most = 24, PlanningEffort effort = PlanningEffort.Quick, IProgress<NudgeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        var stated = Planner.Plan(job, null, effort, cancellation);
        if (stated.Plan is not { } plan)
            return Outcome<NudgeList>.Failed(stated.Problems);
        var found = new List<Nudge>();
        var seen = new HashSet<Job> { job };
        var tried = 0;
        foreach (var candidate in new NudgeCandidates(plan).All().Where(c => seen.Add(c.Job)).Take(most))
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(new(tried, most, candidate.Words));
            tried++;
            if (Planner.Plan(candidate.Job, null, effort, cancellation).Plan is { } other && Nudge(candidate, plan, other) is { } nudge)
                found.Add(nudge);
        }

        return Outcome<NudgeList>.Of(new(Fold(found), tried));
    }

    /// <summary>What a change saves; null when it saves neither money nor a sheet, or brings a stop that was not there.</summary>
    internal static Nudge? Nudge(NudgeCandidate candidate, Plan before, Plan after)
    {
        if (Stops(after).Except(Stops(before)).Any())
            return null;
        var (was, now) = (SchemeStage.FiguresOf(before), SchemeStage.FiguresOf(after));
        var money = PlanFigures.Money(before) - PlanFigures.Money(after);
        var sheets = was.Sheets - now.Sheets;
        if (money <= 0 && sheets <= 0)
            return null;
        return new()
        {
            Change = candidate.Words,
            Job = candidate.Job,
            Sheets = sheets,
            Splices = was.Splices - now.Splices,
            Hours = Math.Round(was.Hours - now.Hours, 2, MidpointRounding.AwayFromZero),
            Days = (before.Schedule?.WorkingDays ?? 0) - (after.Schedule?.WorkingDays ?? 0),
            Money = money,
            Costs = Costs(before, after).ToValueList(),
        };
    }

    /// <summary>Counted by check and subject, so that a stop on another part is a new one.</summary>
    private static IEnumerable<(string, string)> Stops(Plan plan) =>
        plan.Findings.Where(f => f.Severity == Severity.Stop).Select(f => (f.Check, f.Subject));

    private static IEnumerable<string> Costs(Plan before, Plan after)
    {
        var shelves = (PlanFigures.ShelfLength(after) - PlanFigures.ShelfLength(before)).Metres;
        if (Math.Abs(shelves) >= 0.05)
            yield return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(shelves):0.0} m of shelf {(shelves < 0 ? "less" : "more")}");
        foreach (var cost in Dimensions(before.Job, after.Job))
            yield return cost;
        if (Sag(before) is var was and > 0 && Sag(after) is var now && now > was * LeastSag)
            yield return string.Create(CultureInfo.InvariantCulture, $"the worst shelf comes {(now / was * 100) - 100:0} % nearer to the sag it may have");
        var lines = PlanFigures.LinesInView(after) - PlanFigures.LinesInView(before);
        if (lines > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"{lines} more joint lines in view");
        var known = before.Findings.Where(f => f.Severity == Severity.Caution).Select(f => f.Check).ToHashSet(StringComparer.Ordinal);
        foreach (var caution in after.Findings.Where(f => f.Severity == Severity.Caution && !known.Contains(f.Check)).DistinctBy(f => f.Check, StringComparer.Ordinal))
            yield return caution.Message;
    }

    /// <summary>What is lost of depth, height and width between the fillers.</summary>
    private static IEnumerable<string> Dimensions(Job before, Job after)
    {
        foreach (var (was, now) in before.Runs.Zip(after.Runs))
        {
            if (now.Depth < was.Depth)
                yield return $"shelves of {was.Name} {LengthText.Of(was.Depth - now.Depth, before.Units)} less deep";
            if (now.Base.Height > was.Base.Height)
                yield return $"the lowest shelf of {was.Name} stands {LengthText.Of(now.Base.Height - was.Base.Height, before.Units)} higher";
            if (now.Head.Height < was.Head.Height || now.Head.Gap > was.Head.Gap)
                yield return $"a wider gap over {was.Name}";
            if (now.Left.Filler > was.Left.Filler || now.Right.Filler > was.Right.Filler)
                yield return $"broader fillers beside {was.Name}";
        }
    }

    /// <summary>Sag of the worst shelf as a share of what it may have.</summary>
    private static double Sag(Plan plan) => plan.Findings
        .Where(f => f is { Check: "shelf-sag" or "shelf-sag-in-time", Value: not null, Limit: > 0 })
        .Select(f => f.Value!.Value / f.Limit!.Value)
        .DefaultIfEmpty(0)
        .Max();

    /// <summary>Of changes that save the same and cost the same the first one found is kept; then the most money, sheets and joints first.</summary>
    internal static ValueList<Nudge> Fold(IEnumerable<Nudge> nudges) => nudges
        .DistinctBy(n => (n.Sheets, n.Splices, n.Hours, n.Days, n.Money, n.Costs))
        .OrderByDescending(n => n.Money)
        .ThenByDescending(n => n.Sheets)
        .ThenByDescending(n => n.Splices)
        .ThenBy(n => n.Change, StringComparer.Ordinal)
        .ToValueList();
}

/// <summary>What a search for nudges found.</summary>
/// <param name="Nudges">The nudges, the most money first.</param>
/// <param name="Tried">How many changes were planned.</param>
public sealed record NudgeList(ValueList<Nudge> Nudges, int Tried);
