using Casewright.Engine.Timeline.Scheduling;
using CsCheck;

namespace Casewright.Engine.Tests.Timeline.Scheduling;

public class WorkAxisTests
{
    // Two days of 8:00 to 12:00 and 13:00 to 15:30, in minutes from midnight: 390 working minutes a day.
    private static readonly WorkAxis TwoDays = new([new(480, 720), new(780, 930), new(1920, 2160), new(2220, 2370)]);

    [Theory]
    [InlineData(0, 480, 480)]
    [InlineData(239, 719, 719)]
    [InlineData(240, 780, 720)] // the morning is full: work goes on after the break, but ended before it
    [InlineData(390, 1920, 930)] // the day is full
    [InlineData(391, 1921, 1921)]
    public void A_boundary_is_the_close_for_an_end_and_the_opening_for_a_start(long work, long start, long end)
    {
        Assert.Equal(start, TwoDays.ClockAtStart(work));
        Assert.Equal(end, TwoDays.ClockAtEnd(work));
    }

    [Theory]
    [InlineData(0, 0, -1)]
    [InlineData(480, 0, 0)]
    [InlineData(750, 240, 239)] // in the break: after it, or in the last minute before it
    [InlineData(1500, 390, 389)] // in the night
    [InlineData(5000, 780, 779)]
    public void Clock_maps_to_the_next_or_the_last_working_minute(long clock, long after, long before)
    {
        Assert.Equal(after, TwoDays.AtOrAfter(clock));
        Assert.Equal(before, TwoDays.AtOrBefore(clock));
    }

    [Fact]
    public void Lag_curves_agree_with_the_clock_at_every_minute()
    {
        var stretch = Gen.Select(Gen.Long[0, 9], Gen.Long[1, 12]);
        Gen.Select(stretch.Array[1, 8], Gen.Long[0, 60]).Sample((gapsAndLengths, lag) =>
        {
            var stretches = new List<WorkStretch>();
            var at = 0L;
            foreach (var (gap, length) in gapsAndLengths)
            {
                stretches.Add(new(at + gap, at + gap + length));
                at += gap + length;
            }

            var axis = new WorkAxis(stretches);
            var (earliest, latest) = (LagCurve.Earliest(axis, lag, axis.Length), LagCurve.Latest(axis, lag, axis.Length));
            for (var end = 0L; end <= axis.Length; end++)
            {
                var clock = axis.ClockAtEnd(end) + lag;
                Assert.Equal(axis.AtOrAfter(clock), Assert.Single(earliest.Pieces, p => p.From <= end && end <= p.To).At(end));
                Assert.Equal(axis.AtOrBefore(clock), Assert.Single(latest.Pieces, p => p.From <= end && end <= p.To).At(end));
            }
        });
    }

    [Fact]
    public void Stretches_that_overlap_are_refused() =>
        Assert.Contains("Stretch 1", Assert.Throws<ArgumentException>(() => new WorkAxis([new(0, 10), new(9, 20)])).Message, StringComparison.Ordinal);
}
