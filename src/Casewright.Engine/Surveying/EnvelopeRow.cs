using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>The room between the ends of a wall at one height.</summary>
/// <param name="Height">Height above the highest floor point.</param>
/// <param name="Line">At the wall or at the front line.</param>
/// <param name="Left">From the plumb line at x = 0 to the left end: zero where that end is innermost, else negative.</param>
/// <param name="Right">From the plumb line at x = 0 to the right end.</param>
/// <param name="Behind">Largest gap behind the plumb plane at the foremost point of the wall, at this height.</param>
public sealed record EnvelopeRow(Length Height, ReadingLine Line, Length Left, Length Right, Length Behind)
{
    /// <summary>Width between the ends.</summary>
    public Length Width => Right - Left;

    /// <summary>The envelope of a wall at all heights that were read; empty without a width reading.</summary>
    internal static ValueList<EnvelopeRow> Of(WallSurvey survey)
    {
        if (survey.Opening is not { } opening)
            return [];
        var (left, right) = (new EndProfile(survey.LeftEnd, survey.FrontLine), new EndProfile(survey.RightEnd, survey.FrontLine));
        var plane = new WallPlane(survey);
        var places = survey.Strings.SelectMany(s => s.Readings.Select(r => r.At)).Append(Length.Zero).ToList();
        var heights = left.Heights.Concat(right.Heights).Concat(survey.Widths.Select(w => w.Height)).Distinct().Order();
        ReadingLine[] lines = survey.FrontLine is null ? [ReadingLine.Back] : [ReadingLine.Back, ReadingLine.Front];
        return heights.SelectMany(height => lines.Select(line => new EnvelopeRow(
            height,
            line,
            left.In(height, line) - opening.LeftIn,
            opening.Foot - opening.LeftIn - right.In(height, line),
            places.Max(x => plane.Behind(x, height))))).ToValueList();
    }
}
