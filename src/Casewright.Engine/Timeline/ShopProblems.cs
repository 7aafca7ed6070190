using System.Globalization;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Shop;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>What keeps a shop from doing the work at all, each with its place in the job file and what would mend it.</summary>
internal static class ShopProblems
{
    private static readonly Skill[] Skills = Enum.GetValues<Skill>();

    /// <summary>Problems that show before any task is known.</summary>
    public static IEnumerable<Problem> BeforeWork(Job job)
    {
        var shop = job.Shop;
        if ((job.StartOn ?? job.Date) is null)
            yield return new("startOn", "The timetable needs a first day of work.", "", "a date, such as 2026-03-02");
        if (shop.People.Count == 0)
            yield return new("shop.people", "There is nobody to do the work.", "", "at least one person");
        foreach (var twice in shop.People.GroupBy(p => p.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
            yield return new("shop.people", "Two people have the same id.", twice.Key, "ids that differ");
        foreach (var twice in shop.Stations.GroupBy(s => s.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
            yield return new("shop.stations", "Two stations have the same id.", twice.Key, "ids that differ");
        if (shop.FloorPlaces is <= 0)
            yield return new("shop.floorPlaces", "A case needs floor to stand on.", Number(shop.FloorPlaces.Value), "1 or more, or nothing when there is room for all");
        foreach (var problem in Hours(shop.Hours).Concat(Glue(shop)).Concat(Times(shop.Times)))
            yield return problem;
    }

    /// <summary>Problems of the tasks against the shop.</summary>
    public static IEnumerable<Problem> OfWork(Job job, WorkList list)
    {
        foreach (var problem in list.Problems)
            yield return problem;
        var shop = job.Shop;
        foreach (var skill in Skills)
        {
            if (!shop.People.Any(p => p.Can(skill)) && list.Tasks.FirstOrDefault(t => t.Skill == skill) is { } task)
                yield return new("shop.people", $"Nobody can lead the work '{task.Name}'.", "no person with the skill", Word(skill));
        }

        foreach (var need in list.Holds.Where(h => h.Need.Clamps is not null).GroupBy(h => h.Need.Clamps!.Value).OrderBy(g => g.Key))
        {
            var most = need.Max(h => h.Need.Count);
            if (shop.Clamps.FirstOrDefault(c => c.Kind == need.Key) is { } there && there.Count < most)
                yield return new("shop.clamps", $"The task '{list[need.First(h => h.Need.Count == most).First].Name}' needs {most} {HoldingGear.Name(need.Key)}.", Number(there.Count), $"{Number(most)} or more");
        }
    }

    private static IEnumerable<Problem> Hours(WorkingHours hours)
    {
        if (hours.Weekdays.Count == 0)
            yield return new("shop.hours.weekdays", "No day of the week is worked.", "", "at least one day");
        if (hours.Day.Count == 0)
            yield return new("shop.hours.day", "A working day has no hours.", "", "at least one span, such as 08:00 to 12:00");
        for (var i = 0; i < hours.Day.Count; i++)
        {
            if (hours.Day[i].To <= hours.Day[i].From || (i > 0 && hours.Day[i].From < hours.Day[i - 1].To))
                yield return new(string.Create(CultureInfo.InvariantCulture, $"shop.hours.day[{i}]"), "Working hours must follow one another.", $"{hours.Day[i].From:HH:mm} to {hours.Day[i].To:HH:mm}", "spans in order that do not overlap");
        }
    }

    private static IEnumerable<Problem> Glue(Workshop shop)
    {
        if (shop.Temperature is { } celsius && celsius < shop.Glue.LeastTemperature)
            yield return new("shop.temperature", "The glue does not set properly so cold: no glue-up may be planned.", Degrees(celsius), $"{Degrees(shop.Glue.LeastTemperature)} or warmer, for wood, glue and shop; or a glue that sets colder");
    }

    private static IEnumerable<Problem> Times(StandardTimes times)
    {
        foreach (var own in times.Own.Where(t => t.Minutes <= 0))
            yield return new("shop.times", $"The time of {Word(own.Operation)} must be above nothing.", Number(own.Minutes), "minutes above 0");
        foreach (var twice in times.Own.GroupBy(t => t.Operation).Where(g => g.Count() > 1))
            yield return new("shop.times", "An operation has two times.", Word(twice.Key), "one time for each operation");
        if (times.OutputOfTwo is <= 1 or > 2)
            yield return new("shop.times.outputOfTwo", "Two people do more than one, and at most twice as much.", Number(times.OutputOfTwo), "above 1, at most 2");
    }

    private static string Word(Enum value)
    {
        var name = value.ToString();
        return string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
    }

    private static string Number(decimal value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Degrees(double value) => value.ToString("0.#", CultureInfo.InvariantCulture) + " °C";
}
