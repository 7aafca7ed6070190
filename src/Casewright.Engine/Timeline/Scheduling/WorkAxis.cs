using Casewright.Model.Collections;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>A stretch of time in which people work, in clock units (minutes, in jobs) from the origin of the axis.</summary>
/// <param name="Open">First moment; not negative.</param>
/// <param name="Close">Moment after the last; above <paramref name="Open"/>.</param>
public sealed record WorkStretch(long Open, long Close)
{
    /// <summary>How long it is.</summary>
    public long Length => Close - Open;
}

/// <summary>
/// The time axis that attended work is scheduled on: working time only, nights and days off left out. Work that is interrupted by the
/// night is one unbroken interval on it; what runs on through the night is measured on the clock and mapped back.
/// </summary>
public sealed class WorkAxis
{
    private readonly WorkStretch[] _stretches;
    private readonly long[] _before;

    /// <summary>An axis over working stretches.</summary>
    /// <param name="stretches">At least one, ascending, not overlapping.</param>
    /// <exception cref="ArgumentException">There is none, or they are not ascending.</exception>
    public WorkAxis(IEnumerable<WorkStretch> stretches)
    {
        _stretches = [.. stretches];
        if (_stretches.Length == 0)
            throw new ArgumentException("An axis needs at least one stretch of working time.", nameof(stretches));
        _before = new long[_stretches.Length];
        for (var k = 0; k < _stretches.Length; k++)
        {
            if (_stretches[k].Length <= 0 || _stretches[k].Open < (k == 0 ? 0 : _stretches[k - 1].Close))
                throw new ArgumentException($"Stretch {k} is empty or begins before the one ahead of it has ended.", nameof(stretches));
            _before[k] = k == 0 ? 0 : _before[k - 1] + _stretches[k - 1].Length;
        }
    }

    /// <summary>An axis without interruptions: clock and working time are one.</summary>
    /// <param name="length">How far it reaches; positive.</param>
    public static WorkAxis Continuous(long length) => new([new(0, length)]);

    /// <summary>The stretches, ascending.</summary>
    public ValueList<WorkStretch> Stretches => _stretches.ToValueList();

    /// <summary>Working time of all stretches together.</summary>
    public long Length => _before[^1] + _stretches[^1].Length;

    /// <summary>Working time ahead of a stretch.</summary>
    public long Before(int stretch) => _before[stretch];

    /// <summary>The clock at which work begins when <paramref name="work"/> units are behind: at a boundary, the opening of the later stretch.</summary>
    /// <param name="work">0 up to, not including, <see cref="Length"/>.</param>
    public long ClockAtStart(long work)
    {
        var k = StretchAt(work);
        return _stretches[k].Open + (work - _before[k]);
    }

    /// <summary>The clock at which work ends that fills <paramref name="work"/> units: at a boundary, the close of the earlier stretch.</summary>
    /// <param name="work">0 up to <see cref="Length"/>; 0 gives the first opening.</param>
    public long ClockAtEnd(long work)
    {
        var k = StretchAt(Math.Max(0, work - 1));
        return _stretches[k].Open + (work - _before[k]);
    }

    /// <summary>The earliest working time at or after a clock time.</summary>
    /// <returns>0 up to <see cref="Length"/>, which means that the axis does not reach so far.</returns>
    public long AtOrAfter(long clock)
    {
        for (var k = 0; k < _stretches.Length; k++)
        {
            if (clock <= _stretches[k].Open)
                return _before[k];
            if (clock < _stretches[k].Close)
                return _before[k] + clock - _stretches[k].Open;
        }

        return Length;
    }

    /// <summary>The latest working time that begins at or before a clock time; -1 when work has not begun by then.</summary>
    public long AtOrBefore(long clock)
    {
        var last = -1L;
        for (var k = 0; k < _stretches.Length && _stretches[k].Open <= clock; k++)
            last = _before[k] + Math.Min(clock, _stretches[k].Close - 1) - _stretches[k].Open;
        return last;
    }

    /// <summary>Index of the stretch in which the work unit after <paramref name="work"/> lies.</summary>
    public int StretchAt(long work)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(work);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(work, Length);
        var k = Array.BinarySearch(_before, work);
        return k >= 0 ? k : ~k - 1;
    }

    /// <summary>Stretches in working time, up to a horizon: work that may not be interrupted fits into one of them.</summary>
    public IEnumerable<(long From, long To)> Windows(long horizon)
    {
        for (var k = 0; k < _stretches.Length && _before[k] < horizon; k++)
            yield return (_before[k], Math.Min(horizon, _before[k] + _stretches[k].Length));
    }
}
