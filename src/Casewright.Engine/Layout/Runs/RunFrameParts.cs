using System.Globalization;
using Casewright.Engine.Layout.Cases;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Runs;

/// <summary>
/// One face frame over all cases of a tier: end stiles of its full height, rails that run through between them, and a stile between the rails over
/// the middle of each joint of two cases. It is glued up by itself and goes on when the cases are joined.
/// </summary>
internal static class RunFrameParts
{
    /// <summary>The frames from the floor up: end stiles, joint stiles from left to right, top and bottom rail.</summary>
    public static IEnumerable<Part> Of(IReadOnlyList<CaseFigures> cases) => cases
        .Where(c => c.Run.Frame?.JointStile is not null)
        .GroupBy(c => c.Tier.Index)
        .SelectMany(tier => Frame([.. tier.OrderBy(c => c.Column.Index)]));

    private static IEnumerable<Part> Frame(CaseFigures[] cases)
    {
        var (first, last) = (cases[0], cases[^1]);
        var (run, frame) = (first.Run, first.Run.Frame!);
        var (left, right) = (FaceFrameParts.Overlaps(first).Left, FaceFrameParts.Overlaps(last).Right);
        var height = Rule.Of(new CaseSymbols(first).H);
        var between = height.Minus(Symbols.BoardWidth("wt", frame.TopRail)).Minus(Symbols.BoardWidth("wb", frame.BottomRail)).Nearest(Dimensions.Length, run.Step);
        var ends = height.Nearest(Dimensions.Length, run.Step);
        yield return Stile(first, "VL", "left stile", frame.EndStile, ends, first.X - left, first.Y, left);
        yield return Stile(first, "VR", "right stile", frame.EndStile, ends, last.XEnd + right - frame.EndStileWidth, first.Y, right);
        for (var i = 1; i < cases.Length; i++)
        {
            var joint = frame.JointStile!;
            var number = i.ToString(CultureInfo.InvariantCulture);
            yield return Stile(
                first, "VJ" + number, "joint stile " + number, joint, between, cases[i].X - (joint.BoardWidth!.Value / 2), first.Y + frame.BottomRailWidth, Length.Zero);
        }

        var through = Through(first, last, left, right).Nearest(Dimensions.Length, run.Step);
        var start = first.X - left + frame.EndStileWidth;
        yield return Member(first, "VT", "top rail", PartRole.Rail, frame.TopRail, through, Pose.StripFromBelow(run.Wall.Id, start, first.YEnd - frame.TopRailWidth, run.Run.Depth));
        yield return Member(first, "VB", "bottom rail", PartRole.Rail, frame.BottomRail, through, Pose.StripFromBelow(run.Wall.Id, start, first.Y, run.Run.Depth));
    }

    /// <summary>ΣW + laps − 2·ws.</summary>
    private static Rule Through(CaseFigures first, CaseFigures last, Length left, Length right)
    {
        var rule = Rule.Of(new DerivationInput("l", "all cases of the frame together", last.XEnd - first.X));
        if (left + right > Length.Zero)
            rule = rule.Plus(new("v", $"lap past a finished end ({first.Run.Path}.faceFrame.finishedOverlap)", Length.Max(left, right)), left > Length.Zero && right > Length.Zero ? 2 : 1);
        return rule.Minus(Symbols.BoardWidth("ws", first.Run.Frame!.EndStile), 2);
    }

    private static Part Stile(CaseFigures box, string family, string name, Material board, Derivation length, Length left, Length foot, Length overlap)
    {
        var part = Member(box, family, name, PartRole.Stile, board, length, Pose.UprightFacingRoom(box.Run.Wall.Id, left, foot, box.Run.Run.Depth));
        return overlap == Length.Zero ? part : part with { FitOnSite = $"{LengthFormat.Usual(overlap, box.Run.Job.Units)} past the finished end, trimmed flush after gluing" };
    }

    private static Part Member(CaseFigures box, string family, string name, PartRole role, Material board, Derivation length, Placement place)
    {
        var tier = box.Tiers == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $".{box.Tier.Index + 1}");
        return PartMaker.InRun(
            box.Run,
            $"{box.Run.Letters}-{family}{tier}",
            $"{name}, run {box.Run.Run.Name}",
            role,
            board,
            new(length, PartMaker.BoardWidth(board), PartMaker.Thickness(board)),
            place,
            FaceView.FrontOnly);
    }
}
