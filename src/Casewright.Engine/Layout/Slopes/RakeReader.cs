using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>
/// How the ceiling over a case ends it at the top. A case that the slope leaves alone keeps its level top; one that it cuts gets a raked
/// top along the slope, lowered where the ceiling breaks within the case. Only the topmost case of a column can be raked.
/// </summary>
internal sealed class RakeReader(RunFigures run, ProblemList problems)
{
    /// <summary>Least clear height inside at the low end: 100 mm (4 in; our judgement).</summary>
    public static Length LeastClear { get; } = Length.FromMillimetres(100);

    /// <summary>Most that a raked top is lowered for a break of the ceiling within its case: 100 mm (4 in; our judgement).</summary>
    public static Length MostLowered { get; } = Length.FromMillimetres(100);

    private readonly Wall _wall = run.Wall;

    /// <summary>The tier as this case has it, its height that of the high end, and the rake; null when there is a problem, which the list then holds.</summary>
    public (TierSpan Tier, RakeFigures? Rake)? Read(ColumnSpan column, TierSpan tier, int tiers, int number)
    {
        if (_wall.CeilingSlopes.Count == 0)
            return (tier, null);
        var over = tier.YEnd + (tier.Counter?.Thickness ?? Length.Zero);
        if (_wall.CeilingSlopes.All(s => Room(s, column.X) >= over && Room(s, column.X + column.Width) >= over))
            return (tier, null);
        var before = problems.All.Count;
        CheckDesign(tier, tiers, number);
        if (problems.All.Count > before)
            return null;
        var rake = Rake(column, tier);
        Check(rake, column, tier, number);
        var high = rake.Top(rake.Higher(column.X, column.X + column.Width));
        return problems.All.Count > before ? null : (tier with { Height = high - tier.Y }, rake);
    }

    private Length Gap => run.Run.Head.SlopeGap ?? run.Run.Head.Gap ?? Length.Zero;

    /// <summary>The highest that casework may be at a place under one slope.</summary>
    private Length Room(CeilingSlope slope, Length x) => slope.At(x) - Gap;

    private void CheckDesign(TierSpan tier, int tiers, int number)
    {
        if (run.Run.Head is { SlopeGap: null, Gap: null })
            problems.Add(run.Path + ".head.slopeGap", $"Case {number} comes under the sloping ceiling, and nothing says how much room is left there.", "nothing", "the room left plumb between raked tops and the slope");
        if (tier.Index < tiers - 1)
            problems.Add(tier.Path + ".height", $"The sloping ceiling cuts case {number} on this tier, and another tier is to stand on it.", tier.YEnd, "tiers that end under the slope, one tier, or a run of its own under the slope");
        if (tier.Counter is not null)
            problems.Add(tier.Path + ".counter", $"The sloping ceiling cuts case {number}, so nothing can be laid over it.", "a counter", "no counter on the topmost tier, or a head height under the slope");
        if (run.Frame is not null)
            problems.Add(run.Path + ".construction", $"The sloping ceiling cuts case {number}; face frames under a slope are not laid out.", "faceFrame", "frameless, or a head height under the slope");
        if (run.Crown is not null)
            problems.Add(run.Path + ".head.crown", $"The sloping ceiling cuts case {number}; no crown is made along a slope.", $"'{run.Crown.Id}'", "no crown in this run; head.slopeFiller closes the gap along the slope");
    }

    private RakeFigures Rake(ColumnSpan column, TierSpan tier)
    {
        var (left, right) = (column.X, column.X + column.Width);
        var low = Most(left, tier) < Most(right, tier) ? left : right;
        var slope = _wall.CeilingSlopes.MinBy(s => Room(s, low))!;
        var broken = Length.Max(Room(slope, left) - Most(left, tier), Room(slope, right) - Most(right, tier));
        var read = SlopeProblems.ReadLower(_wall, left, right);
        return new(slope.ToSlope(), low, Room(slope, low) - broken - read, broken + read);
    }

    /// <summary>The highest that the case may be at a place.</summary>
    private Length Most(Length x, TierSpan tier) => _wall.CeilingSlopes.Aggregate(tier.YEnd, (most, slope) => Length.Min(most, Room(slope, x)));

    private void Check(RakeFigures rake, ColumnSpan column, TierSpan tier, int number)
    {
        var (left, right) = (column.X, column.X + column.Width);
        var end = rake.FallsRight ? "right" : "left";
        var inside = rake.FallsRight ? right - run.T : left + run.T;
        var clear = rake.Under(inside, run.T) - tier.Y - run.BottomRaise - run.T;
        if (clear < LeastClear)
        {
            var ends = rake.WhereUnder(tier.Y + run.BottomRaise + run.T + LeastClear, run.T);
            problems.Add(column.Path, $"The sloping ceiling leaves case {number} no height at its {end} end.", clear, $"{problems.Say(LeastClear)} or more clear inside: a case that ends at {problems.Say(ends.RoundTo(run.Step))} along the wall");
        }

        if (rake.Lowered - SlopeProblems.ReadLower(_wall, left, right) > MostLowered)
            problems.Add(column.Path, $"The ceiling breaks inside case {number}, so that a straight top would lie far below it.", rake.Lowered, $"at most {problems.Say(MostLowered)} lost: a joint between cases where the slope begins, at {problems.Say(Break(rake, column, tier).RoundTo(run.Step))} along the wall");
    }

    /// <summary>Where the slope that the case lies under leaves off, to the nanometre.</summary>
    private Length Break(RakeFigures rake, ColumnSpan column, TierSpan tier)
    {
        var (left, right) = (column.X, column.X + column.Width);
        var (under, past) = (rake.Lower(left, right), rake.Higher(left, right));
        var slope = _wall.CeilingSlopes.MinBy(s => Room(s, under))!;
        while ((past - under).Abs() > Length.FromNanometres(1))
        {
            var middle = under + ((past - under) / 2);
            (under, past) = Room(slope, middle) > Most(middle, tier) ? (under, middle) : (middle, past);
        }

        return past;
    }
}
