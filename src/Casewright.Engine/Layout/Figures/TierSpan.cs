using System.Globalization;
using Casewright.Engine.Layout.Counters;
using Casewright.Model.Design;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>A row of cases at one level of the run.</summary>
/// <param name="Index">Position from the floor, from 0.</param>
/// <param name="Y">Lower edge of the cases, the base not counted.</param>
/// <param name="Height">Height of the cases, the base not counted.</param>
/// <param name="Design">The tier as designed.</param>
/// <param name="Path">Its path in the job file.</param>
/// <param name="Counter">What is laid over its cases; null for nothing.</param>
internal sealed record TierSpan(int Index, Length Y, Length Height, TierDesign Design, string Path, CounterFigures? Counter)
{
    /// <summary>Upper edge of the cases, under the counter.</summary>
    public Length YEnd => Y + Height;
}

/// <summary>Divides the height between base and top of the cases into tiers.</summary>
internal static class TierDivision
{
    /// <summary>The tiers from the floor up; empty when there are problems, which the list then holds.</summary>
    public static IReadOnlyList<TierSpan> Divide(RunFigures run, ProblemList problems)
    {
        var tiers = run.Run.Tiers;
        var path = run.Path + ".tiers";
        if (tiers.Count == 0)
        {
            problems.Add(path, "A run has at least one tier.", "none", "one tier for cases of full height, more for stacked cases");
            return [];
        }

        var counters = tiers.Select((t, i) => CounterFigures.Read(run, t.Counter, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}].counter"), problems)).ToArray();
        var total = counters.Aggregate(run.Top - run.BaseHeight, (left, c) => left - (c?.Thickness ?? Length.Zero));
        var given = tiers.Aggregate(Length.Zero, (sum, t) => sum + (t.Height ?? Length.Zero));
        var open = tiers.Count(t => t.Height is null);
        if (open > 1)
            problems.Add(path, "More than one tier is without a height.", open.ToString(CultureInfo.InvariantCulture), "at most one, which takes the rest");
        else if (open == 0 && given != total)
            problems.Add(path, "The tiers do not add up to the height between base and top.", given, $"{problems.Say(total)}, or one tier without a height");
        var least = (run.T * 2) + run.BottomRaise;
        var spans = new TierSpan[tiers.Count];
        var y = run.BaseHeight;
        var before = problems.All.Count;
        for (var i = 0; i < tiers.Count; i++)
        {
            var tierPath = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
            var height = tiers[i].Height ?? (total - given);
            if (height <= least)
                problems.Add(tierPath + ".height", "Top and bottom leave no opening in this tier.", height, $"more than {problems.Say(least)}");
            if (tiers[i].Depth is { } depth)
                problems.Positive(tierPath + ".depth", "depth of the tier", depth);
            spans[i] = new(i, y, height, tiers[i], tierPath, counters[i]);
            y += height + (counters[i]?.Thickness ?? Length.Zero);
        }

        return open > 1 || problems.All.Count > before || (open == 0 && given != total) ? [] : spans;
    }
}
