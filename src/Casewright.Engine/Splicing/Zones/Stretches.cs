using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>Works on lists of stretches that ascend and do not touch one another.</summary>
public static class Stretches
{
    /// <summary>What is left of <paramref name="whole"/> outside the zones, the ends of which stay allowed.</summary>
    public static ValueList<Stretch> Without(Stretch whole, IEnumerable<ForbiddenZone> zones)
    {
        ArgumentNullException.ThrowIfNull(zones);
        var left = new List<Stretch>();
        var from = whole.From;
        foreach (var zone in zones.OrderBy(z => z.From).ThenBy(z => z.To))
        {
            if (zone.To <= from && zone.From < from)
                continue;
            if (zone.From >= from && from <= whole.To)
                left.Add(new Stretch(from, Length.Min(zone.From, whole.To)));
            from = Length.Max(from, zone.To);
        }

        if (from <= whole.To)
            left.Add(new Stretch(from, whole.To));
        return Merged(left);
    }

    /// <summary>Places that lie in both lists.</summary>
    public static ValueList<Stretch> Common(ValueList<Stretch> first, ValueList<Stretch> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return
        [
            .. from a in first
               from b in second
               let low = Length.Max(a.From, b.From)
               let high = Length.Min(a.To, b.To)
               where low <= high
               select new Stretch(low, high),
        ];
    }

    /// <summary>Places that lie in any of the stretches, in order and without overlaps.</summary>
    public static ValueList<Stretch> Merged(IEnumerable<Stretch> stretches)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        var merged = new List<Stretch>();
        foreach (var stretch in stretches.OrderBy(s => s.From).ThenBy(s => s.To))
        {
            if (merged.Count > 0 && stretch.From <= merged[^1].To)
                merged[^1] = merged[^1] with { To = Length.Max(merged[^1].To, stretch.To) };
            else
                merged.Add(stretch);
        }

        return merged.ToValueList();
    }

    /// <summary>Whether a place lies in any of them.</summary>
    public static bool Contain(this ValueList<Stretch> stretches, Length place)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        return stretches.Any(s => s.Contains(place));
    }

    /// <summary>The highest allowed place not above <paramref name="place"/>; null when there is none.</summary>
    public static Length? AtOrBelow(this ValueList<Stretch> stretches, Length place)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        Length? found = null;
        foreach (var stretch in stretches)
        {
            if (stretch.From <= place)
                found = Length.Min(stretch.To, place);
        }

        return found;
    }

    /// <summary>The lowest allowed place not below <paramref name="place"/>; null when there is none.</summary>
    public static Length? AtOrAbove(this ValueList<Stretch> stretches, Length place)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        foreach (var stretch in stretches)
        {
            if (stretch.To >= place)
                return Length.Max(stretch.From, place);
        }

        return null;
    }
}
