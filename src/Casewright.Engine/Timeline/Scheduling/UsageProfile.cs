namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>How much of a resource is in use over time, as steps.</summary>
internal sealed class UsageProfile
{
    private readonly List<long> _times = [0];
    private readonly List<int> _used = [0];

    /// <summary>The most in use at any moment from one time to another.</summary>
    public int Most(long from, long to)
    {
        var i = At(from);
        var most = _used[i];
        for (i++; i < _times.Count && _times[i] < to; i++)
            most = Math.Max(most, _used[i]);
        return most;
    }

    /// <summary>Uses an amount, or gives it back when it is negative.</summary>
    public void Add(long from, long to, int amount)
    {
        if (from >= to || amount == 0)
            return;
        var first = Split(from);
        var last = to == long.MaxValue ? _times.Count : Split(to);
        for (var i = first; i < last; i++)
            _used[i] += amount;
    }

    /// <summary>The first time after another at which less is in use than just before; null when there is none.</summary>
    public long? NextRelease(long after)
    {
        for (var i = At(after) + 1; i < _times.Count; i++)
        {
            if (_used[i] < _used[i - 1])
                return _times[i];
        }

        return null;
    }

    private int At(long time)
    {
        var i = _times.BinarySearch(time);
        return i >= 0 ? i : ~i - 1;
    }

    private int Split(long time)
    {
        var i = _times.BinarySearch(time);
        if (i >= 0)
            return i;
        _times.Insert(~i, time);
        _used.Insert(~i, _used[~i - 1]);
        return ~i;
    }
}
