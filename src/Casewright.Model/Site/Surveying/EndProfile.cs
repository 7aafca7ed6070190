using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// How far the wall at one end of a wall stands in from its own foot at the back: positive where it comes into the room. Between readings
/// it is straight; above the highest and below the lowest reading it is taken as plumb.
/// </summary>
/// <param name="end">The end; null for an open end, which nowhere comes in.</param>
/// <param name="frontLine">Distance of the front line from the wall; null without one.</param>
public sealed class EndProfile(WallEnd? end, Length? frontLine)
{
    private readonly Length _front = frontLine is { } distance ? end?.Corner?.ComesIn(distance) ?? Length.Zero : Length.Zero;

    /// <summary>Heights at which it was measured on a line, from the lowest up.</summary>
    public IEnumerable<Length> Heights(ReadingLine line) => Readings(line).Select(r => r.Height);

    /// <summary>How far it stands in at a height on a line.</summary>
    public Length In(Length height, ReadingLine line)
    {
        var readings = Readings(line).ToList();
        var corner = line == ReadingLine.Front ? _front : Length.Zero;
        return readings.Count == 0 ? corner : corner + readings[0].Gap - GapAt(readings, height);
    }

    /// <summary>How far it stands in at most, on either line.</summary>
    public Length InMost => Lines
        .SelectMany(line => Heights(line).DefaultIfEmpty(Length.Zero).Select(height => In(height, line)))
        .Aggregate(Length.Max);

    private IEnumerable<ReadingLine> Lines => frontLine is null ? [ReadingLine.Back] : [ReadingLine.Back, ReadingLine.Front];

    private IEnumerable<(Length Height, Length Gap)> Readings(ReadingLine line) => (end?.Plumb ?? [])
        .Where(r => r.On(line) is not null)
        .Select(r => (r.Height, r.On(line)!.Value))
        .OrderBy(r => r.Height);

    private static Length GapAt(List<(Length Height, Length Gap)> readings, Length height)
    {
        if (height <= readings[0].Height)
            return readings[0].Gap;
        for (var i = 1; i < readings.Count; i++)
        {
            if (height <= readings[i].Height)
                return Between(readings[i - 1], readings[i], height);
        }

        return readings[^1].Gap;
    }

    private static Length Between((Length At, Length Value) low, (Length At, Length Value) high, Length at)
    {
        var share = (Int128)(high.Value - low.Value).Nanometres * (at - low.At).Nanometres / (high.At - low.At).Nanometres;
        return low.Value + Length.FromNanometres((long)share);
    }
}
