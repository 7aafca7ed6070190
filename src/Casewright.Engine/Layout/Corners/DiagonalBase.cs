using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Runs;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Corners;

/// <summary>
/// The base under a diagonal case: a rail along each wall, a rung under each side, a rail and a toe face across the corner between the toe faces of both runs,
/// and the crown across it. Where members meet across the corner they are cut to 22 1/2 degrees.
/// </summary>
internal static class DiagonalBase
{
    /// <summary>The parts at both ends of a run that carries diagonal cases.</summary>
    public static IEnumerable<Part> Of(RunFigures run)
    {
        foreach (var (end, atRight) in new[] { (run.Left, false), (run.Right, true) })
        {
            if (end.Corner is not { Diagonal: { Carries: true } d })
                continue;
            var suffix = atRight ? "R" : "L";
            if (run.Run.Base.Kind == BaseKind.Plinth)
            {
                foreach (var part in Ladder(run, d, atRight, suffix))
                    yield return part;
            }

            if (run.Crown is not null)
                yield return Crown(run, d, atRight, suffix);
        }
    }

    private static IEnumerable<Part> Ladder(RunFigures run, DiagonalFigures d, bool atRight, string suffix)
    {
        var t = run.Base.Thickness;
        var near = atRight ? run.CasesRight : run.CasesLeft;
        var far = atRight ? near + d.Leg : near - d.Leg;
        var height = Rule.Of(Symbols.Base(run)).Minus(new("k", $"room for shims ({run.Path}.base.shimRoom)", run.Run.Base.ShimRoom)).Nearest(Dimensions.Width, run.Step);
        Part Member(string id, string name, PartRole role, DerivationInput length, Placement place) => PartMaker.InRun(
            run,
            $"{run.Letters}-G{suffix}{id}",
            $"{name}, corner base, run {run.Run.Name}",
            role,
            run.Base,
            new(Rule.Of(length).Down(Dimensions.Length, run.Step), height, PartMaker.Thickness(run.Base)),
            place,
            FaceView.HiddenStrip);
        yield return Member("1", "rail along the wall", PartRole.BaseRail, new("L", "leg along the wall", d.Leg), Pose.StripFromAbove(run.Wall.Id, Length.Min(near, far), run.BaseHeight, t));
        yield return Member(
            "2",
            "rail along the other wall",
            PartRole.BaseRail,
            new("m", "leg along the other wall, less the first rail", d.OtherLeg - t),
            atRight ? Pose.ReturnFacingLeft(run.Wall.Id, far - t, run.BaseHeight, d.OtherLeg) : Pose.ReturnFacingRight(run.Wall.Id, far + t, run.BaseHeight, d.OtherLeg));
        var back = d.Setback + (t * 2);
        yield return Member(
            "3",
            "rung under side A",
            PartRole.BaseRung,
            new("r", "depth of the run less setback, toe face and rails", d.Depth - back),
            atRight ? Pose.ReturnFacingLeft(run.Wall.Id, near, run.BaseHeight, d.Depth - d.Setback - t) : Pose.ReturnFacingRight(run.Wall.Id, near, run.BaseHeight, d.Depth - d.Setback - t));
        yield return Member(
            "4",
            "rung under side B",
            PartRole.BaseRung,
            new("r", "depth of the other run less setback, toe face and rails", d.OtherDepth - back),
            Pose.StripFromAbove(run.Wall.Id, atRight ? far - d.OtherDepth + d.Setback + t : far + t, run.BaseHeight, d.OtherLeg));
        yield return Member(
            "5", "rail across the corner", PartRole.BaseRail, new("lz", "between the lines of the front rails: o + z·(2√2 − 2)", d.ToeAcross(d.Setback + t)), Across(run, d, atRight, d.Setback + t, run.BaseHeight));
        var toe = new DerivationInput("lz", "between the toe faces of both runs: o + z·(2√2 − 2)", d.ToeAcross(d.Setback));
        yield return PartMaker.InRun(
            run,
            $"{run.Letters}-T{suffix}D",
            $"toe face across the corner, run {run.Run.Name}",
            PartRole.ToeFace,
            run.Base,
            new(Rule.Of(toe).Nearest(Dimensions.Length, run.Step), LadderBase.ToeHeight(run), PartMaker.Thickness(run.Base)),
            Across(run, d, atRight, d.Setback, run.BaseHeight),
            FaceView.FrontOnly) with
        {
            FitOnSite = LadderBase.FloorScribe(run) + "; ends cut to 22 1/2 degrees",
        };
    }

    private static Part Crown(RunFigures run, DiagonalFigures d, bool atRight, string suffix)
    {
        var crown = run.Crown!;
        var front = crown.Thickness;
        var length = Rule.Of(new DerivationInput("o", "clear width of the diagonal front", d.Opening)).Plus(new("x", "waste for fitting", MouldingLine.Waste(run))).Nearest(Dimensions.Length, run.Step);
        var upper = run.Top - run.Run.Head.CrownLap + crown.BoardWidth!.Value;
        return PartMaker.InRun(
            run, $"{run.Letters}-H{suffix}D", $"crown across the corner, run {run.Run.Name}", PartRole.Crown, crown, new(length, PartMaker.BoardWidth(crown), PartMaker.Thickness(crown)), Across(run, d, atRight, -front, upper), FaceView.FrontOnly) with
        {
            FitOnSite = $"{LengthFormat.Usual(MouldingLine.Waste(run), run.Job.Units)} left on in length, mitred to 22 1/2 degrees at both ends",
        };
    }

    /// <summary>A level strip across the corner, its front a distance behind the diagonal front, from where it meets the same line of the run on its left.</summary>
    private static Placement Across(RunFigures run, DiagonalFigures d, bool atRight, Length behind, Length upper)
    {
        var along = DiagonalFigures.Diagonal(behind) - behind;
        var near = atRight ? run.CasesRight : run.CasesLeft;
        var origin = atRight
            ? new Point3(near + d.Side + along, upper, d.Depth - behind)
            : new Point3(near - d.Leg + d.OtherDepth - behind, upper, d.OtherLeg - d.Side - along);
        return new(run.Wall.Id, origin, Axis.Right, Axis.Down, Axis.In) { Eighths = atRight ? 1 : -1 };
    }
}
