using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Runs;

/// <summary>
/// A moulding along the front of a run, with returns to the wall. A length is l + n·j to its long points, n its outer mitres and j how far its
/// face stands in front of what it lies on; a mitre of 45 degrees makes it shorter by the thickness on the other face: that is the short
/// point. Every blank has waste for fitting. A moulding longer than any board on offer is joined over the joints between cases.
/// </summary>
internal sealed record MouldingLine
{
    /// <summary>The run, with the depth that holds there.</summary>
    public required RunFigures Run { get; init; }

    /// <summary>Its board material.</summary>
    public required Material Board { get; init; }

    /// <summary>What it is.</summary>
    public required PartRole Role { get; init; }

    /// <summary>Letter of its ids.</summary>
    public required string Letter { get; init; }

    /// <summary>What people call it, such as crown.</summary>
    public required string Name { get; init; }

    /// <summary>Told behind the ids of returns; empty for the first stretch.</summary>
    public string Suffix { get; init; } = "";

    /// <summary>Lengths of this moulding before this stretch.</summary>
    public int Before { get; init; }

    /// <summary>Left end of what it lies on.</summary>
    public required Length Left { get; init; }

    /// <summary>Right end of what it lies on.</summary>
    public required Length Right { get; init; }

    /// <summary>Whether it turns back to the wall at its left end.</summary>
    public required bool ReturnsLeft { get; init; }

    /// <summary>Whether it turns back to the wall at its right end.</summary>
    public required bool ReturnsRight { get; init; }

    /// <summary>Its upper edge above the highest floor point.</summary>
    public required Length Upper { get; init; }

    /// <summary>From the wall to the front that it lies on, as a rule of the run's figures.</summary>
    public required Rule Depth { get; init; }

    /// <summary>Whether its face is flush with that front, rather than in front of it by its thickness.</summary>
    public bool Flush { get; init; }

    /// <summary>Where lengths may meet, from the left.</summary>
    public required ValueList<Length> Joints { get; init; }

    /// <summary>What is done on site beside mitring or coping the ends; empty for nothing.</summary>
    public string AlsoOnSite { get; init; } = "";

    private Length Out => Flush ? Length.Zero : Board.Thickness;

    /// <summary>Waste for fitting on each length: 50 mm, in inches 2 (common practice, no source).</summary>
    public static Length Waste(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(2) : Length.FromMillimetres(50);

    /// <summary>The lengths from left to right, then the returns.</summary>
    public IEnumerable<Part> Parts()
    {
        var breaks = Breaks();
        for (var i = 0; i < breaks.Count - 1; i++)
            yield return Front(breaks[i], breaks[i + 1], Before + i + 1, i == 0 && ReturnsLeft, i == breaks.Count - 2 && ReturnsRight);
        if (ReturnsLeft)
            yield return Return("L", "left", Pose.ReturnFacingLeft(Run.Wall.Id, Left - Out, Upper, Depth.Exact + Out));
        if (ReturnsRight)
            yield return Return("R", "right", Pose.ReturnFacingRight(Run.Wall.Id, Right + Out, Upper, Depth.Exact + Out));
    }

    /// <summary>Number of lengths along the front.</summary>
    public int Lengths => Breaks().Count - 1;

    /// <summary>Ends of the lengths: its own, and joints where boards are too short; as far as a board reaches each time.</summary>
    private List<Length> Breaks()
    {
        var breaks = new List<Length> { Left };
        var longest = LongestBoard() - (Out * 2) - Waste(Run);
        var joint = 0;
        while (longest > Length.Zero && Right - breaks[^1] > longest)
        {
            Length? best = null;
            for (; joint < Joints.Count && Joints[joint] - breaks[^1] <= longest; joint++)
                best = Joints[joint] > breaks[^1] && Joints[joint] < Right ? Joints[joint] : best;
            if (best is not { } x)
                break;
            breaks.Add(x);
        }

        breaks.Add(Right);
        return breaks;
    }

    private Length LongestBoard() => Run.Job.Stock.Boards
        .Where(b => b.Material == Board.Id && (b.OnHand > 0 || b.Limit is null or > 0))
        .Select(b => b.Length - (Run.Job.Shop.Saw.BoardEndTrim * 2))
        .DefaultIfEmpty(Length.Zero)
        .Max();

    private Part Front(Length from, Length to, int number, bool mitredLeft, bool mitredRight)
    {
        var mitres = (mitredLeft ? 1 : 0) + (mitredRight ? 1 : 0);
        var along = Rule.Of(new DerivationInput("l", "along the front, from the end of the run or the middle of a joint between cases", to - from));
        var place = Pose.StripFromAbove(Run.Wall.Id, from - (mitredLeft ? Out : Length.Zero), Upper, Depth.Exact + Out);
        var name = string.Create(CultureInfo.InvariantCulture, $"{Name} {number}");
        return Make(PartIds.Numbered(Run.Letters, Letter, number), name, along, mitres, Where(mitredLeft, mitredRight), place);
    }

    private Part Return(string hand, string side, Placement place) =>
        Make($"{Run.Letters}-{Letter}{hand}{Suffix}", $"{side} {Name} return", Depth, 1, "mitred at the front end", place);

    private static string Where(bool left, bool right) => (left, right) switch
    {
        (true, true) => "mitred at both ends",
        (true, false) => "mitred at the left end",
        (false, true) => "mitred at the right end",
        _ => "mitred or coped on site",
    };

    private Part Make(string id, string name, Rule along, int mitres, string where, Placement place)
    {
        var longPoint = mitres > 0 && !Flush ? along.Plus(Symbols.Thickness("j", Board), mitres) : along;
        var length = longPoint.Plus(new("x", "waste for fitting", Waste(Run))).Nearest(Dimensions.Length, Run.Step);
        var part = PartMaker.InRun(
            Run, id, $"{name}, run {Run.Run.Name}", Role, Board, new(length, PartMaker.BoardWidth(Board), PartMaker.Thickness(Board)), place, FaceView.FrontOnly);
        var waste = LengthFormat.Usual(Waste(Run), Run.Job.Units) + " left on in length, " + where;
        if (mitres == 0)
            return part with { FitOnSite = waste + AlsoOnSite };
        var points = (Long: longPoint.Nearest("long point", Run.Step), Short: longPoint.Minus(Symbols.Thickness("tj", Board), mitres).Nearest("short point", Run.Step));
        return part with
        {
            Derivations = [.. part.Derivations, points.Long, points.Short],
            FitOnSite = $"{waste}: {LengthFormat.Usual(points.Long.Result, Run.Job.Units)} to the long point, {LengthFormat.Usual(points.Short.Result, Run.Job.Units)} to the short one{AlsoOnSite}",
        };
    }
}
