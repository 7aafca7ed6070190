using Casewright.Model.Files.Shapes;
using Casewright.Model.Timeline;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>The timetable in a plan file.</summary>
internal static class TimelineShapes
{
    public static ViewShape<Schedule> Timeline { get; } = new ViewShape<Schedule>("timeline", "When everything is done, by the clock of the shop.")
        .Moment("start", s => s.Start, "When the first task begins.")
        .Moment("finish", s => s.Finish, "When the last task ends.")
        .Moment("lowerBound", s => s.LowerBound, "No timetable under the same rules finishes earlier.")
        .Flag("proven", s => s.Proven, "Whether finish and lower bound meet.")
        .NumberOrNull("gap", s => s.Gap, "Working time between lower bound and finish as a share of all of it, 0 to 1.")
        .Count("workMinutes", s => s.WorkMinutes, "Hands-on minutes of all tasks, every pair of hands counted.")
        .Decimal("stationDays", s => s.StationDays, "Days of a station taken up by glue-ups.")
        .Count("workingDays", s => s.WorkingDays, "Working days from start to finish, both counted.")
        .DateOrNull("loadShelvesFrom", s => s.LoadShelvesFrom, "Day from which shelves may be loaded; null without a finish.")
        .Many("tasks", s => s.Tasks, Task, "Tasks by start.")
        .Many("load", s => s.Load, Load, "Hands-on minutes by person and day.")
        .Many("orders", s => s.Orders, Order, "When bought stock has to be ordered.")
        .Many("remedies", s => s.Remedies, Remedy, "What would bring the finish forward, when the promised day cannot be met; each change by itself.");

    private static ViewShape<ScheduledTask> Task => new ViewShape<ScheduledTask>("task", "A task with its time, people and place.")
        .Text("id", t => t.Id, "Stable id.")
        .Text("name", t => t.Name, "Name in words.")
        .Choice("phase", t => t.Phase, "Stage of the work.")
        .Moment("start", t => t.Start, "When it begins.")
        .Moment("finish", t => t.Finish, "When it ends.")
        .Many("spans", t => t.Spans, Span, "Working stretches between start and finish.")
        .Count("minutes", t => t.Minutes, "Working minutes from start to finish.")
        .Count("hands", t => t.Hands, "Pairs of hands at once.")
        .Texts("people", t => t.People, "Ids of the people, who leads first.")
        .TextOrNull("station", t => t.Station, "Id of the station; null when it takes none.")
        .MomentOrNull("stationUntil", t => t.StationUntil, "When the station is free again; null when it takes none.")
        .Many("clamps", t => t.Clamps, Clamps, "Clamps taken.")
        .Many("runsOn", t => t.RunsOn, RunningOn, "What goes on by itself afterwards, through the night if need be.")
        .Texts("parts", t => t.Parts, "Ids of the parts it is about, where it is about single parts.")
        .Texts("splices", t => t.Splices, "Ids of the splices it makes.")
        .Texts("after", t => t.After, "Ids of the tasks that come before it.")
        .Flag("done", t => t.Done, "Whether it is already done.");

    private static ViewShape<ClockSpan> Span => new ViewShape<ClockSpan>("span", "A stretch of time.")
        .Moment("from", s => s.From, "Its beginning.")
        .Moment("to", s => s.To, "Its end.");

    private static ViewShape<ClampUse> Clamps => new ViewShape<ClampUse>("clampUse", "Clamps that a task takes.")
        .Choice("kind", c => c.Kind, "Kind of clamp.")
        .Count("count", c => c.Count, "How many.")
        .Moment("until", c => c.Until, "When they are free again.");

    private static ViewShape<RunningOn> RunningOn => new ViewShape<RunningOn>("runningOn", "Something that goes on by itself.")
        .Text("what", r => r.What, "What it is.")
        .Moment("until", r => r.Until, "When it has come to its end.");

    private static ViewShape<PersonDay> Load => new ViewShape<PersonDay>("personDay", "Hands-on work of one person on one day.")
        .Text("person", d => d.Person, "Id of the person.")
        .DateOrNull("date", d => d.Date, "The day.")
        .Count("minutes", d => d.Minutes, "Hands-on minutes.");

    private static ViewShape<DeadlineRemedy> Remedy => new ViewShape<DeadlineRemedy>("remedy", "A change of the shop that would bring the finish forward.")
        .Text("what", r => r.What, "The change in words.")
        .DateOrNull("finish", r => r.Finish, "When the work would then be finished.")
        .Flag("meets", r => r.Meets, "Whether the promise would then be kept.");

    private static ViewShape<StockOrder> Order => new ViewShape<StockOrder>("order", "When stock has to be ordered.")
        .Text("stock", o => o.Stock, "Id of the stock in the job.")
        .Count("count", o => o.Count, "How many are bought.")
        .DateOrNull("orderBy", o => o.OrderBy, "Last day to order it.")
        .DateOrNull("neededOn", o => o.NeededOn, "Day on which it is unloaded.");
}
