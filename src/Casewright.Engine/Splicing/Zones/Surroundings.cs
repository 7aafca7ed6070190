using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>What stands where: finds the parts that carry, brace or cover another.</summary>
internal sealed class Surroundings
{
    private static readonly PartRole[] s_panels = [PartRole.FixedShelf, PartRole.Top, PartRole.Bottom];
    private static readonly PartRole[] s_uprights = [PartRole.Side, PartRole.Partition, PartRole.EndPanel, PartRole.BaseRung];

    private readonly Dictionary<string, List<Placed>> _byCase = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Placed>> _byRun = new(StringComparer.Ordinal);

    public Surroundings(Casework casework)
    {
        foreach (var part in casework.Parts)
        {
            var placed = new Placed(part, Box.Of(part));
            Add(_byCase, part.Case, placed);
            Add(_byRun, part.Run, placed);
        }
    }

    /// <summary>Fixed panels that touch an upright, or uprights that touch a level part: each with the stretch that it covers, ascending.</summary>
    public IReadOnlyList<Support> Braces(Part part)
    {
        var box = Box.Of(part);
        var roles = part.IsUpright() ? s_panels : s_uprights;
        return Supports(part, Near(part).Where(p => Array.Exists(roles, r => r == p.Part.Role) && p.Box.Touches(box)));
    }

    /// <summary>Uprights and rungs that stand behind or under a level piece of trim, or the side behind an upright one.</summary>
    public IReadOnlyList<Support> Behind(Part trim)
    {
        var box = Box.Of(trim);
        var candidates = Near(trim).Where(p => Array.Exists(s_uprights, r => r == p.Part.Role));
        return trim.IsUpright()
            ? Supports(trim, candidates.Where(p => p.Part.Role != PartRole.BaseRung && p.Box.Touches(box)))
            : Supports(trim, candidates.Where(p => Length.Max(p.Box.Along.From, box.Along.From) < Length.Min(p.Box.Along.To, box.Along.To)));
    }

    /// <summary>Panels that a back lies against, with the stretch that each covers along the back.</summary>
    public IReadOnlyList<Support> Carriers(Part back)
    {
        var box = Box.Of(back);
        PartRole[] roles = back.IsUpright() ? [PartRole.FixedShelf] : [PartRole.Partition];
        return Supports(back, Near(back).Where(p => Array.Exists(roles, r => r == p.Part.Role) && p.Box.Touches(box)));
    }

    /// <summary>Parts that run along a back and hold its edges or its middle: uprights for an upright back, fixed panels for a level one.</summary>
    public IReadOnlyList<Support> Frames(Part back)
    {
        var box = Box.Of(back);
        PartRole[] roles = back.IsUpright() ? [PartRole.Side, PartRole.Partition] : [PartRole.FixedShelf];
        return Supports(back, Near(back).Where(p => Array.Exists(roles, r => r == p.Part.Role) && p.Box.Touches(box)));
    }

    /// <summary>Trim bands of the run that pass in front of a back.</summary>
    public IReadOnlyList<Support> Bands(Part back)
    {
        var box = Box.Of(back);
        var bands = _byRun.GetValueOrDefault(back.Run, []).Where(p => p.Part.Role == PartRole.TrimBand
            && Length.Max(p.Box.Along.From, box.Along.From) < Length.Min(p.Box.Along.To, box.Along.To));
        return back.IsUpright() ? Supports(back, bands) : [];
    }

    /// <summary>Parts of the same case; of the whole run for parts that span cases.</summary>
    private IEnumerable<Placed> Near(Part part) =>
        (part.Case == part.Run ? _byRun.GetValueOrDefault(part.Run, []) : _byCase.GetValueOrDefault(part.Case, [])).Where(p => p.Part.Id != part.Id);

    private static List<Support> Supports(Part part, IEnumerable<Placed> found) =>
    [
        .. from placed in found
        let covered = part.FromRoom(placed.Box[part.Place.AlongLength])
        where covered.To > Length.Zero && covered.From < part.Length
        orderby covered.From, covered.To
        select new Support(covered, placed.Box[part.Place.AlongWidth], placed.Part),
    ];

    private static void Add(Dictionary<string, List<Placed>> lists, string key, Placed placed)
    {
        if (!lists.TryGetValue(key, out var list))
            lists.Add(key, list = []);
        list.Add(placed);
    }

    private sealed record Placed(Part Part, Box Box);
}

/// <summary>A part that carries, braces or covers another.</summary>
/// <param name="Covers">The stretch of the other part that it lies on.</param>
/// <param name="Across">Where it is in the room across the other part.</param>
/// <param name="Part">The part.</param>
internal sealed record Support(Stretch Covers, Stretch Across, Part Part)
{
    /// <summary>The middle of its thickness, on the other part.</summary>
    public Length Middle => Length.FromNanometres((Covers.From.Nanometres + Covers.To.Nanometres) / 2);
}
