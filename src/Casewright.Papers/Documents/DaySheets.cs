using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;
using Casewright.Papers.Documents.Timetable;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>A sheet for every working day: what is done by whom and where, from when to when, and what runs on overnight.</summary>
public static class DaySheets
{
    /// <summary>The pages; none without a timetable.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schedule is not { Tasks.Count: > 0 } schedule)
            return [];
        var index = new TimetableIndex(plan.Job, schedule);
        return index.Days.SelectMany(day => PagesOf(index, day, settings)).ToValueList();
    }

    private static ValueList<PageDraft> PagesOf(TimetableIndex index, DateOnly day, PaperSettings settings)
    {
        var lines = LinesOf(index, day).ToList();
        var flow = Drafting.Flow(
            DocumentKind.DaySheets, settings, landscape: true,
            new(day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture), Load(index, day)),
            $"What is done on {TimetableIndex.Day(day)}.", "Write the minutes it really took: they teach the shop its own times.");
        Column[] columns =
        [
            new("Done", Fixed: 9),
            new("From", Fixed: 14, Lettering: Lettering.Figure.Sized(14)),
            new("To", Fixed: 14, Lettering: Lettering.Figure.Sized(14)),
            new("No", Fixed: 9, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("What", 2, Lettering: Lettering.Body.Sized(12)),
            new("Who", 0.8, Lettering: Lettering.Body.Sized(12)),
            new("Where, clamps", 1),
            new("Runs on", 1),
            new("Took, min", Fixed: 18),
        ];
        Table.Draw(flow, columns, [.. lines.Select(l => RowOf(index, day, l.Task, l.Span))]);
        Overnight(index, day, flow);
        return flow.Finish();
    }

    private static IEnumerable<(ScheduledTask Task, ClockSpan Span)> LinesOf(TimetableIndex index, DateOnly day) => index.Tasks
        .SelectMany(t => Joined(t.Spans.Where(s => DateOnly.FromDateTime(s.From) == day)).Select(s => (Task: t, Span: s)))
        .OrderBy(l => l.Span.From)
        .ThenBy(l => index.NumberOf(l.Task));

    /// <summary>A task left over a break is one line of the day.</summary>
    private static IEnumerable<ClockSpan> Joined(IEnumerable<ClockSpan> spans)
    {
        var all = spans.ToList();
        if (all.Count > 0)
            yield return new(all[0].From, all[^1].To);
    }

    private static Row RowOf(TimetableIndex index, DateOnly day, ScheduledTask task, ClockSpan span)
    {
        var ends = DateOnly.FromDateTime(task.Finish) == day;
        var what = task.Name + (span.From > task.Start ? " (goes on)" : "") + (ends ? "" : " (left overnight)") + (task.Done ? " (done)" : "");
        var where = new[] { task.Station is { } station ? index.Station(station) : "" }
            .Concat(task.Clamps.Select(c => Words.Of(c.Kind, c.Count)));
        return Row.Of(
            Cell.TickBox,
            new(TimetableIndex.Clock(span.From)),
            new(TimetableIndex.Clock(span.To)),
            new(index.NumberOf(task).ToString(CultureInfo.InvariantCulture)),
            new(what),
            new(index.Who(task)),
            new(string.Join(", ", where.Where(w => w.Length > 0))),
            new(ends ? string.Join("; ", task.RunsOn.Select(r => $"{r.What} until {TimetableIndex.Clock(r.Until, day)}")) : ""),
            Cell.Empty);
    }

    private static string Load(TimetableIndex index, DateOnly day)
    {
        var load = index.Schedule.Load.Where(l => l.Date == day && l.Minutes > 0)
            .Select(l => string.Create(CultureInfo.InvariantCulture, $"{index.Person(l.Person)} {l.Minutes / 60}:{l.Minutes % 60:00} h"));
        return string.Join(", ", load);
    }

    private static void Overnight(TimetableIndex index, DateOnly day, PageFlow flow)
    {
        var close = day.ToDateTime(index.Job.Shop.Hours.Day[^1].To);
        var on = index.Tasks.Where(t => t.Finish <= close).SelectMany(t => t.RunsOn.Where(r => r.Until > close).Select(r => $"{index.NumberOf(t).ToString(CultureInfo.InvariantCulture)} {r.What} until {TimetableIndex.Day(r.Until)} {TimetableIndex.Clock(r.Until)}")).ToList();
        if (on.Count == 0)
            return;
        flow.Gap(3);
        flow.Paragraph("Overnight: " + string.Join("; ", on) + ". Keep the shop as warm as the timetable takes it to be.", Lettering.BodyStrong);
    }
}
