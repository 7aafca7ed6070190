using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Runs;

/// <summary>
/// The crown along the top of a run, with returns at finished ends. Every outer mitre adds the crown's projection, and every length
/// 50 mm (2 in) of waste for fitting. A crown longer than any board on offer is joined over the joints between cases.
/// </summary>
internal static class CrownParts
{
    /// <summary>The lengths from left to right, then the returns.</summary>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<ColumnSpan> columns)
    {
        if (run.Crown is not { } crown)
            yield break;
        var breaks = Breaks(run, columns, crown);
        for (var i = 0; i < breaks.Count - 1; i++)
            yield return Front(run, crown, breaks[i], breaks[i + 1], i + 1, (i == 0 && run.Left.Kind == FinishedEnd ? 1 : 0) + (i == breaks.Count - 2 && run.Right.Kind == FinishedEnd ? 1 : 0), i == 0 && run.Left.Kind == FinishedEnd);
        if (run.Left.Kind == FinishedEnd)
            yield return Return(run, crown, "HL", "left crown return", Pose.ReturnFacingLeft(run.Wall.Id, run.X - crown.Thickness, Upper(run, crown), run.Run.Depth + crown.Thickness));
        if (run.Right.Kind == FinishedEnd)
            yield return Return(run, crown, "HR", "right crown return", Pose.ReturnFacingRight(run.Wall.Id, run.XEnd + crown.Thickness, Upper(run, crown), run.Run.Depth + crown.Thickness));
    }

    /// <summary>Waste for fitting on each length: 50 mm, in inches 2 (common practice, no source).</summary>
    public static Length Waste(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(2) : Length.FromMillimetres(50);

    private const EndKind FinishedEnd = EndKind.Finished;

    private static Length Upper(RunFigures run, Material crown) => run.Top - run.Run.Head.CrownLap + crown.BoardWidth!.Value;

    /// <summary>Ends of the lengths: the run's own, and joints between cases where boards are too short; as far as a board reaches each time.</summary>
    private static List<Length> Breaks(RunFigures run, IReadOnlyList<ColumnSpan> columns, Material crown)
    {
        var breaks = new List<Length> { run.FaceLeft };
        var longest = LongestBoard(run, crown) - (crown.Thickness * 2) - Waste(run);
        var joint = 1;
        while (longest > Length.Zero && run.FaceRight - breaks[^1] > longest)
        {
            Length? best = null;
            for (; joint < columns.Count && columns[joint].X - breaks[^1] <= longest; joint++)
                best = columns[joint].X;
            if (best is not { } x)
                break;
            breaks.Add(x);
        }

        breaks.Add(run.FaceRight);
        return breaks;
    }

    private static Length LongestBoard(RunFigures run, Material crown) => run.Job.Stock.Boards
        .Where(b => b.Material == crown.Id && (b.OnHand > 0 || b.Limit is null or > 0))
        .Select(b => b.Length - (run.Job.Shop.Saw.BoardEndTrim * 2))
        .DefaultIfEmpty(Length.Zero)
        .Max();

    private static Part Front(RunFigures run, Material crown, Length from, Length to, int number, int mitres, bool mitredLeft)
    {
        var rule = Rule.Of(new DerivationInput("l", "along the front, from the end of the run or the middle of a joint between cases", to - from));
        if (mitres > 0)
            rule = rule.Plus(Symbols.Thickness("j", crown), mitres);
        var length = rule.Plus(WasteInput(run)).Nearest(Dimensions.Length, run.Step);
        var left = from - (mitredLeft ? crown.Thickness : Length.Zero);
        var place = Pose.StripFromAbove(run.Wall.Id, left, Upper(run, crown), run.Run.Depth + crown.Thickness);
        return Make(run, crown, PartIds.Numbered(run.Letters, "H", number), "crown " + number.ToString(CultureInfo.InvariantCulture), length, place);
    }

    private static Part Return(RunFigures run, Material crown, string family, string name, Placement place)
    {
        var length = Rule.Of(Symbols.Depth(run)).Plus(Symbols.Thickness("j", crown)).Plus(WasteInput(run)).Nearest(Dimensions.Length, run.Step);
        return Make(run, crown, $"{run.Letters}-{family}", name, length, place);
    }

    private static DerivationInput WasteInput(RunFigures run) => new("x", "waste for fitting", Waste(run));

    private static Part Make(RunFigures run, Material crown, string id, string name, Derivation length, Placement place) =>
        PartMaker.InRun(run, id, $"{name}, run {run.Run.Name}", PartRole.Crown, crown, new(length, PartMaker.BoardWidth(crown), PartMaker.Thickness(crown)), place, FaceView.FrontOnly) with
        {
            FitOnSite = LengthFormat.Usual(Waste(run), run.Job.Units) + " left on in length, mitred or coped on site",
        };
}
