namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>A piece of a lag curve: over [<paramref name="From"/>, <paramref name="To"/>] it is either constant or follows the argument.</summary>
/// <param name="From">First argument.</param>
/// <param name="To">Last argument.</param>
/// <param name="Flat">Whether the value is <paramref name="Value"/>; else it is the argument plus <paramref name="Value"/>.</param>
/// <param name="Value">The constant, or what is added.</param>
internal readonly record struct LagPiece(long From, long To, bool Flat, long Value)
{
    public long At(long work) => Flat ? Value : work + Value;
}

/// <summary>A lag of clock time as a rising curve on the working axis: from the working time a task ends to a limit on another's start.</summary>
internal sealed class LagCurve
{
    private LagCurve(IReadOnlyList<LagPiece> pieces) => Pieces = pieces;

    /// <summary>Pieces in order, covering 0 to the horizon without a gap.</summary>
    public IReadOnlyList<LagPiece> Pieces { get; }

    /// <summary>The earliest start allowed when at least <paramref name="lag"/> of clock time must pass after an end.</summary>
    public static LagCurve Earliest(WorkAxis axis, long lag, long horizon) =>
        Build(axis, lag, horizon, axis.AtOrAfter);

    /// <summary>The latest start allowed when at most <paramref name="lag"/> of clock time may pass after an end.</summary>
    public static LagCurve Latest(WorkAxis axis, long lag, long horizon) =>
        Build(axis, lag, horizon, axis.AtOrBefore);

    private static LagCurve Build(WorkAxis axis, long lag, long horizon, Func<long, long> map)
    {
        var stops = Stops(axis, lag, horizon);
        var pieces = new List<LagPiece>();
        for (var i = 0; i + 1 < stops.Count; i++)
        {
            var (from, to) = (stops[i], stops[i + 1] - 1);
            var (low, high) = (map(axis.ClockAtEnd(from) + lag), map(axis.ClockAtEnd(to) + lag));
            Append(pieces, high == low && from != to ? new(from, to, true, low) : new(from, to, false, low - from));
        }

        return new(pieces);
    }

    /// <summary>Arguments at which the curve may bend: where a stretch begins or ends, and where end plus lag meets an opening or a close.</summary>
    private static List<long> Stops(WorkAxis axis, long lag, long horizon)
    {
        var stops = new SortedSet<long> { 0, horizon + 1 };
        var clocks = axis.Stretches.SelectMany(s => new[] { s.Open, s.Close }).ToArray();
        for (var k = 0; k < axis.Stretches.Count && axis.Before(k) <= horizon; k++)
        {
            var (stretch, before) = (axis.Stretches[k], axis.Before(k));
            AddAround(before);
            foreach (var clock in clocks)
            {
                if (clock - lag >= stretch.Open && clock - lag <= stretch.Close)
                    AddAround(before + clock - lag - stretch.Open);
            }
        }

        return [.. stops];

        void AddAround(long work)
        {
            for (var w = work; w <= work + 1; w++)
            {
                if (w > 0 && w <= horizon)
                    stops.Add(w);
            }
        }
    }

    private static void Append(List<LagPiece> pieces, LagPiece next)
    {
        if (pieces.Count > 0)
        {
            var last = pieces[^1];
            if (last.Flat == next.Flat && last.Value == next.Value)
            {
                pieces[^1] = last with { To = next.To };
                return;
            }

            // A single argument is neither flat nor sloped: let it join whichever neighbour it lies on.
            if (next.From == next.To && last.At(next.From) == next.At(next.From))
            {
                pieces[^1] = last with { To = next.To };
                return;
            }

            if (last.From == last.To && next.At(last.From) == last.At(last.From))
            {
                pieces.RemoveAt(pieces.Count - 1);
                Append(pieces, next with { From = last.From });
                return;
            }
        }

        pieces.Add(next);
    }
}
