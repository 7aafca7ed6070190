using Casewright.Engine.Splicing.Methods;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>
/// Zones that bending keeps free of joints: the middle of every stretch of an upright that no fixed panel braces, and of a level
/// part everything that is not on or beside an upright.
/// </summary>
internal static class BracingZones
{
    /// <summary>The zones of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="braces">What braces or carries it, ascending.</param>
    /// <param name="technique">How it would be joined.</param>
    /// <param name="shop">The shop: its rules of splicing and its share of a span that stays free.</param>
    public static IEnumerable<ForbiddenZone> Of(Part part, IReadOnlyList<Support> braces, SpliceTechnique technique, Workshop shop) =>
        part.IsUpright() ? OfUpright(part, braces, technique, shop) : OfLevel(part, braces, technique, shop);

    private static IEnumerable<ForbiddenZone> OfUpright(Part part, IReadOnlyList<Support> braces, SpliceTechnique technique, Workshop shop)
    {
        foreach (var brace in braces.Where(b => !IsHoused(part, b)))
        {
            var clear = MachiningZones.ClearOfPanel(part, technique, shop.Splicing);
            yield return new ForbiddenZone(brace.Covers.From - clear, brace.Covers.To + clear, $"the place of {brace.Part.Name}");
        }

        foreach (var (from, to) in Spans(part, braces))
        {
            var free = Share(to - from, shop.Checks.SpliceFreeShare);
            var middle = (from + to) / 2;
            if (free > Length.Zero)
                yield return new ForbiddenZone(middle - (free / 2), middle + (free / 2), "the middle third of a stretch that nothing braces");
        }
    }

    /// <summary>Whether the panel sits in a dado, which keeps its own clearance.</summary>
    private static bool IsHoused(Part part, Support brace) =>
        part.Machining.OfType<Dado>().Any(d => d.X < brace.Covers.To && brace.Covers.From < d.X + d.Width);

    private static IEnumerable<ForbiddenZone> OfLevel(Part part, IReadOnlyList<Support> braces, SpliceTechnique technique, Workshop shop)
    {
        var beside = MachiningZones.ClearOfPanel(part, technique, shop.Splicing) * 2;
        foreach (var (from, to) in Spans(part, braces))
        {
            var free = Share(to - from, shop.Checks.SpliceFreeShare);
            var middle = (from + to) / 2;
            var low = Length.Min(from + beside, middle - (free / 2));
            var high = Length.Max(to - beside, middle + (free / 2));
            if (low < high)
                yield return new ForbiddenZone(low, high, "a span: level parts are joined on or beside an upright");
        }
    }

    /// <summary>The stretches between braces, the part's own ends counted as such.</summary>
    private static IEnumerable<(Length From, Length To)> Spans(Part part, IReadOnlyList<Support> braces)
    {
        var from = Length.Zero;
        foreach (var brace in braces)
        {
            if (brace.Covers.From > from)
                yield return (from, brace.Covers.From);
            from = Length.Max(from, brace.Covers.To);
        }

        if (from < part.Length)
            yield return (from, part.Length);
    }

    private static Length Share(Length span, double share) => Length.FromNanometres((long)(span.Nanometres * (decimal)share));
}
