using Casewright.Engine.Layout.Figures;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Runs;

/// <summary>One section of a ladder base.</summary>
/// <param name="ToeLeft">Left end of its toe face.</param>
/// <param name="ToeRight">Right end of its toe face.</param>
/// <param name="Left">Left end of its rails.</param>
/// <param name="Right">Right end of its rails.</param>
/// <param name="Rungs">Left faces of its rungs, from left to right.</param>
internal sealed record BaseSection(Length ToeLeft, Length ToeRight, Length Left, Length Right, ValueList<Length> Rungs);

/// <summary>
/// Divides the base of a run into the fewest sections that are short enough, meeting under uprights, the longest as short as it can
/// be; and sets rungs at both ends, under every upright and at most 600 mm (24 in) apart.
/// </summary>
internal sealed class BaseSections(RunFigures run, IReadOnlyList<CaseFigures> lowest, ProblemList problems)
{
    private readonly Length _t = run.Base.Thickness;

    /// <summary>Furthest that two rungs stand apart, middle to middle: 600 mm, in inches 24 (common practice, no source).</summary>
    public static Length FurthestRungs(RunFigures run) =>
        run.Job.Units == UnitSystem.Inches ? Length.FromInches(24) : Length.FromMillimetres(600);

    /// <summary>The sections from left to right; empty when there are problems, which the list then holds.</summary>
    public IReadOnlyList<BaseSection> Divide()
    {
        var (toeLeft, toeRight) = ToeOutline(run);
        var uprights = Uprights();
        var limit = run.Run.Base.LongestSection;
        if (Breaks(uprights, toeLeft, toeRight, limit) is not { } fewest)
        {
            problems.Add(run.Path + ".base.longestSection", "No upright stands near enough for the sections of the base to meet under.", limit, $"{problems.Say(WidestStep(uprights, toeLeft, toeRight))} or more");
            return [];
        }

        var breaks = Evened(uprights, toeLeft, toeRight, limit, fewest);
        var points = new List<Length> { toeLeft };
        points.AddRange(breaks);
        points.Add(toeRight);
        return [.. points.Zip(points.Skip(1), (from, to) => Section(from, to, toeLeft, toeRight, uprights))];
    }

    /// <summary>Ends of the toe face: set back from the side at a finished end, past the filler into the scribe at a wall, to the other run in a corner.</summary>
    public static (Length Left, Length Right) ToeOutline(RunFigures run)
    {
        var setback = run.Run.Base.Setback;
        return (run.CasesLeft - Beyond(run.Left) - Scribe(run, run.Left) + (run.Left.ToeReturns ? setback : Length.Zero),
            run.CasesRight + Beyond(run.Right) + Scribe(run, run.Right) - (run.Right.ToeReturns ? setback : Length.Zero));
    }

    /// <summary>In a corner the toe face goes on to that of the other run.</summary>
    private static Length Beyond(EndFigures end) => end.Corner?.ToToe ?? end.Filler;

    private static Length Scribe(RunFigures run, EndFigures end) => end.Kind is EndKind.Wall or EndKind.Corner ? run.Joinery.ScribeAllowance : Length.Zero;

    /// <summary>Middle lines of the uprights that a rung can stand under, neighbouring sides as one.</summary>
    private List<Length> Uprights()
    {
        var lines = new List<Length>();
        foreach (var box in lowest)
        {
            lines.Add(box.IsFirst ? box.X + (run.T / 2) : box.X);
            for (var bay = 0; bay < box.Bays - 1; bay++)
                lines.Add(box.BayRight(bay) + (run.T / 2));
        }

        lines.Add(lowest[^1].XEnd - (run.T / 2));
        return lines;
    }

    /// <summary>The breaks that reach as far as they can each time; null when some step is too wide.</summary>
    private static List<Length>? Breaks(List<Length> uprights, Length from, Length to, Length limit)
    {
        var breaks = new List<Length>();
        var start = from;
        var next = 1;
        while (to - start > limit)
        {
            Length? best = null;
            for (; next < uprights.Count - 1 && uprights[next] - start <= limit; next++)
                best = uprights[next];
            if (best is not { } line)
                return null;
            breaks.Add(line);
            start = line;
        }

        return breaks;
    }

    /// <summary>As many sections as the fewest, the longest as short as it can be: found by halving the limit's range.</summary>
    private static List<Length> Evened(List<Length> uprights, Length from, Length to, Length limit, List<Length> fewest)
    {
        var best = fewest;
        var low = Length.Zero;
        var high = limit;
        while (high - low > Length.FromNanometres(1))
        {
            var middle = low + ((high - low) / 2);
            if (Breaks(uprights, from, to, middle) is { } tried && tried.Count == fewest.Count)
                (best, high) = (tried, middle);
            else
                low = middle;
        }

        return best;
    }

    private static Length WidestStep(List<Length> uprights, Length from, Length to)
    {
        var points = uprights.Skip(1).SkipLast(1).Prepend(from).Append(to).ToArray();
        return points.Zip(points.Skip(1), (a, b) => b - a).Max();
    }

    private BaseSection Section(Length from, Length to, Length toeLeft, Length toeRight, List<Length> uprights)
    {
        var left = from == toeLeft ? LadderLeft(run, _t) : from;
        var right = to == toeRight ? LadderRight(run, _t) : to;
        return new(from, to, left, right, Rungs(left, right, uprights));
    }

    private static Length LadderLeft(RunFigures run, Length t) => run.CasesLeft + (run.Left.ToeReturns ? run.Run.Base.Setback + t : Length.Zero);

    private static Length LadderRight(RunFigures run, Length t) => run.CasesRight - (run.Right.ToeReturns ? run.Run.Base.Setback + t : Length.Zero);

    private ValueList<Length> Rungs(Length left, Length right, List<Length> uprights)
    {
        var centres = new List<Length> { left + (_t / 2) };
        centres.AddRange(uprights.Where(u => u - (_t / 2) >= left + _t && u + _t - (_t / 2) <= right - _t));
        centres.Add(right - _t + (_t / 2));
        var furthest = FurthestRungs(run);
        var rungs = new List<Length>();
        for (var i = 0; i < centres.Count - 1; i++)
        {
            var gap = centres[i + 1] - centres[i];
            var parts = Math.Max(1, (gap + furthest - Length.FromNanometres(1)) / furthest);
            for (var j = 0L; j < parts; j++)
                rungs.Add(centres[i] + (gap * j / parts) - (_t / 2));
        }

        rungs.Add(right - _t);
        return rungs.ToValueList();
    }
}
