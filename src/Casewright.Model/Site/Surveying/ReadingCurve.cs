using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>Readings along one line, exact: straight between neighbours, level beyond the first and the last. Two at one place count as the first of them.</summary>
public sealed class ReadingCurve
{
    private readonly ValueList<(Length At, Length Value)> _readings;

    /// <summary>The curve through readings in any order.</summary>
    public ReadingCurve(IEnumerable<(Length At, Length Value)> readings) =>
        _readings = readings.OrderBy(r => r.At).DistinctBy(r => r.At).ToValueList();

    /// <summary>The readings, by place.</summary>
    public ValueList<(Length At, Length Value)> Readings => _readings;

    /// <summary>Whether there is no reading.</summary>
    public bool IsEmpty => _readings.Count == 0;

    /// <summary>The value at a place, to the whole nanometre towards the nearer reading before it; zero without readings.</summary>
    public Length At(Length place)
    {
        if (IsEmpty)
            return Length.Zero;
        if (place <= _readings[0].At)
            return _readings[0].Value;
        for (var i = 1; i < _readings.Count; i++)
        {
            if (place <= _readings[i].At)
                return Between(_readings[i - 1], _readings[i], place);
        }

        return _readings[^1].Value;
    }

    /// <summary>Least and largest value between two places, both included; both zero without readings.</summary>
    public (Length Least, Length Most) Range(Length from, Length to)
    {
        var values = _readings.Where(r => r.At > from && r.At < to).Select(r => r.Value).Append(At(from)).Append(At(to)).ToList();
        return (values.Min(), values.Max());
    }

    /// <summary>The straight line between two values, taken at a place that may lie beyond them.</summary>
    public static Length Between((Length At, Length Value) low, (Length At, Length Value) high, Length at)
    {
        var share = (Int128)(high.Value - low.Value).Nanometres * (at - low.At).Nanometres / (high.At - low.At).Nanometres;
        return low.Value + Length.FromNanometres((long)share);
    }
}
