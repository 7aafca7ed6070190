using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>Fillers at walls and panels at finished ends.</summary>
internal static class RunEnds
{
    /// <summary>Left end, then right end: over the whole height, or tier by tier where the tiers differ in depth or a counter parts them.</summary>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<TierSpan> tiers)
    {
        foreach (var (end, left) in new[] { (run.Left, true), (run.Right, false) })
        {
            foreach (var stretch in EndStretch.Of(run, tiers))
            {
                if (end.Filler > Length.Zero)
                    yield return Filler(stretch, end, left);
                if (end.Panel is not null)
                    yield return Panel(stretch, end, left);
            }
        }
    }

    /// <summary>Blank = visible filler + what the wall falls away + scribe allowance; from the base, or the floor where the sides stand on it, to the top of the cases.</summary>
    private static Part Filler(EndStretch stretch, EndFigures end, bool left)
    {
        var run = stretch.Run;
        var side = left ? "left" : "right";
        var height = stretch.FillerHeight;
        var width = Width(run, end, side);
        var size = new PartSize(height.Nearest(Dimensions.Length, run.Step), width.Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(end.FillerMaterial));
        var foot = stretch.FillerFoot;
        var place = left
            ? Pose.UprightFacingRoomFromRight(run.Wall.Id, run.CasesLeft, foot, run.Run.Depth)
            : Pose.UprightFacingRoom(run.Wall.Id, run.CasesRight, foot, run.Run.Depth);
        var id = $"{run.Letters}-X{(left ? "L" : "R")}{stretch.Suffix}";
        return PartMaker.InRun(run, id, $"{side} filler, run {run.Run.Name}", PartRole.Filler, end.FillerMaterial, size, place, FaceView.FrontOnly) with
        {
            FitOnSite = Left(run) + (end.Corner is { } corner ? $", planed to the front of run {corner.Other.Name}" : ", scribed to the wall"),
        };
    }

    /// <summary>
    /// Blank = visible filler + scribe allowance. In a corner it takes up the error of the angle as well; in a dead corner the two fillers
    /// make the post: the one of the run that comes second laps behind the other by a thickness.
    /// </summary>
    private static Rule Width(RunFigures run, EndFigures end, string side)
    {
        var asked = end.Corner?.Filler ?? end.Filler;
        var width = Rule.Of(new DerivationInput("f", $"visible filler ({run.Path}.{side}.filler)", asked));
        if (end.Corner is not { } corner)
            return width.PlusAny(Symbols.FallsAway(end)).Plus(Symbols.Scribe(run));
        if (corner.TakenUp != Length.Zero)
            width = width.Plus(new("ke", "taken up of the error of the corner: D·tan e at the front", corner.TakenUp));
        var laps = corner.Design.Kind == CornerKind.Dead && string.CompareOrdinal(run.Run.Id, corner.Other.Id) > 0;
        return (laps ? width.Plus(Symbols.Thickness("t", end.FillerMaterial)) : width).Plus(Symbols.Scribe(run));
    }

    /// <summary>Width D + what the wall lies behind + scribe allowance; from the floor to the top of the cases, so that the toe space ends against it.</summary>
    private static Part Panel(EndStretch stretch, EndFigures end, bool left)
    {
        var run = stretch.Run;
        var material = end.Panel!;
        var side = left ? "left" : "right";
        var width = Rule.Of(Symbols.Depth(run)).PlusAny(Symbols.Behind(end)).Plus(Symbols.Scribe(run));
        var size = new PartSize(stretch.PanelHeight.Nearest(Dimensions.Length, run.Step), width.Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(material));
        var place = left
            ? Pose.FacingLeft(run.Wall.Id, run.X, stretch.PanelFoot, run.Run.Depth)
            : Pose.FacingRight(run.Wall.Id, run.XEnd, stretch.PanelFoot, run.Run.Depth);
        var id = $"{run.Letters}-E{(left ? "L" : "R")}{stretch.Suffix}";
        return PartMaker.InRun(run, id, $"{side} end panel, run {run.Run.Name}", PartRole.EndPanel, material, size, place, FaceView.EndPanel) with
        {
            FitOnSite = Left(run) + " along the rear edge, scribed to the wall",
        };
    }

    private static string Left(RunFigures run) => LengthFormat.Usual(run.Joinery.ScribeAllowance, run.Job.Units) + " left on";
}
