using Casewright.Model.Measure;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Crews;

/// <summary>Stations of one length: for the timetable they are one resource.</summary>
/// <param name="Length">Their length.</param>
/// <param name="Ids">Their ids, in the order of the shop.</param>
internal sealed record StationClass(Length Length, IReadOnlyList<string> Ids)
{
    /// <summary>The classes of a shop, the shortest first, so that a part takes the shortest station that holds it.</summary>
    public static IReadOnlyList<StationClass> Of(IEnumerable<Station> stations) =>
        [.. stations.GroupBy(s => s.Length).OrderBy(g => g.Key).Select(g => new StationClass(g.Key, [.. g.Select(s => s.Id)]))];
}

/// <summary>Names the station of every hold: the first of its class that is free.</summary>
internal sealed class StationRoster
{
    private readonly Dictionary<string, long> _freeFrom = new(StringComparer.Ordinal);

    /// <summary>The station that a hold gets; holds come in the order of their starts.</summary>
    public string Take(StationClass stations, long from, long to)
    {
        var id = stations.Ids.First(s => _freeFrom.GetValueOrDefault(s) <= from);
        _freeFrom[id] = to;
        return id;
    }
}
