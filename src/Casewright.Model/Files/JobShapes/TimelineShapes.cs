using Casewright.Model.Files.Shapes;
using Casewright.Model.Timeline;

namespace Casewright.Model.Files.JobShapes;

/// <summary>People, hours, stations, clamps, times and finish in a job file.</summary>
internal static class TimelineShapes
{
    private const int MostDaysOff = 1000;
    private const int MostLogs = 10_000;
    private static readonly StandardTimes s_times = new();
    private static readonly WorkingHours s_hours = new();

    private static readonly RecordShape<ShopTime> s_time = new("shopTime", "The shop's own time for an operation.", f => new()
    {
        Operation = f.Required("operation", t => t.Operation, Choices.Operation, "The operation."),
        Minutes = f.Required("minutes", t => t.Minutes, DecimalShape.Positive(10_000), "Hands-on minutes a unit."),
        Jobs = f.Default(
            "jobs", t => t.Jobs, new CountShape(0, 100_000), 0, "Number of jobs that it is the median of; 0 when somebody typed it."),
    });

    private static readonly RecordShape<LoggedTime> s_log = new("loggedTime", "Hands-on time that the shop logged for an operation on one job.", f => new()
    {
        Job = f.Required("job", l => l.Job, TextShape.Words, "Name of the job."),
        Operation = f.Required("operation", l => l.Operation, Choices.Operation, "The operation."),
        Quantity = f.Required("quantity", l => l.Quantity, DecimalShape.Positive(1_000_000), "How many units were done."),
        Minutes = f.Required("minutes", l => l.Minutes, DecimalShape.Positive(1_000_000), "Minutes that they took, as the standard time counts them."),
    });

    private static readonly RecordShape<WorkSpan> s_span = new(
        "workSpan",
        "Hours of work on one day, without a break.",
        f => new(
            f.Required("from", s => s.From, TimeShape.Instance, "When work begins."),
            f.Required("to", s => s.To, TimeShape.Instance, "When it ends, on the same day.")));

    private static readonly RecordShape<Coat> s_coat = new("coat", "One coat of a finish.", f => new()
    {
        Name = f.Required("name", c => c.Name, TextShape.Words, "Name on the finish schedule."),
        Application = f.Default("application", c => c.Application, Choices.CoatApplication, CoatApplication.Spray, "How it is put on."),
        DryHours = f.Required(
            "dryHours", c => c.DryHours, DecimalShape.Between(0, 1000), "Hours until the next coat, or until it may be handled."),
        DenibFirst = f.Default("denibFirst", c => c.DenibFirst, FlagShape.Instance, false, "Whether the coat below is de-nibbed first."),
        Coverage = f.Default("coverage", c => c.Coverage, DecimalShape.Positive(100), 8, "Square metres covered by one litre."),
        LitrePrice = f.Default("litrePrice", c => c.LitrePrice, MoneyShape.Instance, 0, "Price of a litre."),
    });

    public static RecordShape<StandardTimes> Times { get; } = new("times", "Standard times of the work.", f => new()
    {
        Own = f.Items("own", t => t.Own, s_time, 0, Choices.Operation.Values.Count(), "The shop's own times, each operation once."),
        Logs = f.Items("logs", t => t.Logs, s_log, 0, MostLogs, "What the shop logged on its jobs; it proposes times and changes none by itself."),
        ClearFinishFactor = f.Default(
            "clearFinishFactor",
            t => t.ClearFinishFactor,
            DecimalShape.Between(1, 10),
            s_times.ClearFinishFactor,
            "Factor on the hands-on time of splices under a clear finish."),
        OutputOfTwo = f.Default(
            "outputOfTwo",
            t => t.OutputOfTwo,
            new DecimalShape(1, allowsLeast: false, 2),
            s_times.OutputOfTwo,
            "What two people on one task get done in the time in which one does 1."),
    })
    {
        Check = CheckTimes,
    };

    public static RecordShape<WorkingHours> Hours { get; } = new(
        "hours",
        "When attended work is done: only the hours that may be planned with. What is left out is usual (common practice, no source).",
        f => new()
        {
            Day = f.Default(
                "day", h => h.Day, new ListShape<WorkSpan>(s_span, 1, 10), s_hours.Day, "Hours of a working day, the earliest first."),
            Weekdays = f.Default(
                "weekdays",
                h => h.Weekdays,
                new ListShape<DayOfWeek>(Choices.Weekday, 1, 7),
                s_hours.Weekdays,
                "Days of the week that are worked."),
            DaysOff = f.Items(
                "daysOff", h => h.DaysOff, DateShape.Instance, 0, MostDaysOff, "Holidays and other days on which nobody works."),
        })
    {
        Check = CheckHours,
    };

    public static RecordShape<Person> Person { get; } = new("person", "Somebody who works in the shop and on site.", f => new()
    {
        Id = f.Required("id", p => p.Id, TextShape.Id, "Short id; everybody has their own."),
        Name = f.Required("name", p => p.Name, TextShape.Words, "Name as people say it."),
        Skills = f.Items("skills", p => p.Skills, Choices.Skill, 1, 4, "Work that this person may lead; left out, all of it."),
        DaysOff = f.Items("daysOff", p => p.DaysOff, DateShape.Instance, 0, MostDaysOff, "Days on which this person is away."),
    })
    {
        Declares = _ => (Ids.People, "person"),
    };

    public static RecordShape<Station> Station { get; } = new("station", "A bench place where one glue-up can sit.", f => new()
    {
        Id = f.Required("id", s => s.Id, TextShape.Id, "Short id; every station has its own."),
        Name = f.Required("name", s => s.Name, TextShape.Words, "Name as people say it."),
        Length = f.Required(
            "length", s => s.Length, LengthShape.Between(100, 30_000), "Longest part that lies on it."),
        Places = f.Default(
            "places", s => s.Places, new CountShape(1, 50), 1, "Parts glued in one loading, side by side in one set of clamps."),
    })
    {
        Declares = _ => (Ids.Stations, "station"),
    };

    public static RecordShape<ClampStock> Clamp { get; } = new(
        "clamps",
        "Clamps of one kind in the shop.",
        f => new(
            f.Required("kind", c => c.Kind, Choices.ClampKind, "Which."),
            f.Required("count", c => c.Count, new CountShape(0, 10_000), "How many.")));

    public static RecordShape<FinishSystem> Finish { get; } = new("finish", "A finish: its coats, and how long it hardens.", f => new()
    {
        Name = f.Required("name", s => s.Name, TextShape.Words, "Name on the papers."),
        Clear = f.Default("clear", s => s.Clear, FlagShape.Instance, false, "Whether wood shows through: joints then take more care."),
        Coats = f.Required("coats", s => s.Coats, new ListShape<Coat>(s_coat, 1, 20), "Coats in order."),
        DaysBeforeLoading = f.Default(
            "daysBeforeLoading",
            s => s.DaysBeforeLoading,
            new CountShape(0, 365),
            7,
            "Days from the last coat until shelves may be loaded."),
    });

    private static void CheckTimes(StandardTimes times, Spot spot)
    {
        for (var i = 0; i < times.Own.Count; i++)
        {
            if (times.Own.Take(i).Any(t => t.Operation == times.Own[i].Operation))
                spot["own"][i]["operation"].Fail("This operation is listed twice.", null, "one time for each operation");
        }
    }

    private static void CheckHours(WorkingHours hours, Spot spot)
    {
        for (var i = 0; i < hours.Day.Count; i++)
        {
            if (hours.Day[i].To <= hours.Day[i].From)
                spot["day"][i]["to"].Fail("Work ends before it begins.", null, "a time after \"from\"");
            if (i > 0 && hours.Day[i].From < hours.Day[i - 1].To)
                spot["day"][i]["from"].Fail("These hours begin before the ones above have ended.", null, "hours that follow one another");
        }

        for (var i = 0; i < hours.Weekdays.Count; i++)
        {
            if (hours.Weekdays.Take(i).Contains(hours.Weekdays[i]))
                spot["weekdays"][i].Fail("This day is listed twice.", null, "each day once");
        }
    }
}
