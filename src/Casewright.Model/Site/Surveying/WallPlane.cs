using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// How far the wall lies behind the plumb plane at its foremost point, from its bow and its lean. The bow is that of the string nearest in
/// height, the lean that of the plumb lines, straight between them; the two add up, which is right for a wall that leans alike along its length.
/// </summary>
public sealed class WallPlane
{
    private readonly WallSurvey _survey;

    /// <summary>The plane of a wall.</summary>
    public WallPlane(WallSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        _survey = survey;
    }

    /// <summary>Whether neither bow nor lean was measured.</summary>
    public bool IsEmpty => _survey.Strings.Count == 0 && _survey.PlumbLines.Count == 0;

    /// <summary>Largest gap behind the plane along a stretch and up to a height.</summary>
    public Length Deepest(Length from, Length to, Length top)
    {
        var places = _survey.Strings.SelectMany(s => s.Readings.Select(r => r.At)).Concat(_survey.PlumbLines.Select(p => p.At));
        var heights = _survey.PlumbLines.SelectMany(p => p.Readings.Select(r => r.At)).Concat(_survey.Strings.Select(s => s.Height));
        var alongs = places.Where(x => x > from && x < to).Append(from).Append(to).ToList();
        var ups = heights.Where(h => h < top).Append(Length.Zero).Append(top).ToList();
        return alongs.SelectMany(x => ups.Select(h => Behind(x, h))).Max();
    }

    /// <summary>Gap behind the plane at a place and height; not negative.</summary>
    public Length Behind(Length at, Length height) => Bow(at, height) + Lean(at, height);

    private Length Bow(Length at, Length height)
    {
        if (_survey.Strings.Count == 0)
            return Length.Zero;
        var curve = Curve(_survey.Strings.MinBy(s => (s.Height - height).Abs())!.Readings);
        return curve.At(at) - curve.Readings.Min(r => r.Value);
    }

    private Length Lean(Length at, Length height)
    {
        if (_survey.PlumbLines.Count == 0)
            return Length.Zero;
        return new ReadingCurve(_survey.PlumbLines.Select(line =>
        {
            var curve = Curve(line.Readings);
            return (line.At, curve.At(height) - curve.Readings.Min(r => r.Value));
        })).At(at);
    }

    private static ReadingCurve Curve(IEnumerable<LineReading> readings) => new(readings.Select(r => (r.At, r.Gap)));
}
