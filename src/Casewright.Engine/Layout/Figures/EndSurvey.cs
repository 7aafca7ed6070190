using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Layout.Figures;

/// <summary>What the survey of a wall adds to the blanks of a run; null where it was not surveyed.</summary>
internal static class EndSurvey
{
    /// <summary>How far the wall at an end falls away from its innermost point, where the run meets it with a filler: at the front line and further out.</summary>
    public static Length? FallsAway(Run run, Wall wall, bool isLeft)
    {
        var design = isLeft ? run.Left : run.Right;
        var reaches = isLeft ? run.Offset == Length.Zero : (run.Width is not { } width || run.Offset + width == wall.Width);
        if (design.Kind != EndKind.Wall || !reaches || wall.Survey is not { Opening: { } opening } survey)
            return null;
        if ((isLeft ? survey.LeftEnd : survey.RightEnd) is not { Plumb.Count: > 0 } end)
            return null;
        var profile = new EndProfile(end, survey.FrontLine);
        var innermost = isLeft ? opening.LeftIn : opening.RightIn;
        var deepest = profile.Heights.Select(h => innermost - profile.In(h, run.Depth)).Max();
        return Length.Max(deepest, Length.Zero);
    }

    /// <summary>How far the wall behind an applied end panel, or a rear lipping, lies behind its foremost point.</summary>
    public static Length? Behind(Run run, Wall wall, bool isLeft)
    {
        if ((isLeft ? run.Left : run.Right) is { Panel: null, Lipping: not { Rear: not null } } || wall.Survey is not { } survey || new WallPlane(survey) is { IsEmpty: true })
            return null;
        var at = isLeft ? run.Offset : run.Width is { } width ? run.Offset + width : wall.Width;
        return new WallPlane(survey).Deepest(at, at, wall.Height);
    }

    /// <summary>How far the floor under the toe face falls below the highest floor point.</summary>
    public static Length? FloorFall(Run run, Wall wall)
    {
        if (wall.Survey is not { } survey || new FloorProfile(survey) is { IsEmpty: true })
            return null;
        var end = run.Width is { } width ? run.Offset + width : wall.Width;
        return new FloorProfile(survey).Deepest(run.Offset, end, run.Depth - run.Base.Setback);
    }
}
