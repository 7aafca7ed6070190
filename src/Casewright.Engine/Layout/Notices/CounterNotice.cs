using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>How far apart the supports of counters, desks and seats stand, and whether one sits well on a seat.</summary>
internal static class CounterNotice
{
    /// <summary>The findings of the counters of a run.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        foreach (var tier in cases.Where(c => c.Tier.Counter is not null).GroupBy(c => c.Tier.Index))
        {
            var counter = tier.First().Tier.Counter!;
            yield return Supports(run, tier.ToList(), counter.Design);
            if (counter.Design.Use == CounterUse.Seat)
            {
                yield return SeatHeight(run, tier.First().Tier.YEnd + counter.Thickness + counter.Design.Cushion);
                yield return SeatDepth(run, tier.First().Run.Run.Depth + counter.Design.Overhang);
            }
        }
    }

    /// <summary>Furthest that supports stand apart: 600 (24 in) single; doubled 900 (36 in) for a seat, 1100 (44 in) with an apron.</summary>
    public static Length Furthest(CounterDesign counter, UnitSystem units)
    {
        var millimetres = counter.Layers == 1 ? 600 : counter.Use == CounterUse.Seat || counter.Apron == Length.Zero ? 900 : 1100;
        return units == UnitSystem.Inches ? Length.FromInches(millimetres / 25) : Length.FromMillimetres(millimetres);
    }

    private static Finding Supports(RunFigures run, List<CaseFigures> cases, CounterDesign counter)
    {
        var widest = cases.Max(c => c.IsKnee ? c.Width : c.Column.Clear);
        var limit = Furthest(counter, run.Job.Units);
        var wide = widest > limit;
        return Make(run, "counter-supports", wide ? Severity.Stop : Severity.Pass, $"The supports under the {counter.Use.ToString().ToLowerInvariant()} of run {run.Run.Name} stand {LengthFormat.Usual(widest, run.Job.Units)} apart at most.", widest, limit, wide ? "Double the top, give it an apron, or stand a partition or a leg under it." : "");
    }

    private static Finding SeatHeight(RunFigures run, Length height)
    {
        var (low, high) = run.Job.Units == UnitSystem.Inches ? (Length.FromInches(17), Length.FromInches(18)) : (Length.FromMillimetres(430), Length.FromMillimetres(460));
        var off = height < low || height > high;
        return Make(run, "seat-height", off ? Severity.Caution : Severity.Pass, $"One sits at {LengthFormat.Usual(height, run.Job.Units)}, cushion included.", height, off && height < low ? low : high, off ? $"Seats between {LengthFormat.Usual(low, run.Job.Units)} and {LengthFormat.Usual(high, run.Job.Units)} suit most people." : "");
    }

    private static Finding SeatDepth(RunFigures run, Length depth)
    {
        var (low, high) = run.Job.Units == UnitSystem.Inches ? (Length.FromInches(18), Length.FromInches(21)) : (Length.FromMillimetres(450), Length.FromMillimetres(530));
        var off = depth < low || depth > high;
        return Make(run, "seat-depth", off ? Severity.Caution : Severity.Pass, $"The seat is {LengthFormat.Usual(depth, run.Job.Units)} deep.", depth, off && depth < low ? low : high, off ? $"Between {LengthFormat.Usual(low, run.Job.Units)} and {LengthFormat.Usual(high, run.Job.Units)} one sits well." : "");
    }

    private static Finding Make(RunFigures run, string check, Severity severity, string message, Length value, Length limit, string advice) => new()
    {
        Check = check,
        Severity = severity,
        Subject = run.Run.Id,
        Message = message,
        Value = (double)value.Millimetres,
        Limit = (double)limit.Millimetres,
        Unit = "mm",
        Source = LayoutNotices.Practice,
        Standing = Standing.CommonPractice,
        Advice = advice,
    };
}
