using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>What no wall can be: readings that cross, corners that are none, openings that overlap. Nothing is laid out against such a wall.</summary>
internal sealed class SurveyProblems(Job job, int index, ProblemList problems)
{
    private static readonly FeatureKind[] s_solid =
        [FeatureKind.Door, FeatureKind.Window, FeatureKind.Outlet, FeatureKind.Switch, FeatureKind.Register, FeatureKind.Radiator];

    private readonly Wall _wall = job.Walls[index];
    private readonly string _path = string.Create(CultureInfo.InvariantCulture, $"walls[{index}]");

    /// <summary>Looks at every wall of a job.</summary>
    public static void Check(Job job, ProblemList problems)
    {
        for (var i = 0; i < job.Walls.Count; i++)
            new SurveyProblems(job, i, problems).Check();
    }

    private void Check()
    {
        if (_wall.Survey is not { } survey)
            return;
        CheckKnown(survey);
        CheckLines(survey);
        CheckStations(survey.Floor, "floor");
        CheckStations(survey.Ceiling, "ceiling");
        CheckHeights(survey.Widths, "widths");
        CheckEnd(survey.LeftEnd, "leftEnd", isLeft: true);
        CheckEnd(survey.RightEnd, "rightEnd", isLeft: false);
        CheckFeatures(survey);
        CheckStuds(survey);
    }

    private void CheckKnown(WallSurvey survey)
    {
        if (survey.Opening is not { } opening)
        {
            if (_wall.StatedWidth is null)
                problems.Add($"{_path}.survey.widths", "The width of this wall is neither stated nor read.", "nothing", "a width reading, or \"width\" for the wall");
        }
        else if (opening.Width <= Length.Zero)
        {
            problems.Add($"{_path}.survey.widths", "The readings cross: between widths and plumb of the ends nothing is left.", opening.Width, "readings that leave an opening");
        }
        else if (_wall.StatedWidth is { } stated && stated > opening.Width + SurveyTolerance.Reading)
        {
            problems.Add($"{_path}.width", "This width is more than the tightest opening that the readings give.", stated, $"{problems.Say(opening.Width)} or less; or leave it out");
        }

        if (survey.LowestCeiling is not { } ceiling)
        {
            if (_wall.StatedHeight is null)
                problems.Add($"{_path}.survey.ceiling", "The height of this wall is neither stated nor read.", "nothing", "a ceiling reading, or \"height\" for the wall");
        }
        else if (_wall.CeilingSlopes.Count == 0 && _wall.StatedHeight is { } height && height > ceiling + SurveyTolerance.Reading)
        {
            problems.Add($"{_path}.height", "This height is more than the lowest ceiling that the readings give.", height, $"{problems.Say(ceiling)} or less; or leave it out");
        }
    }

    private void CheckLines(WallSurvey survey)
    {
        if (survey.FrontLine is not null)
            return;
        var front = survey.Floor.Concat(survey.Ceiling).Any(s => s.Front is not null)
            || survey.Widths.Concat(survey.LeftEnd?.Plumb ?? []).Concat(survey.RightEnd?.Plumb ?? []).Any(r => r.Front is not null);
        if (front)
            problems.Add($"{_path}.survey.frontLine", "There are front readings, but nobody said how far out from the wall they were taken.", "nothing", "the distance of the front line from the wall");
    }

    private void CheckStations(ValueList<StationReading> stations, string field)
    {
        for (var i = 0; i < stations.Count; i++)
        {
            var at = stations[i].At;
            if (stations.Take(i).Any(s => s.At == at))
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.{field}[{i}].at"), "This station was read twice.", at, "each place once");
            else if (_wall.Width > Length.Zero && at > _wall.Width + Slack)
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.{field}[{i}].at"), "This station is past the end of the wall.", at, $"at most {problems.Say(_wall.Width)}");
        }
    }

    private void CheckHeights(ValueList<HeightReading> readings, string field)
    {
        for (var i = 0; i < readings.Count; i++)
        {
            var height = readings[i].Height;
            if (readings.Take(i).Any(r => r.Height == height))
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.{field}[{i}].height"), "This height was read twice.", height, "each height once");
            else if (_wall.Height > Length.Zero && height > _wall.Height + Slack)
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.{field}[{i}].height"), "This height is above the ceiling.", height, $"at most {problems.Say(_wall.Height)}");
        }
    }

    private void CheckEnd(WallEnd? end, string field, bool isLeft)
    {
        if (end is null)
            return;
        CheckHeights(end.Plumb, field + ".plumb");
        var path = $"{_path}.survey.{field}";
        if (end.Corner is { } corner && corner.Angle is not (>= 45 and <= 315))
        {
            var found = corner.Angle is { } angle ? string.Create(CultureInfo.InvariantCulture, $"{angle:0.0}°") : "three sides that make no triangle";
            problems.Add($"{path}.corner", "This is no corner that casework can stand in.", found, "an angle from 45 to 315 degrees, or the sides of such a triangle");
        }

        if (end.Wall is not { } id)
            return;
        if (id == _wall.Id)
            problems.Add($"{path}.wall", "A wall cannot meet itself.", $"'{id}'", "the id of another wall");
        else if (job.Walls.FirstOrDefault(w => w.Id == id)?.Survey is { } other && (isLeft ? other.RightEnd : other.LeftEnd)?.Wall is { } back && back != _wall.Id)
            problems.Add($"{path}.wall", $"Wall {id} says that '{back}' meets it here.", $"'{id}'", "the same corner on both walls");
    }

    private void CheckFeatures(WallSurvey survey)
    {
        for (var i = 0; i < survey.Features.Count; i++)
        {
            var feature = survey.Features[i];
            var path = string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.features[{i}]");
            if (_wall.Width > Length.Zero && feature.X + feature.Width > _wall.Width + Slack)
                problems.Add($"{path}.x", $"{feature.Name} reaches past the end of the wall.", feature.X + feature.Width, $"an end at {problems.Say(_wall.Width)} or less");
            if (_wall.Height > Length.Zero && feature.Y + feature.Height > HighestCeiling(survey) + Slack)
                problems.Add($"{path}.y", $"{feature.Name} reaches above the ceiling.", feature.Y + feature.Height, $"a top at {problems.Say(HighestCeiling(survey))} or less");
            if (survey.Features.Take(i).FirstOrDefault(other => Overlap(feature, other)) is { } over)
                problems.Add(path, $"{feature.Name} overlaps {over.Name}.", $"from {problems.Say(feature.X)} to {problems.Say(feature.X + feature.Width)}, {problems.Say(feature.Y)} to {problems.Say(feature.Y + feature.Height)} up", "openings and fittings side by side or one above the other");
        }
    }

    private void CheckStuds(WallSurvey survey)
    {
        for (var i = 0; i < survey.Studs.Count; i++)
        {
            if (survey.Studs.Take(i).Contains(survey.Studs[i]))
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}.survey.studs[{i}]"), "This stud is listed twice.", survey.Studs[i], "each stud once");
        }
    }

    /// <summary>Readings are taken past the tightest opening where an end falls away.</summary>
    private static Length Slack { get; } = Length.FromMillimetres(150);

    private Length HighestCeiling(WallSurvey survey) => survey.Ceiling.Count == 0
        ? _wall.Height
        : survey.Datum + survey.Ceiling.SelectMany(s => new[] { s.Back, s.Front }).Max()!.Value;

    private static bool Overlap(WallFeature a, WallFeature b) =>
        s_solid.Contains(a.Kind) && s_solid.Contains(b.Kind)
        && a.X < b.X + b.Width && b.X < a.X + a.Width && a.Y < b.Y + b.Height && b.Y < a.Y + a.Height;
}
