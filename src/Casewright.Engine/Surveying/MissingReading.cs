using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>A reading that nobody took.</summary>
/// <param name="Wall">Id of the wall.</param>
/// <param name="What">What was not read, in words.</param>
/// <param name="Decides">What it decides.</param>
public sealed record MissingReading(string Wall, string What, string Decides)
{
    /// <summary>What is missing of a wall, in the order in which one measures; of a wall without a survey, everything.</summary>
    internal static IEnumerable<MissingReading> Of(Job job, Wall wall)
    {
        if (wall.Survey is not { } survey)
            return [new(wall.Id, "the whole survey", "base heights, shims, fillers, scribe tables, studs and cut-outs")];
        var runs = job.Runs.Where(r => r.Wall == wall.Id).ToList();
        return
        [
            .. Floor(wall, survey, runs),
            .. Ceiling(wall, survey),
            .. Width(wall, survey, runs),
            .. End(wall, survey.LeftEnd, "left", runs.Any(r => r.Left.Kind == EndKind.Wall && r.Offset == Length.Zero)),
            .. End(wall, survey.RightEnd, "right", runs.Any(r => r.Right.Kind == EndKind.Wall && (r.Width is not { } width || r.Offset + width >= wall.Width))),
            .. Face(job, wall, survey),
        ];
    }

    private static IEnumerable<MissingReading> Floor(Wall wall, WallSurvey survey, List<Run> runs)
    {
        if (survey.Floor.Count == 0)
        {
            yield return new(wall.Id, "the floor, every 600 mm, at the wall and at the front", "where the base is highest, its height and shims at every station, the toe face's blank");
            yield break;
        }

        if (survey.Floor.All(s => s.Front is null))
            yield return new(wall.Id, "the floor at the front line", "whether the base must be packed from back to front, and the scribe of the toe face");
        var places = survey.Floor.Select(s => s.At).Order().ToList();
        var (from, to) = runs.Count == 0 ? (Length.Zero, wall.Width) : (runs.Min(r => r.Offset), runs.Max(r => r.Width is { } width ? r.Offset + width : wall.Width));
        var widest = places.Append(to).Zip(places.Prepend(from), (next, last) => next - last).Max();
        if (widest > SurveyTolerance.StationSpacing)
            yield return new(wall.Id, "floor stations nearer together than 650 mm, from end to end of the run", "shims between the stations; a hump between two of them stops the base");
    }

    private static IEnumerable<MissingReading> Ceiling(Wall wall, WallSurvey survey)
    {
        if (survey.Ceiling.Count == 0)
            yield return new(wall.Id, "the ceiling, at the stations of the floor", "the height of the cases, whether they can be stood up, the blank of crown or fascia");
        else if (survey.Ceiling.Count < 2)
            yield return new(wall.Id, "the ceiling at more than one station", "how much crown or fascia must cover");
    }

    private static IEnumerable<MissingReading> Width(Wall wall, WallSurvey survey, List<Run> runs)
    {
        if (survey.Widths.Count == 0)
            yield return new(wall.Id, "widths at three heights, at the wall and at the front", "the tightest opening");
        else if (survey.Widths.Count < 3)
            yield return new(wall.Id, "widths at three heights", "the tightest opening, and a check on the plumb of the ends");
        if (survey.Widths.Count > 0 && survey.Widths.All(w => w.Front is null))
            yield return new(wall.Id, "widths at the front line", "whether the cases go in as deep as they are");
        if (survey.FrontLine is { } line && runs.Count > 0 && runs.Max(r => r.Depth) > line + SurveyTolerance.Reading)
            yield return new(wall.Id, "front readings as far out as the cases are deep", "the opening in front of the front line");
        if (survey.Diagonals.Count == 0)
            yield return new(wall.Id, "a diagonal", "a check on all widths and heights at once");
    }

    private static IEnumerable<MissingReading> End(Wall wall, WallEnd? end, string side, bool meets)
    {
        if (!meets)
            yield break;
        if (end is null || end.Plumb.Count < 2)
            yield return new(wall.Id, $"the plumb of the {side} end at floor, 1 m, 2 m and ceiling", $"the blank and the scribe of the {side} filler, and the tightest opening");
        if (end?.Corner is null)
            yield return new(wall.Id, $"the angle of the {side} corner", "on which side the front is tighter than the back");
    }

    private static IEnumerable<MissingReading> Face(Job job, Wall wall, WallSurvey survey)
    {
        if (survey.Strings.Count == 0)
            yield return new(wall.Id, "the bow of the wall, by a string", "how far the cases stand off the wall, and the scribe of end panels");
        if (survey.PlumbLines.Count == 0)
            yield return new(wall.Id, "the lean of the wall, by a plumb line", "what is packed out behind nailers, and the scribe of end panels");
        var structure = survey.Structure ?? job.Site.Walls;
        if (structure is null)
            yield return new(wall.Id, "what the wall is made of", "how the cases are fixed");
        if (structure is not WallStructure.Masonry && survey.Studs.Count == 0)
            yield return new(wall.Id, "the centres of the studs", "what each case is screwed to, and where blocking is needed");
        foreach (var door in survey.Features.Where(f => f is { Kind: FeatureKind.Door, Swing: null }))
            yield return new(wall.Id, $"how {door.Name} opens", "what its leaf needs free of casework");
        if (survey.Features.Count == 0)
            yield return new(wall.Id, "doors, windows, outlets, switches, registers, radiators and pipes, or that there are none", "what the cases must clear, and cut-outs in backs");
    }
}
