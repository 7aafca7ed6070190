namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// A straight beam of one section over supports that turn freely, under a uniform load in each span, with spans of any lengths:
/// support moments by the three-moment equation (Clapeyron). SI units: m, N/m, N·m², N·m.
/// </summary>
public sealed class ContinuousBeam
{
    private readonly double[] _spans;
    private readonly double[] _moments;
    private readonly double[] _loads;
    private readonly double _stiffness;

    /// <summary>Solves the support moments.</summary>
    /// <param name="spans">Spans from left to right in m, at least one, all positive.</param>
    /// <param name="load">Uniform load in N/m.</param>
    /// <param name="stiffness">EI in N·m²; positive.</param>
    public ContinuousBeam(IReadOnlyList<double> spans, double load, double stiffness)
        : this(spans, [.. (spans ?? throw new ArgumentNullException(nameof(spans))).Select(_ => load)], stiffness)
    {
    }

    /// <summary>Solves the support moments under a load of its own in each span.</summary>
    /// <param name="spans">Spans from left to right in m, at least one, all positive.</param>
    /// <param name="loads">Uniform load of each span in N/m.</param>
    /// <param name="stiffness">EI in N·m²; positive.</param>
    public ContinuousBeam(IReadOnlyList<double> spans, IReadOnlyList<double> loads, double stiffness)
    {
        ArgumentNullException.ThrowIfNull(spans);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentOutOfRangeException.ThrowIfZero(spans.Count, nameof(spans));
        ArgumentOutOfRangeException.ThrowIfNotEqual(loads.Count, spans.Count, nameof(loads));
        _spans = [.. spans];
        _loads = [.. loads];
        _stiffness = stiffness;
        _moments = SupportMoments();
    }

    /// <summary>Number of spans.</summary>
    public int Count => _spans.Length;

    /// <summary>Moment over support <paramref name="support"/>, from 0 at the left end; negative where the top is pulled.</summary>
    public double MomentOver(int support) => _moments[support];

    /// <summary>Moment in a span at <paramref name="x"/> from its left support; positive where the underside is pulled.</summary>
    public double Moment(int span, double x)
    {
        var length = _spans[span];
        return (_loads[span] * x * (length - x) / 2) + _moments[span] + ((_moments[span + 1] - _moments[span]) * x / length);
    }

    /// <summary>Sag in a span at <paramref name="x"/> from its left support, downwards positive.</summary>
    public double Sag(int span, double x)
    {
        var l = _spans[span];
        var free = _loads[span] * x * ((l * l * l) - (2 * l * x * x) + (x * x * x)) / 24;
        var left = _moments[span] * x * (l - x) * ((2 * l) - x) / (6 * l);
        var right = _moments[span + 1] * x * (l - x) * (l + x) / (6 * l);
        return (free + left + right) / _stiffness;
    }

    /// <summary>Largest downward sag in a span, to within a millionth of it; 0 when the span is lifted throughout.</summary>
    public double LargestSag(int span)
    {
        const int Stations = 200;
        var best = 0;
        for (var i = 1; i < Stations; i++)
            best = Sag(span, _spans[span] * i / Stations) > Sag(span, _spans[span] * best / Stations) ? i : best;
        var (low, high) = (_spans[span] * Math.Max(0, best - 1) / Stations, _spans[span] * Math.Min(Stations, best + 1) / Stations);
        for (var i = 0; i < 60; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = Sag(span, a) < Sag(span, b) ? (a, high) : (low, b);
        }

        return Math.Max(0, Sag(span, (low + high) / 2));
    }

    /// <summary>Largest moment of either sign anywhere, without its sign.</summary>
    public double LargestMoment()
    {
        var largest = _moments.Max(Math.Abs);
        for (var span = 0; span < Count; span++)
        {
            var x = (_spans[span] / 2) + ((_moments[span + 1] - _moments[span]) / (_loads[span] * _spans[span]));
            if (_loads[span] != 0 && x > 0 && x < _spans[span])
                largest = Math.Max(largest, Math.Abs(Moment(span, x)));
        }

        return largest;
    }

    /// <summary>Upward force of a support in N, from 0 at the left end.</summary>
    public double Reaction(int support)
    {
        var fromLeft = support == 0 ? 0 : ShareAtRight(support - 1);
        var fromRight = support == Count ? 0 : (_loads[support] * _spans[support]) - ShareAtRight(support);
        return fromLeft + fromRight;
    }

    private double ShareAtRight(int span) => (_loads[span] * _spans[span] / 2) - ((_moments[span + 1] - _moments[span]) / _spans[span]);

    // M(i−1) l(i) + 2 M(i) (l(i) + l(i+1)) + M(i+1) l(i+1) = −(w(i) l(i)³ + w(i+1) l(i+1)³)/4, free ends: a tridiagonal system.
    private double[] SupportMoments()
    {
        var moments = new double[_spans.Length + 1];
        var inner = _spans.Length - 1;
        if (inner == 0)
            return moments;
        var (diagonal, right) = (new double[inner], new double[inner]);
        for (var i = 0; i < inner; i++)
        {
            diagonal[i] = 2 * (_spans[i] + _spans[i + 1]);
            right[i] = -((_loads[i] * Math.Pow(_spans[i], 3)) + (_loads[i + 1] * Math.Pow(_spans[i + 1], 3))) / 4;
            if (i == 0)
                continue;
            var factor = _spans[i] / diagonal[i - 1];
            diagonal[i] -= factor * _spans[i];
            right[i] -= factor * right[i - 1];
        }

        for (var i = inner - 1; i >= 0; i--)
            moments[i + 1] = (right[i] - (i == inner - 1 ? 0 : _spans[i + 1] * moments[i + 2])) / diagonal[i];
        return moments;
    }
}
