using Casewright.Model.Collections;
using Casewright.Model.Shop;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>Changes of a shop that let it finish sooner: one more pair of hands, one more day a week, longer days, one more station.</summary>
internal static class ShopChanges
{
    private static readonly DayOfWeek[] FreeDays = [DayOfWeek.Saturday, DayOfWeek.Sunday];

    public static IEnumerable<(string What, Workshop Shop)> Of(Workshop shop)
    {
        var helper = new Person { Id = FreeId(shop.People.Select(p => p.Id), "helper"), Name = "helper" };
        yield return ("one more person", shop with { People = shop.People.Add(helper) });
        foreach (var day in FreeDays.Where(d => !shop.Hours.Weekdays.Contains(d)).Take(1))
            yield return ($"working on {day}s too", shop with { Hours = shop.Hours with { Weekdays = shop.Hours.Weekdays.Add(day) } });
        if (Longer(shop.Hours) is { } hours)
            yield return ("two hours more every day", shop with { Hours = hours });
        if (shop.Stations.Count > 0)
        {
            var longest = shop.Stations.MaxBy(s => s.Length)!;
            var station = longest with { Id = FreeId(shop.Stations.Select(s => s.Id), "station") };
            yield return ("one more glue-up station", shop with { Stations = shop.Stations.Add(station) });
        }
    }

    private static WorkingHours? Longer(WorkingHours hours)
    {
        var last = hours.Day[^1];
        return last.To.Hour >= 22 ? null : hours with { Day = hours.Day.Take(hours.Day.Count - 1).Append(last with { To = last.To.AddHours(2) }).ToValueList() };
    }

    private static string FreeId(IEnumerable<string> taken, string wanted)
    {
        var ids = taken.ToHashSet(StringComparer.Ordinal);
        var id = wanted;
        for (var n = 2; !ids.Add(id); n++)
            id = wanted + n;
        return id;
    }
}
