using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;
using Casewright.Papers.Documents.Timetable;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Glue-ups station by station with their clock times: in, clamps tight, out; then cases in their clamps.</summary>
public static class GlueUpTimetable
{
    private static readonly Lettering ClockTime = Lettering.Figure.Sized(16);

    /// <summary>The pages; none without a timetable or without glue-ups.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schedule is not { } schedule)
            return [];
        var index = new TimetableIndex(plan.Job, schedule);
        var stations = index.Tasks.Where(t => t.Station is not null).GroupBy(t => t.Station!, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal);
        var cases = index.Tasks.Where(t => t.Station is null && t.Phase == WorkPhase.Assembly && t.RunsOn.Count > 0).ToList();
        return [.. stations.SelectMany(s => Station(index, s.Key, [.. s], settings)), .. Cases(index, cases, settings)];
    }

    private static ValueList<PageDraft> Station(TimetableIndex index, string station, List<ScheduledTask> tasks, PaperSettings settings)
    {
        var bench = index.Job.Shop.Stations.First(s => s.Id == station);
        var places = bench.Places == 1 ? "one part at a time" : string.Create(CultureInfo.InvariantCulture, $"{bench.Places} parts side by side");
        return Sheet(index, $"Glue-ups at {bench.Name}", $"{places} · {Glue(index)}", tasks, settings);
    }

    private static ValueList<PageDraft> Cases(TimetableIndex index, List<ScheduledTask> tasks, PaperSettings settings) =>
        tasks.Count == 0 ? [] : Sheet(index, "Cases in clamps", Glue(index), tasks, settings);

    private static ValueList<PageDraft> Sheet(TimetableIndex index, string title, string subtitle, List<ScheduledTask> tasks, PaperSettings settings)
    {
        var flow = Drafting.Flow(DocumentKind.GlueUps, settings, landscape: true, new(title, subtitle), title + " by the clock.", "Colder than stated, the joints stay in clamps longer: ask before you take them out.");
        Column[] columns =
        [
            new("Done", Fixed: 9),
            new("In", Fixed: 18, Lettering: ClockTime),
            new("Tight by", Fixed: 20, Lettering: ClockTime),
            new("Out", Fixed: 38, Lettering: ClockTime),
            new("What", 2, Lettering: Lettering.Body.Sized(12)),
            new("Held by", 1),
            new("Who", 0.8),
            new("Leave alone until", Fixed: 38, Lettering: Lettering.Figure),
        ];
        Table.Draw(flow, columns, [.. Rows(index, tasks)]);
        CautionStrip.Draw(flow, Work.Gluing);
        return flow.Finish();
    }

    private static IEnumerable<Row> Rows(TimetableIndex index, List<ScheduledTask> tasks)
    {
        foreach (var day in tasks.GroupBy(t => DateOnly.FromDateTime(t.Start)).OrderBy(g => g.Key))
        {
            yield return Row.Heading(TimetableIndex.Day(day.Key));
            foreach (var task in day)
            {
                var outAt = task.StationUntil ?? task.RunsOn.Select(r => r.Until).DefaultIfEmpty(task.Finish).Min();
                var rest = task.RunsOn.Select(r => r.Until).DefaultIfEmpty(task.Finish).Max();
                var held = task.Clamps.Count > 0
                    ? string.Join(", ", task.Clamps.Select(c => string.Create(CultureInfo.InvariantCulture, $"{Words.Of(c.Kind, c.Count)}")))
                    : task.Station is null ? "" : "its connectors";
                yield return Row.Of(
                    Cell.TickBox,
                    new(TimetableIndex.Clock(task.Start)),
                    new(TimetableIndex.Clock(task.Finish)),
                    new(TimetableIndex.Clock(outAt, day.Key)),
                    new(task.Name),
                    new(held),
                    new(index.Who(task)),
                    new(rest > outAt ? TimetableIndex.Clock(rest, day.Key) : rest > task.Finish ? "cured by then" : ""));
            }
        }
    }

    private static string Glue(TimetableIndex index)
    {
        var (glue, shop) = (index.Job.Shop.Glue, index.Job.Shop);
        var warm = shop.Temperature is { } celsius ? string.Create(CultureInfo.InvariantCulture, $"shop at {celsius:0.#} °C") : "shop taken at 20 °C, nobody stated it";
        return string.Create(CultureInfo.InvariantCulture, $"{warm} · close within {glue.OpenMinutes:0.#} min of spreading, tight {glue.ClosedMinutes:0.#} min later");
    }
}
