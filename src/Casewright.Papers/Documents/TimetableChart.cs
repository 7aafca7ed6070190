using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Papers.Documents.Timetable;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The timetable as a chart: who is at what, what lies at which station, what cures through the night; then the tasks by number.</summary>
public static class TimetableChart
{
    private const int MostDaysOnPage = 10;
    private const double DayOnScreen = 46;

    /// <summary>The pages; none without a timetable.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schedule is not { Tasks.Count: > 0 } schedule)
            return [];
        var index = new TimetableIndex(plan.Job, schedule);
        return [.. Charts(index, settings), .. Tasks(index, settings)];
    }

    /// <summary>The whole chart in one strip, for screens and files; null without a timetable.</summary>
    public static Scene? Drawing(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schedule is not { Tasks.Count: > 0 } schedule)
            return null;
        var index = new TimetableIndex(plan.Job, schedule);
        var days = DaysOf(index);
        var width = days.Sum(d => plan.Job.Shop.Hours.Works(d) ? DayOnScreen : DayOnScreen * 0.22);
        var area = new Box(3, 3, TimetableDrawing.Names + width, TimetableDrawing.HeightOf(index));
        var sketch = new Sketch();
        new TimetableDrawing(index, sketch, new(plan.Job.Shop.Hours, days, area.Left + TimetableDrawing.Names, width), area).Draw();
        return sketch.ToScene(area.Width + 6, area.Height + 6, "Timetable", Summary(index));
    }

    private static string Summary(TimetableIndex index) => string.Create(
        CultureInfo.InvariantCulture,
        $"{index.Tasks.Count} tasks from {TimetableIndex.Day(index.Schedule.Start)} to {TimetableIndex.Day(index.Schedule.Finish)}, {index.Schedule.WorkingDays} working days.");

    private static List<DateOnly> DaysOf(TimetableIndex index)
    {
        var (first, last) = (DateOnly.FromDateTime(index.Schedule.Start), DateOnly.FromDateTime(index.Schedule.Finish));
        return [.. Enumerable.Range(first.DayNumber, last.DayNumber - first.DayNumber + 1).Select(DateOnly.FromDayNumber)];
    }

    private static IEnumerable<PageDraft> Charts(TimetableIndex index, PaperSettings settings)
    {
        var spreads = Spreads(index, DaysOf(index)).ToList();
        for (var s = 0; s < spreads.Count; s++)
        {
            var subtitle = Summary(index) + (index.Schedule.Proven ? " No order of the work finishes sooner." : string.Create(CultureInfo.InvariantCulture, $" None can finish before {TimetableIndex.Day(index.Schedule.LowerBound)}."));
            var draft = Drafting.Page(
                DocumentKind.Timetable, settings, true,
                new("Timetable" + (spreads.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $", part {s + 1} of {spreads.Count}") : ""), subtitle),
                "Timetable: people and stations by day.", "Numbers are those of the list of tasks and of the day sheets. Hatched: under clamps, curing or drying.");
            var body = draft.Format.Body(draft.Heading!.Height);
            var width = body.Width - TimetableDrawing.Names;
            var sketch = new Sketch();
            new TimetableDrawing(index, sketch, new(index.Job.Shop.Hours, spreads[s], body.Left + TimetableDrawing.Names, width), body).Draw();
            yield return draft with { Body = sketch.Items };
        }
    }

    /// <summary>Days of one page each: no more working days than stay readable.</summary>
    private static IEnumerable<List<DateOnly>> Spreads(TimetableIndex index, List<DateOnly> days)
    {
        var worked = Math.Max(1, days.Count(index.Job.Shop.Hours.Works));
        var pages = (worked + MostDaysOnPage - 1) / MostDaysOnPage;
        var onPage = (worked + pages - 1) / pages;
        var spread = new List<DateOnly>();
        foreach (var day in days)
        {
            if (index.Job.Shop.Hours.Works(day) && spread.Count(index.Job.Shop.Hours.Works) == onPage)
            {
                yield return spread;
                spread = [];
            }

            spread.Add(day);
        }

        yield return spread;
    }

    private static ValueList<PageDraft> Tasks(TimetableIndex index, PaperSettings settings)
    {
        var flow = Drafting.Flow(DocumentKind.Timetable, settings, landscape: false, new("Tasks by number", "in the order in which they begin"), "Tasks of the timetable by number.");
        Column[] columns =
        [
            new("No", Fixed: 10, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Begins", Fixed: 27, Lettering: Lettering.Figure),
            new("Minutes", Fixed: 14, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Task", 2),
            new("Who", 0.8),
            new("Waits for", 0.7, Lettering: Lettering.SecondFigure),
        ];
        var numbers = index.Tasks.ToDictionary(t => t.Id, index.NumberOf, StringComparer.Ordinal);
        Table.Draw(flow, columns, [.. index.Tasks.Select(t => Row.Of(
            new(index.NumberOf(t).ToString(CultureInfo.InvariantCulture)),
            new($"{TimetableIndex.Day(t.Start)} {TimetableIndex.Clock(t.Start)}"),
            new(t.Minutes.ToString(CultureInfo.InvariantCulture)),
            new(t.Name + (t.Done ? " (done)" : "")),
            new(index.Who(t)),
            new(string.Join(", ", t.After.Where(numbers.ContainsKey).Select(a => numbers[a]).Order().Select(n => n.ToString(CultureInfo.InvariantCulture))))))]);
        return flow.Finish();
    }
}
