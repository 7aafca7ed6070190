using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>Places where a plain butt joint lies on something, or behind something: backs on shelves and under bands, trim over uprights.</summary>
internal static class CarriedJoints
{
    /// <summary>Width of back that may stay without bearing between two parts that carry it: the play of joints.</summary>
    private static readonly Length s_gapAcross = Length.FromMillimetres(1);

    /// <summary>Whether parts of this role are joined so.</summary>
    public static bool Suit(Part part) => part.Role is PartRole.Back || IsTrim(part);

    /// <summary>Whether the part is a strip that is fixed along its length, so that its joints carry nothing.</summary>
    public static bool IsTrim(Part part) => part.Role is PartRole.Crown or PartRole.ToeFace or PartRole.TrimBand or PartRole.Nosing
        or PartRole.Stile or PartRole.Rail or PartRole.Filler or PartRole.BaseRail or PartRole.BaseMould or PartRole.LightRail;

    /// <summary>The places, ascending, each with the part that carries or covers it.</summary>
    public static IReadOnlyList<(Stretch Place, string By)> Of(Part part, Surroundings surroundings, SpliceRules rules)
    {
        if (part.Role == PartRole.Back)
            return [.. OnShelves(part, surroundings.Carriers(part), surroundings.Frames(part), rules).Concat(UnderBands(part, surroundings.Bands(part), surroundings.Frames(part), rules)).OrderBy(j => j.Item1.From)];
        var behind = surroundings.Behind(part);
        return part.IsUpright()
            ? [.. behind.Where(b => b.Part.IsUpright()).Select(b => (b.Covers, b.Part.Id))]
            : [.. behind.Select(b => (new Stretch(b.Middle, b.Middle), b.Part.Id))];
    }

    private static IEnumerable<(Stretch, string)> OnShelves(Part back, IReadOnlyList<Support> shelves, IReadOnlyList<Support> frames, SpliceRules rules) =>
        from shelf in shelves
        where (shelf.Covers.To - shelf.Covers.From) / 2 >= rules.BackBearing
        group shelf by shelf.Middle into level
        where BearsAcross(back, level.Concat(At(level.Key, frames, rules)))
        select (new Stretch(level.Key, level.Key), level.First().Part.Id);

    private static IEnumerable<(Stretch, string)> UnderBands(Part back, IReadOnlyList<Support> bands, IReadOnlyList<Support> frames, SpliceRules rules) =>
        from band in bands
        where (band.Covers.To - band.Covers.From) / 2 >= rules.BandOverlap
        group band by band.Middle into level
        where BearsAcross(back, level.Concat(At(level.Key, frames, rules)))
        select (new Stretch(level.Key, level.Key), level.First().Part.Id);

    /// <summary>Parts running along the back that carry it at a joint there.</summary>
    private static IEnumerable<Support> At(Length joint, IReadOnlyList<Support> frames, SpliceRules rules) =>
        frames.Where(f => f.Covers.From <= joint - rules.BackBearing && joint + rules.BackBearing <= f.Covers.To);

    private static bool BearsAcross(Part back, IEnumerable<Support> carriers)
    {
        var across = Box.Of(back)[back.Place.AlongWidth];
        var reached = across.From;
        foreach (var carrier in carriers.Select(s => s.Across).OrderBy(s => s.From))
        {
            if (carrier.From - reached > s_gapAcross)
                return false;
            reached = Length.Max(reached, carrier.To);
        }

        return across.To - reached <= s_gapAcross;
    }
}
