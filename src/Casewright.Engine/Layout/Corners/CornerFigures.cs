using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Corners;

/// <summary>
/// A corner as one run sees it: where the front of the other run cuts its wall, and where its own cases may begin. With an error e of the
/// corner from square, the other run's front plane, D1 from its wall, cuts this run's wall at q = D1/cos e and its front line, D2 out, at
/// p = D1/cos e − D2·tan e. Cases begin at the larger of the two and a filler; the filler in front is then as wide as from p to there, so
/// that it takes up D2·tan e where the corner is open.
/// </summary>
/// <param name="Design">The corner as designed.</param>
/// <param name="Path">Path of the run's end in the job file.</param>
/// <param name="Other">The other run.</param>
/// <param name="OtherReach">From the other wall to the foremost face of the other run: its depth and what is overlaid on it.</param>
/// <param name="Angle">Angle of the corner in degrees.</param>
/// <param name="AtWall">q: where the other run's front cuts this wall, from its end.</param>
/// <param name="AtFront">p: where it cuts this run's front line, from the end of this wall.</param>
/// <param name="Filler">The filler asked for.</param>
/// <param name="Offset">How far x of this wall begins inside the corner, where its survey says so.</param>
internal sealed record CornerFigures(
    CornerDesign Design, string Path, Run Other, Length OtherReach, double Angle, Length AtWall, Length AtFront, Length Filler, Length Offset)
{
    /// <summary>From the end of the wall to the first case.</summary>
    public Length Start => Length.Max(AtWall, AtFront) + Filler - Offset;

    /// <summary>Visible width of the filler at the front.</summary>
    public Length Visible => Start - (AtFront - Offset);

    /// <summary>What the filler takes up of the error of the corner at the front, more than was asked for.</summary>
    public Length TakenUp => Visible - Filler;

    /// <summary>The case in a diagonal corner; null for other corners.</summary>
    public DiagonalFigures? Diagonal { get; init; }

    /// <summary>From the first case to the toe face of the other run, or of the diagonal case, towards the corner.</summary>
    public Length ToToe => Diagonal is { } diagonal ? Visible + diagonal.ToeBeyond : Visible + (OtherReach - Other.Depth) + (Other.Base.Kind == BaseKind.None ? Length.Zero : Other.Base.Setback);
}

/// <summary>What stands in front of the end case of a run that goes through into a blind corner.</summary>
/// <param name="AtRight">Whether the corner is at the right end of the run.</param>
/// <param name="Limit">Where the visible front of the case ends, along this wall.</param>
/// <param name="Filler">Visible width of the blind panel.</param>
/// <param name="Run">The run that stops in front of it.</param>
internal sealed record BlindFigures(bool AtRight, Length Limit, Length Filler, Run Run)
{
    /// <summary>How far the blind panel goes on behind the other run (50 mm, 2 in; common practice, no source).</summary>
    public static Length Lap(Job job) => job.Units == UnitSystem.Inches ? Length.FromInches(2) : Length.FromMillimetres(50);
}
