using Casewright.Engine.Timeline.Scheduling;
using Casewright.Model.Collections;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Calendars;

/// <summary>Working hours as an axis in minutes, and its way back to dates and clock times. The origin is midnight before the first day.</summary>
internal sealed class ShopCalendar
{
    private const int FurthestDays = 3 * 366;
    private const long MinutesPerDay = 24 * 60;
    private readonly DateTime _origin;

    private ShopCalendar(DateOnly first, WorkAxis axis, ValueList<long> dayStarts, long longestDay)
    {
        _origin = first.ToDateTime(TimeOnly.MinValue);
        Axis = axis;
        DayStarts = dayStarts;
        LongestDay = longestDay;
    }

    /// <summary>The working axis.</summary>
    public WorkAxis Axis { get; }

    /// <summary>Working minutes ahead of each worked day.</summary>
    public ValueList<long> DayStarts { get; }

    /// <summary>Working minutes of a full day.</summary>
    public long LongestDay { get; }

    /// <summary>The calendar from a day on.</summary>
    /// <param name="hours">Working hours.</param>
    /// <param name="first">The first day that may be worked.</param>
    /// <param name="minutes">Working time that it must reach.</param>
    /// <returns>Null when no day is worked within three years.</returns>
    public static ShopCalendar? From(WorkingHours hours, DateOnly first, long minutes)
    {
        var stretches = new List<WorkStretch>();
        var days = new List<long>();
        var total = 0L;
        for (var d = 0; d < FurthestDays && total < minutes; d++)
        {
            if (!hours.Works(first.AddDays(d)))
                continue;
            days.Add(total);
            foreach (var span in hours.Day)
            {
                var stretch = new WorkStretch((d * MinutesPerDay) + MinuteOf(span.From), (d * MinutesPerDay) + MinuteOf(span.To));
                if (stretches.Count > 0 && stretches[^1].Close == stretch.Open)
                    stretches[^1] = stretches[^1] with { Close = stretch.Close };
                else
                    stretches.Add(stretch);
                total += stretch.Length;
            }
        }

        return stretches.Count == 0 ? null : new(first, new(stretches), days.ToValueList(), hours.Day.Sum(s => MinuteOf(s.To) - MinuteOf(s.From)));
    }

    /// <summary>Minutes from the origin to a moment, not before it.</summary>
    public long Clock(DateTime moment) => Math.Max(0, (long)Math.Ceiling((moment - _origin).TotalMinutes));

    /// <summary>Minutes from the origin to the beginning of a day, not before it.</summary>
    public long Clock(DateOnly date) => Clock(date.ToDateTime(TimeOnly.MinValue));

    /// <summary>The moment at which a number of minutes from the origin is over.</summary>
    public DateTime Moment(long clock) => _origin.AddMinutes(clock);

    /// <summary>Working stretches between two working times.</summary>
    public IEnumerable<ClockSpan> Spans(long start, long end)
    {
        while (start < end)
        {
            var k = Axis.StretchAt(start);
            var stop = Math.Min(end, Axis.Before(k) + Axis.Stretches[k].Length);
            yield return new(Moment(Axis.ClockAtStart(start)), Moment(Axis.ClockAtEnd(stop)));
            start = stop;
        }
    }

    /// <summary>Days off as stretches of the clock, neighbouring ones joined.</summary>
    public ValueList<WorkStretch> Away(ValueList<DateOnly> days)
    {
        var stretches = new List<WorkStretch>();
        foreach (var day in days.Distinct().Order())
        {
            var (open, close) = (Clock(day), Clock(day.AddDays(1)));
            if (open >= close)
                continue;
            if (stretches.Count > 0 && stretches[^1].Close == open)
                stretches[^1] = stretches[^1] with { Close = close };
            else
                stretches.Add(new(open, close));
        }

        return stretches.ToValueList();
    }

    private static long MinuteOf(TimeOnly time) => (time.Hour * 60) + time.Minute;
}
