using System.Globalization;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>Readings of a wall that cannot all be true: each finding names the reading to take again, or those among which it is.</summary>
internal sealed class Contradictions(Job job, int index)
{
    private readonly Wall _wall = job.Walls[index];
    private readonly string _path = string.Create(CultureInfo.InvariantCulture, $"walls[{index}].survey");

    private sealed record Estimate(string Path, string Name, ReadingLine Line, Length Foot);

    /// <summary>The findings, in the order of the file.</summary>
    public IEnumerable<Finding> Find()
    {
        if (_wall.Survey is not { } survey)
            return [];
        var estimates = Estimates(survey).ToList();
        return
        [
            .. Stated("width", _wall.StatedWidth, survey.Opening?.Width),
            .. Stated("height", _wall.StatedHeight, _wall.CeilingSlopes.Count == 0 ? survey.LowestCeiling : null),
            .. Datum(survey),
            .. Widths(survey, estimates),
            .. survey.Diagonals.SelectMany((d, i) => Diagonal(survey, estimates, d, i)),
            .. Corner(survey.LeftEnd, isLeft: true),
            .. Corner(survey.RightEnd, isLeft: false),
        ];
    }

    /// <summary>A smaller figure than the readings give only wastes room; a larger one is a problem before the layout.</summary>
    private IEnumerable<Finding> Stated(string what, Length? stated, Length? surveyed)
    {
        if (stated is { } written && surveyed is { } read && written != read)
        {
            yield return Make(
                _wall.Id,
                $"The {what} of {_wall.Name} is written down as {Say(written)}; its readings give {Say(read)}. The plan takes what is written.",
                written - read,
                Length.Zero,
                $"Leave \"{what}\" out to take the readings, or measure again.");
        }
    }

    private IEnumerable<Finding> Datum(WallSurvey survey)
    {
        var points = new FloorProfile(survey).Points.ToList();
        if (points.Count == 0)
            yield break;
        var high = points.MinBy(p => p.Below);
        if (high.Below < -SurveyTolerance.Datum)
        {
            yield return Make(
                $"{_path}.floor",
                $"The floor of {_wall.Name} at {Say(high.At)}, {Words(high.Line)}, lies {Say(-high.Below)} above what is given as the highest floor point.",
                -high.Below,
                SurveyTolerance.Datum,
                $"Read it again, or give the level line {Say(survey.Datum + high.Below)} above the highest point; cases set from too low a point do not fit under the ceiling.");
        }
    }

    private IEnumerable<Estimate> Estimates(WallSurvey survey)
    {
        var (left, right) = (new EndProfile(survey.LeftEnd, survey.FrontLine), new EndProfile(survey.RightEnd, survey.FrontLine));
        for (var i = 0; i < survey.Widths.Count; i++)
        {
            var reading = survey.Widths[i];
            foreach (var line in Enum.GetValues<ReadingLine>())
            {
                if (reading.On(line) is { } width)
                {
                    var place = string.Create(CultureInfo.InvariantCulture, $"{_path}.widths[{i}].{(line == ReadingLine.Back ? "back" : "front")}");
                    yield return new(place, $"{Say(reading.Height)} up, {Words(line)}", line, width + left.In(reading.Height, line) + right.In(reading.Height, line));
                }
            }
        }
    }

    /// <summary>
    /// width(h) = width at the foot − what the left end stands in − what the right end stands in: every width reading gives the foot. Lines are
    /// compared with one another only where both corners were measured. Without plumb readings of both ends the check says nothing.
    /// </summary>
    private IEnumerable<Finding> Widths(WallSurvey survey, List<Estimate> estimates)
    {
        if (survey.LeftEnd is not { Plumb.Count: > 0 } left || survey.RightEnd is not { Plumb.Count: > 0 } right)
            return [];
        var together = left.Corner is not null && right.Corner is not null;
        return estimates.GroupBy(e => together ? ReadingLine.Back : e.Line).SelectMany(group => Disagreement([.. group]));
    }

    private IEnumerable<Finding> Disagreement(List<Estimate> estimates)
    {
        if (estimates.Count < 2 || Spread(estimates) <= SurveyTolerance.Reading)
            yield break;
        var suspects = estimates.Count == 2 ? [] : estimates.Where(e => Spread([.. estimates.Where(o => o != e)]) <= SurveyTolerance.Reading).ToList();
        var others = suspects.Count == 1 ? estimates.Where(e => e != suspects[0]).ToList() : estimates;
        yield return Make(
            suspects.Count == 1 ? suspects[0].Path : $"{_path}.widths",
            suspects.Count == 1
                ? $"The width of {_wall.Name} {suspects[0].Name} does not fit the plumb of its ends: it gives {Say(suspects[0].Foot)} at the foot, the others {Say(others.Min(e => e.Foot))} to {Say(others.Max(e => e.Foot))}."
                : $"The widths of {_wall.Name} and the plumb of its ends do not agree: they give {Say(estimates.Min(e => e.Foot))} to {Say(estimates.Max(e => e.Foot))} at the foot ({string.Join("; ", estimates.Select(e => e.Name))}).",
            Spread(estimates),
            SurveyTolerance.Reading,
            suspects.Count == 1
                ? "Take this width again, and the plumb of both ends at its height. Until then the plan takes the tightest."
                : "Take the widths and the plumb of both ends again. Until then the plan takes the tightest.",
            "width(h) = width at the foot − in at left(h) − in at right(h)");
    }

    /// <summary>d² = (width between the two points)² + (difference of their heights)².</summary>
    private IEnumerable<Finding> Diagonal(WallSurvey survey, List<Estimate> estimates, DiagonalReading diagonal, int number)
    {
        if (estimates.Count == 0)
            yield break;
        var feet = estimates.Select(e => e.Foot).Order().ToList();
        var (left, right) = (new EndProfile(survey.LeftEnd, survey.FrontLine), new EndProfile(survey.RightEnd, survey.FrontLine));
        var level = feet[feet.Count / 2] - left.In(diagonal.LeftHeight, diagonal.Line) - right.In(diagonal.RightHeight, diagonal.Line);
        var rise = diagonal.RightHeight - diagonal.LeftHeight;
        var expected = Length.FromNanometres((long)Math.Round(Math.Sqrt(Math.Pow((double)level.Millimetres, 2) + Math.Pow((double)rise.Millimetres, 2)) * 10) * 100_000);
        var off = (diagonal.Distance - expected).Abs();
        if (off > SurveyTolerance.Diagonal)
        {
            yield return Make(
                string.Create(CultureInfo.InvariantCulture, $"{_path}.diagonals[{number}]"),
                $"The diagonal of {_wall.Name} from {Say(diagonal.LeftHeight)} at its left to {Say(diagonal.RightHeight)} at its right reads {Say(diagonal.Distance)}; widths, plumb and heights give {Say(expected)}.",
                off,
                SurveyTolerance.Diagonal,
                "Take the diagonal again with the heights of both its ends, then the width at the foot.",
                "diagonal² = width² + rise²");
        }
    }

    private IEnumerable<Finding> Corner(WallEnd? end, bool isLeft)
    {
        if (end?.Wall is not { } id || job.Walls.FirstOrDefault(w => w.Id == id)?.Survey is not { } other)
            yield break;
        var name = isLeft ? "leftEnd" : "rightEnd";
        if (isLeft && other.Datum != _wall.Survey!.Datum)
        {
            yield return Make(
                $"{_path}.datum",
                $"{_wall.Name} and {id} meet in a corner but their level lines are {Say(_wall.Survey.Datum)} and {Say(other.Datum)} above the highest floor point.",
                (other.Datum - _wall.Survey.Datum).Abs(),
                Length.Zero,
                "Read both walls from one level line, so that their bases meet at one height.");
        }

        var theirs = isLeft ? other.RightEnd : other.LeftEnd;
        if (isLeft && end.Corner?.Angle is { } mine && theirs?.Corner?.Angle is { } their && Math.Abs(mine - their) > SurveyTolerance.CornerDegrees)
        {
            yield return Make(
                $"{_path}.{name}.corner",
                string.Create(CultureInfo.InvariantCulture, $"The corner of {_wall.Name} and {id} reads {mine:0.0}° from one wall and {their:0.0}° from the other."),
                null,
                null,
                "Measure the corner again, by the three sides of a triangle as large as the room allows.");
        }
    }

    private static Length Spread(IReadOnlyList<Estimate> estimates) => estimates.Max(e => e.Foot) - estimates.Min(e => e.Foot);

    private static string Words(ReadingLine line) => line == ReadingLine.Back ? "at the wall" : "at the front line";

    private string Say(Length length) => LengthFormat.Usual(length, job.Units);

    private static Finding Make(string subject, string message, Length? value, Length? limit, string advice, string formula = "") => new()
    {
        Check = "survey-contradiction",
        Severity = Severity.Caution,
        Subject = subject,
        Message = message,
        Value = value is { } found ? (double)found.Millimetres : null,
        Limit = limit is { } most ? (double)most.Millimetres : null,
        Unit = value is null ? "" : "mm",
        Formula = formula,
        Source = "Plain geometry; how far readings may differ is our judgement",
        Standing = Standing.Judgement,
        Advice = advice,
    };
}
