using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Crews;

/// <summary>People who may lead the same work and are away on the same days: for the timetable they are one resource.</summary>
/// <param name="Skills">What they may lead, all of them when they may lead all.</param>
/// <param name="DaysOff">When they are away, ascending.</param>
/// <param name="People">Their ids, in the order of the shop.</param>
internal sealed record CrewClass(IReadOnlySet<Skill> Skills, IReadOnlyList<DateOnly> DaysOff, IReadOnlyList<string> People)
{
    /// <summary>The classes of a shop, in the order of their first members.</summary>
    public static IReadOnlyList<CrewClass> Of(IEnumerable<Person> people) =>
        [.. people
            .GroupBy(Key, StringComparer.Ordinal)
            .Select(g => new CrewClass(
                Enum.GetValues<Skill>().Where(g.First().Can).ToHashSet(),
                [.. g.First().DaysOff.Distinct().Order()],
                [.. g.Select(p => p.Id)]))];

    private static string Key(Person person) =>
        string.Join(',', Enum.GetValues<Skill>().Where(person.Can)) + ";" + string.Join(',', person.DaysOff.Distinct().Order().Select(d => d.DayNumber));
}
