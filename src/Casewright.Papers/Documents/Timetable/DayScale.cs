using Casewright.Model.Timeline;

namespace Casewright.Papers.Documents.Timetable;

/// <summary>
/// Lays clock time along a chart: every day a column, working days wide with the hours of work taking most of it and the night the
/// rest, days off narrow.
/// </summary>
internal sealed class DayScale
{
    private const double OffShare = 0.22;
    private const double WorkShare = 0.8;

    private readonly WorkingHours _hours;
    private readonly List<(DateOnly Day, double Left, double Width)> _days = [];

    public DayScale(WorkingHours hours, IReadOnlyList<DateOnly> days, double left, double width)
    {
        _hours = hours;
        var unit = width / days.Sum(Share);
        foreach (var day in days)
        {
            _days.Add((day, left, unit * Share(day)));
            left += unit * Share(day);
        }

        (Open, Close) = (hours.Day[0].From, hours.Day[^1].To);
    }

    public IReadOnlyList<(DateOnly Day, double Left, double Width)> Days => _days;

    public TimeOnly Open { get; }

    public TimeOnly Close { get; }

    public double Left => _days[0].Left;

    public double Right => _days[^1].Left + _days[^1].Width;

    public DateOnly First => _days[0].Day;

    public DateOnly Last => _days[^1].Day;

    public bool Works(DateOnly day) => _hours.Works(day);

    /// <summary>Where a moment lies, held to the chart.</summary>
    public double At(DateTime moment)
    {
        var date = DateOnly.FromDateTime(moment);
        if (date < First)
            return Left;
        if (date > Last)
            return Right;
        var (_, left, width) = _days[date.DayNumber - First.DayNumber];
        return left + (width * Within(date, TimeOnly.FromDateTime(moment)));
    }

    /// <summary>Where the hours of work of a day lie.</summary>
    public (double From, double To) WorkOf(DateOnly day) => (At(day.ToDateTime(Open)), At(day.ToDateTime(Close)));

    private double Share(DateOnly day) => _hours.Works(day) ? 1 : OffShare;

    private double Within(DateOnly day, TimeOnly time)
    {
        var whole = TimeSpan.FromDays(1).TotalMinutes;
        if (!_hours.Works(day))
            return time.ToTimeSpan().TotalMinutes / whole;
        var (open, close, at) = (Open.ToTimeSpan().TotalMinutes, Close.ToTimeSpan().TotalMinutes, time.ToTimeSpan().TotalMinutes);
        var night = (1 - WorkShare) / (whole - close + open);
        if (at <= open)
            return at * night;
        return at <= close ? (open * night) + ((at - open) / (close - open) * WorkShare) : (open * night) + WorkShare + ((at - close) * night);
    }
}
