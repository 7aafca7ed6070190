using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>Hours of work on one day.</summary>
/// <param name="From">When work begins.</param>
/// <param name="To">When it ends; after <paramref name="From"/>, on the same day.</param>
public sealed record WorkSpan(TimeOnly From, TimeOnly To);

/// <summary>
/// When attended work is done. Only the hours that may be planned with: leave out breaks and what goes to the telephone, the broom and
/// the next customer.
/// </summary>
public sealed record WorkingHours
{
    /// <summary>Hours of a working day, ascending, not overlapping; at least one. Usual: 6½ productive hours (common practice, no source).</summary>
    public ValueList<WorkSpan> Day { get; init; } = [new(new TimeOnly(8, 0), new TimeOnly(12, 0)), new(new TimeOnly(13, 0), new TimeOnly(15, 30))];

    /// <summary>Days of the week that are worked; at least one.</summary>
    public ValueList<DayOfWeek> Weekdays { get; init; } = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    /// <summary>Holidays and other days on which nobody works.</summary>
    public ValueList<DateOnly> DaysOff { get; init; } = [];

    /// <summary>Whether a date is worked.</summary>
    public bool Works(DateOnly date) => Weekdays.Contains(date.DayOfWeek) && !DaysOff.Contains(date);

    /// <summary>The working day that comes a number of working days after a date; the date itself or the next worked one for 0.</summary>
    /// <param name="date">Where to count from.</param>
    /// <param name="days">Not negative.</param>
    /// <returns>Null when there is none within three years.</returns>
    public DateOnly? WorkingDayAfter(DateOnly date, int days)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        var left = days;
        for (var day = date; day.DayNumber - date.DayNumber < 3 * 366; day = day.AddDays(1))
        {
            if (Works(day) && left-- == 0)
                return day;
        }

        return null;
    }

    /// <summary>The working day that comes a number of working days before a date.</summary>
    /// <param name="date">Where to count back from.</param>
    /// <param name="days">Not negative; 0 gives the date or the last worked one before it.</param>
    /// <returns>Null when there is none within three years.</returns>
    public DateOnly? WorkingDayBefore(DateOnly date, int days)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        var left = days;
        for (var day = date; date.DayNumber - day.DayNumber < 3 * 366; day = day.AddDays(-1))
        {
            if (Works(day) && left-- == 0)
                return day;
        }

        return null;
    }
}
