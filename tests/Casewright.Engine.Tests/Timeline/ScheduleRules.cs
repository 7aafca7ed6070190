using Casewright.Model.Jobs;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Tests.Timeline;

/// <summary>Looks a written schedule over by its dates and names alone: what a foreman would check on the wall.</summary>
internal static class ScheduleRules
{
    public static void AssertKept(Job job, Schedule schedule)
    {
        var byId = schedule.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        foreach (var task in schedule.Tasks.Where(t => !t.Done))
        {
            Assert.All(task.After, before => Assert.True(byId[before].Finish <= task.Start, $"{task.Id} begins before {before} is done."));
            Assert.All(task.Spans, span => Assert.True(InHours(job, span), $"{task.Id} is worked on at {span.From}."));
            Assert.Equal(task.Minutes, (int)task.Spans.Sum(s => (s.To - s.From).TotalMinutes));
            Assert.Equal(Math.Min(task.Hands, job.Shop.People.Count), task.People.Distinct(StringComparer.Ordinal).Count());
            Assert.All(task.People, p => Assert.DoesNotContain(job.Shop.People.Single(x => x.Id == p).DaysOff, d => task.Spans.Any(s => DateOnly.FromDateTime(s.From) == d)));
        }

        AssertApart(schedule.Tasks.Where(t => !t.Done).SelectMany(t => t.People.Select(p => (Name: p, t.Id, From: t.Start, To: t.Finish))));
        AssertApart(schedule.Tasks.Where(t => t.Station is not null).Select(t => (Name: t.Station!, t.Id, From: t.Start, To: t.StationUntil!.Value)));
        foreach (var kind in job.Shop.Clamps)
        {
            var uses = schedule.Tasks.SelectMany(t => t.Clamps.Where(c => c.Kind == kind.Kind).Select(c => (From: t.Start, To: c.Until, c.Count))).ToList();
            Assert.All(uses, u => Assert.True(uses.Where(x => x.From <= u.From && u.From < x.To).Sum(x => x.Count) <= kind.Count, $"Too many {kind.Kind} at {u.From}."));
        }

        Assert.Equal(schedule.Finish, schedule.Tasks.Max(t => t.Finish));
        Assert.True(schedule.LowerBound <= schedule.Finish);
    }

    private static bool InHours(Job job, ClockSpan span)
    {
        var hours = job.Shop.Hours;
        var (from, to) = (TimeOnly.FromDateTime(span.From), TimeOnly.FromDateTime(span.To));
        return hours.Works(DateOnly.FromDateTime(span.From)) && span.From.Date == span.To.Date && hours.Day.Any(d => d.From <= from && to <= d.To);
    }

    private static void AssertApart(IEnumerable<(string Name, string Id, DateTime From, DateTime To)> uses)
    {
        foreach (var group in uses.GroupBy(u => u.Name, StringComparer.Ordinal))
        {
            var ordered = group.OrderBy(u => u.From).ThenBy(u => u.To).ToList();
            for (var i = 1; i < ordered.Count; i++)
                Assert.True(ordered[i - 1].To <= ordered[i].From, $"{group.Key} is at {ordered[i - 1].Id} and at {ordered[i].Id}.");
        }
    }
}
