using System.Globalization;
using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Reduction;

/// <summary>The sight line groups of a problem and the joint lines that all demands of a group can keep.</summary>
internal sealed class SightLineGroups
{
    private readonly Dictionary<string, int> _groups = new(StringComparer.Ordinal);
    private readonly List<SortedSet<long>> _lines = [];

    public SightLineGroups(ValueList<CuttingDemand> demands)
    {
        foreach (var demand in demands)
        {
            if (demand.SightLineGroup is not { } name || demand.Count == 0)
                continue;
            if (!_groups.TryGetValue(name, out var group))
            {
                group = _lines.Count;
                _groups.Add(name, group);
                _lines.Add([]);
            }

            _lines[group].UnionWith(demand.Options.Where(o => o.SightLine is not null).Select(o => o.SightLine!.Value));
        }
    }

    public int GroupOf(CuttingDemand demand) => demand.SightLineGroup is { } name ? _groups.GetValueOrDefault(name, -1) : -1;

    public int LineOf(CuttingDemand demand, int option)
    {
        var group = GroupOf(demand);
        return group < 0 || demand.Options[option].SightLine is not { } line ? -1 : _lines[group].Index().First(l => l.Item == line).Index;
    }

    /// <summary>Sight lines of every group; at least one, so that groups without any need no special case.</summary>
    public int[] LineCounts() => [.. _lines.Select(l => Math.Max(1, l.Count))];

    /// <summary>Drops the options at joint lines that some demand of the group cannot keep; reports groups left without a line.</summary>
    public void KeepCommon(ValueList<CuttingDemand> demands, List<int>[] usable, List<CuttingObstacle> obstacles)
    {
        foreach (var (name, group) in _groups.OrderBy(g => g.Value))
        {
            var members = Enumerable.Range(0, demands.Count).Where(d => demands[d].Count > 0 && GroupOf(demands[d]) == group).ToArray();
            var needed = members.Where(d => usable[d].TrueForAll(o => demands[d].Options[o].SightLine is not null)).ToArray();
            var common = _lines[group].Where(line => Array.TrueForAll(needed, d => usable[d].Exists(o => demands[d].Options[o].SightLine == line))).ToArray();
            if (needed.Length > 0 && common.Length == 0)
            {
                obstacles.Add(new CuttingObstacle(ObstacleKind.NoCommonSightLine, name, string.Create(CultureInfo.InvariantCulture,
                    $"{name}: no joint line serves all of {string.Join(", ", needed.Select(d => demands[d].Id))}.")));
                continue;
            }

            _lines[group].IntersectWith(common);
            foreach (var d in members)
                usable[d].RemoveAll(o => demands[d].Options[o].SightLine is { } line && !_lines[group].Contains(line));
        }
    }
}
