using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>
/// Readings and casework become what one sets out by: levels, base heights and shims, the room at every height, fillers, scribe tables,
/// studs. Pure and exact but for corners and best straight lines, which are floating point.
/// </summary>
public static class SurveyStage
{
    /// <summary>What the readings of a job come to. A job without readings gives only what is missing.</summary>
    public static SurveyResult Read(Job job, Casework casework)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var walls = job.Walls.Where(w => w.Survey is not null).Select(w => ReadWall(w.Id, w.Survey!)).ToValueList();
        var runs = job.Runs.SelectMany(run => ReadRun(job, run, casework)).ToValueList();
        var missing = job.Walls.SelectMany(wall => MissingReading.Of(job, wall)).ToValueList();
        var findings = Enumerable.Range(0, job.Walls.Count).SelectMany(i => new Contradictions(job, i).Find())
            .Concat(FeaturesInTheWay.Find(job, casework))
            .Concat(StoolsOverTops.Find(job, casework))
            .Concat(runs.SelectMany(run => run.AllScribes.Select(scribe => Cover(job, scribe))))
            .ToValueList();
        return new(walls, runs, missing, findings);
    }

    private static SurveyedWall ReadWall(string id, WallSurvey survey)
    {
        var ceiling = survey.Ceiling.SelectMany(s => new[] { s.Back, s.Front }).Where(r => r is not null).Select(r => r!.Value).ToList();
        return new(
            id,
            LevelLine.Of(new(survey)),
            survey.Opening,
            EnvelopeRow.Of(survey),
            survey.LowestCeiling,
            ceiling.Count == 0 ? Length.Zero : ceiling.Max() - ceiling.Min());
    }

    private static IEnumerable<SurveyedRun> ReadRun(Job job, Run run, Casework casework)
    {
        if (job.Walls.FirstOrDefault(w => w.Id == run.Wall) is not { Survey: { } survey } wall)
            yield break;
        var end = run.Width is { } width ? run.Offset + width : wall.Width;
        var parts = casework.Parts.Where(p => p.Run == run.Id && p.Place.Wall == wall.Id).ToList();
        var tables = new ScribeTables(job, run, survey, wall.Width, parts);
        yield return new()
        {
            Run = run.Id,
            Wall = wall.Id,
            Base = BaseStation.Of(run, new(survey), run.Offset, end),
            Fillers = tables.Fillers().ToValueList(),
            Scribes = tables.Others().ToValueList(),
            Studs = casework.Cases.Where(c => c.Run == run.Id)
                .SelectMany(c => StudHits.Of(c, parts.Where(p => p.Case == c.Id), survey)).ToValueList(),
            EvenFiller = run.Left.Kind == EndKind.Wall && run.Right.Kind == EndKind.Wall ? (run.Left.Filler + run.Right.Filler) / 2 : null,
        };
    }

    /// <summary>A blank must cover its widest gap; what is scribed off it shows.</summary>
    private static Finding Cover(Job job, ScribeTable scribe)
    {
        string Say(Length length) => LengthFormat.Usual(length, job.Units);
        var isCrown = scribe.Against == "ceiling";
        return new()
        {
            Check = "scribe-blank",
            Severity = scribe.Covers ? Severity.Pass : isCrown ? Severity.Caution : Severity.Stop,
            Subject = scribe.Part,
            Message = $"{scribe.Name}: {Say(scribe.Narrowest)} to {Say(scribe.Widest)} is left of a blank {Say(scribe.Blank)} wide against the {scribe.Against}.",
            Value = (double)scribe.Widest.Millimetres,
            Limit = (double)scribe.Blank.Millimetres,
            Unit = "mm",
            Formula = "widest gap ≤ blank",
            Source = "Plain geometry, from the readings; straight between them",
            Standing = Standing.Arithmetic,
            Advice = scribe.Covers ? "" : isCrown
                ? $"Use a crown {Say(scribe.Widest - scribe.Blank)} wider or more lap, or leave an even shadow line under the ceiling."
                : $"Make the blank at least {Say(scribe.Widest)} wide.",
        };
    }
}
