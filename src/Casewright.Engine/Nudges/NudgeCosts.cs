using System.Globalization;
using Casewright.Engine.Schemes;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Nudges;

/// <summary>What a small change costs in looks, storage, weight and sag, in words.</summary>
internal static class NudgeCosts
{
    /// <summary>Growth of the worst sag, or of the heaviest case, that is worth a word.</summary>
    private const double LeastGrowth = 1.05;

    public static IEnumerable<string> Of(Plan before, Plan after)
    {
        var shelves = (PlanFigures.ShelfLength(after) - PlanFigures.ShelfLength(before)).Metres;
        if (Math.Abs(shelves) >= 0.05)
            yield return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(shelves):0.0} m of shelf {(shelves < 0 ? "less" : "more")}");
        foreach (var cost in before.Job.Runs.Zip(after.Job.Runs).SelectMany(r => OfRun(before.Job, after.Job, r.First, r.Second)))
            yield return cost;
        if (Sag(before) is var was and > 0 && Sag(after) is var now && now > was * LeastGrowth)
            yield return string.Create(CultureInfo.InvariantCulture, $"the worst shelf comes {(now / was * 100) - 100:0} % nearer to the sag it may have");
        if (PlanFigures.HeaviestCase(before) is var light && PlanFigures.HeaviestCase(after) is var heavy && heavy > light * LeastGrowth)
            yield return string.Create(CultureInfo.InvariantCulture, $"the heaviest case weighs {heavy:0} kg instead of {light:0}");
        var lines = PlanFigures.LinesInView(after) - PlanFigures.LinesInView(before);
        if (lines > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"{lines} more joint line{(lines == 1 ? "" : "s")} in view");
        var known = before.Findings.Where(f => f.Severity == Severity.Caution).Select(f => f.Check).ToHashSet(StringComparer.Ordinal);
        foreach (var caution in after.Findings.Where(f => f.Severity == Severity.Caution && !known.Contains(f.Check)).DistinctBy(f => f.Check, StringComparer.Ordinal))
            yield return caution.Message.TrimEnd('.');
    }

    /// <summary>What a run loses of depth and height, and what is seen of it at its ends and its top.</summary>
    private static IEnumerable<string> OfRun(Job before, Job after, Run was, Run now)
    {
        string Text(Length length) => LengthText.Of(length, before.Units);
        if (now.Depth < was.Depth)
            yield return $"shelves of {was.Name} {Text(was.Depth - now.Depth)} less deep";
        if (now.Base.Height > was.Base.Height)
            yield return $"the lowest shelf of {was.Name} stands {Text(now.Base.Height - was.Base.Height)} higher";
        if (Down(was, now) is var down && down > Length.Zero)
        {
            yield return $"{Text(down)} less height inside {was.Name}";
            var open = down + CrownTop(before, was) - CrownTop(after, now);
            if (open > Length.Zero)
                yield return $"a gap {Text(open)} wider over {was.Name}";
        }

        if (now.Head.Crown is { } crown && before.Stock.Materials.All(m => m.Id != crown))
            yield return $"a crown {Text(after.Stock.Material(crown).BoardWidth!.Value)} high has to be had; its price is taken as that of the present one by its height";
        else if (now.Head.Crown is { } other && other != was.Head.Crown && was.Head.Crown is { } old)
            yield return $"a crown {Text(after.Stock.Material(other).BoardWidth!.Value)} high over {was.Name} instead of {Text(before.Stock.Material(old).BoardWidth!.Value)}";
        if (now.Left.Filler > was.Left.Filler || now.Right.Filler > was.Right.Filler)
            yield return $"broader fillers beside {was.Name}";
    }

    /// <summary>How much lower the cases end.</summary>
    private static Length Down(Run was, Run now) => was.Head.Height is { } height
        ? height - (now.Head.Height ?? height)
        : (now.Head.Gap ?? Length.Zero) - (was.Head.Gap ?? Length.Zero);

    /// <summary>Upper edge of the crown above the top of the cases; nothing without one.</summary>
    private static Length CrownTop(Job job, Run run) =>
        run.Head.Crown is { } crown ? job.Stock.Material(crown).BoardWidth!.Value - run.Head.CrownLap : Length.Zero;

    /// <summary>Sag of the worst shelf as a share of what it may have.</summary>
    private static double Sag(Plan plan) => plan.Findings
        .Where(f => f is { Check: "shelf-sag" or "shelf-sag-in-time", Value: not null, Limit: > 0 })
        .Select(f => f.Value!.Value / f.Limit!.Value)
        .DefaultIfEmpty(0)
        .Max();
}
