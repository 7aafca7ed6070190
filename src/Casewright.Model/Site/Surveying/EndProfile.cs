using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// How far the wall at one end of a wall stands in from its own foot at the back: positive where it comes into the room. Between readings
/// it is straight; above the highest and below the lowest reading it is taken as plumb. A line without readings of its own leans as the
/// other one does; without a measured corner the end is taken as square.
/// </summary>
public sealed class EndProfile
{
    private readonly ReadingCurve _back;
    private readonly ReadingCurve _front;
    private readonly Length _corner;
    private readonly Length? _frontLine;

    /// <summary>The profile of an end.</summary>
    /// <param name="end">The end; null for an open end, which nowhere comes in.</param>
    /// <param name="frontLine">Distance of the front line from the wall; null without one.</param>
    public EndProfile(WallEnd? end, Length? frontLine)
    {
        _frontLine = frontLine;
        _back = Curve(end, ReadingLine.Back);
        _front = Curve(end, ReadingLine.Front);
        _corner = frontLine is { } distance ? end?.Corner?.ComesIn(distance) ?? Length.Zero : Length.Zero;
    }

    /// <summary>Heights at which it was measured on either line, from the lowest up; the floor alone when it was not.</summary>
    public IReadOnlyList<Length> Heights =>
        [.. _back.Readings.Concat(_front.Readings).Select(r => r.At).DefaultIfEmpty(Length.Zero).Distinct().Order()];

    /// <summary>How far it stands in at most, on either line.</summary>
    public Length InMost => Everywhere.Aggregate(Length.Max);

    /// <summary>How far it stands in at least, on either line; negative where it falls away.</summary>
    public Length InLeast => Everywhere.Aggregate(Length.Min);

    private IEnumerable<Length> Everywhere => Lines.SelectMany(line => Heights.Select(height => In(height, line)));

    private IEnumerable<ReadingLine> Lines => _frontLine is null ? [ReadingLine.Back] : [ReadingLine.Back, ReadingLine.Front];

    /// <summary>How far it stands in at a height on a line.</summary>
    public Length In(Length height, ReadingLine line)
    {
        var own = line == ReadingLine.Back ? _back : _front;
        var curve = own.IsEmpty ? line == ReadingLine.Back ? _front : _back : own;
        var corner = line == ReadingLine.Front ? _corner : Length.Zero;
        return curve.IsEmpty ? corner : corner + curve.Readings[0].Value - curve.At(height);
    }

    /// <summary>How far it stands in at a height and a distance out from the wall, straight through both lines.</summary>
    public Length In(Length height, Length distance)
    {
        var back = In(height, ReadingLine.Back);
        return _frontLine is { } line && line > Length.Zero
            ? ReadingCurve.Between((Length.Zero, back), (line, In(height, ReadingLine.Front)), distance)
            : back;
    }

    private static ReadingCurve Curve(WallEnd? end, ReadingLine line) =>
        new((end?.Plumb ?? []).Where(r => r.On(line) is not null).Select(r => (r.Height, r.On(line)!.Value)));
}
