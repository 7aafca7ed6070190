using System.Globalization;
using Casewright.Engine.Layout.Corners;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What a corner takes and gives: its filler, the error of its angle, the reach into a blind case, the space lost in a dead one.</summary>
internal static class CornerNotice
{
    /// <summary>Least filler at a corner with doors or drawers: 50 mm, 2 in (common practice, no source).</summary>
    public static Length LeastFiller(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(2) : Length.FromMillimetres(50);

    /// <summary>Least opening through which one reaches into a blind case: 250 mm, 10 in (common practice, no source).</summary>
    public static Length LeastReach(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(10) : Length.FromMillimetres(250);

    /// <summary>The findings of the corners of a run.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases) =>
    [
        .. new[] { run.Left, run.Right }.Where(e => e.Corner is not null).SelectMany(e => At(run, e.Corner!)),
        .. cases.SelectMany(c => c.Blind.Select(b => Reach(run, c, b))),
    ];

    private static IEnumerable<Finding> At(RunFigures run, CornerFigures corner)
    {
        var units = run.Job.Units;
        if (corner.Diagonal is { Carries: true } diagonal)
        {
            yield return Front(run, corner, diagonal);
            yield break;
        }

        var fronts = RunReach.HasFronts(run.Run) || RunReach.HasFronts(corner.Other);
        var least = fronts ? LeastFiller(run) : Length.Zero;
        var narrow = corner.Visible < least;
        yield return new()
        {
            Check = "corner-filler",
            Severity = narrow ? Severity.Stop : Severity.Pass,
            Subject = run.Run.Id,
            Message = string.Create(CultureInfo.InvariantCulture, $"In its corner of {corner.Angle:0.##}° run {run.Run.Name} begins {LengthFormat.Usual(corner.Start, units)} from the end of its wall, clear of the front of run {corner.Other.Name}; the filler shows {LengthFormat.Usual(corner.Visible, units)}, {LengthFormat.Usual(corner.TakenUp, units)} of it for the error of the corner."),
            Value = (double)corner.Visible.Millimetres,
            Limit = (double)least.Millimetres,
            Unit = "mm",
            Formula = "max(q, p) + f − p; q = D1/cos e, p = q − D2·tan e",
            Source = "Plane geometry; the least filler where doors or drawers must open past one another is common practice, no source",
            Standing = Standing.Arithmetic,
            Advice = narrow ? $"Give the corner a filler of {LengthFormat.Usual(least, units)} or more, so that doors, drawers and their pulls clear." : "Check with a door opened and a drawer drawn, pulls on.",
            Inputs = [LayoutNotices.Input("front of the other run", corner.OtherReach), LayoutNotices.Input("depth of this run", run.Run.Depth), LayoutNotices.Input("filler asked for", corner.Filler)],
        };
        if (corner.Design.Kind == CornerKind.Dead)
            yield return Lost(run, corner);
    }

    private static Finding Front(RunFigures run, CornerFigures corner, DiagonalFigures diagonal)
    {
        string Say(Length length) => LengthFormat.Usual(length, run.Job.Units);
        var least = LeastReach(run);
        return new()
        {
            Check = "diagonal-corner",
            Severity = diagonal.Opening < least ? Severity.Stop : Severity.Pass,
            Subject = run.Run.Id,
            Message = $"The case in the corner of {corner.Angle.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)}° reaches {Say(diagonal.Leg)} along this wall and {Say(diagonal.OtherLeg)} along the other, {Say(diagonal.Off)} off it; its front is {Say(diagonal.Opening)} wide.",
            Value = (double)diagonal.Opening.Millimetres,
            Limit = (double)least.Millimetres,
            Unit = "mm",
            Formula = "o = √2·(L − D2 − t)",
            Source = "Plane geometry; how wide an opening one reaches through is common practice, no source",
            Standing = Standing.Arithmetic,
            Advice = diagonal.Opening < least ? "Make its leg longer." : "Its sides are screwed to both neighbours; the filler of the other run takes up the error of the corner.",
            Inputs = [LayoutNotices.Input("leg along this wall", diagonal.Leg), LayoutNotices.Input("depth of the other run", diagonal.OtherDepth), LayoutNotices.Input("thickness of the side", diagonal.Side)],
        };
    }

    private static Finding Lost(RunFigures run, CornerFigures corner) => new()
    {
        Check = "dead-corner",
        Severity = Severity.Pass,
        Subject = run.Run.Id,
        Message = $"Behind the post {LengthFormat.Usual(run.Run.Depth, run.Job.Units)} by {LengthFormat.Usual(corner.Other.Depth, run.Job.Units)} of floor are closed off and lost.",
        Value = run.Run.Depth.Metres * corner.Other.Depth.Metres,
        Unit = "m²",
        Formula = "D1·D2",
        Source = "Plain arithmetic",
        Standing = Standing.Arithmetic,
    };

    private static Finding Reach(RunFigures run, CaseFigures box, BlindFigures blind)
    {
        var opening = blind.AtRight ? blind.Limit - box.BayLeft(box.Bays - 1) : box.BayRight(0) - blind.Limit;
        var least = LeastReach(run);
        var narrow = opening < least;
        return new()
        {
            Check = "blind-corner-reach",
            Severity = narrow ? Severity.Stop : Severity.Pass,
            Subject = box.Id,
            Message = $"One reaches into the blind part of case {box.Number} through an opening {LengthFormat.Usual(opening, run.Job.Units)} wide.",
            Value = (double)opening.Millimetres,
            Limit = (double)least.Millimetres,
            Unit = "mm",
            Formula = "W − D2 − f, less the side",
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = narrow ? "Make the end case wider, or the corner dead." : "",
            Inputs = [LayoutNotices.Input("outer width of the case", box.Width), LayoutNotices.Input("depth of the run in front", blind.Run.Depth), LayoutNotices.Input("filler", blind.Filler)],
        };
    }
}
