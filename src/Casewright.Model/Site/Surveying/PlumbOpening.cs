using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// The widest box with plumb ends that goes between the ends of a wall at every height and on both lines. Its left end is x = 0 of the wall.
/// </summary>
/// <param name="Foot">Width at the foot of the wall, at the back: the least that any width reading and the lean of both ends give.</param>
/// <param name="LeftIn">How far the left end stands in from its foot at most.</param>
/// <param name="RightIn">How far the right end stands in from its foot at most.</param>
public sealed record PlumbOpening(Length Foot, Length LeftIn, Length RightIn)
{
    /// <summary>Width of the box: foot − left − right; not positive where the readings cross.</summary>
    public Length Width => Foot - LeftIn - RightIn;

    /// <summary>The opening that the readings give; null without a width reading.</summary>
    public static PlumbOpening? Of(WallSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        var (left, right) = (new EndProfile(survey.LeftEnd, survey.FrontLine), new EndProfile(survey.RightEnd, survey.FrontLine));
        Length? foot = null;
        foreach (var reading in survey.Widths)
        {
            foreach (var line in Enum.GetValues<ReadingLine>())
            {
                if (reading.On(line) is not { } width)
                    continue;
                var at = width + left.In(reading.Height, line) + right.In(reading.Height, line);
                foot = foot is { } least ? Length.Min(least, at) : at;
            }
        }

        return foot is { } found ? new(found, left.InMost, right.InMost) : null;
    }
}
