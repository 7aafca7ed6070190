using Casewright.Engine.Access;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Papers.Documents;

/// <summary>Getting in and up, in words.</summary>
internal static class AccessWords
{
    /// <summary>Where a case is stood up.</summary>
    public static string Of(StandingPlace place) => place switch
    {
        StandingPlace.Floor => "on the floor, where it stays",
        StandingPlace.FloorFromFace => "from its face, rolled over the toe space",
        StandingPlace.FloorThenLifted => "on the floor, then lifted on",
        StandingPlace.OnBase => "on top of its base",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };

    /// <summary>What is to spare or lacking.</summary>
    public static string Spare(SiteFigures site, PassageFit fit) => fit.Passes ? $"{site.Metres(fit.Spare)} to spare" : $"lacks {site.Metres(-fit.Spare)}";

    /// <summary>How the headroom comes about.</summary>
    public static string Why(SiteFigures site, StandingUp way) => way.Place switch
    {
        StandingPlace.OnBase => $"Base + √(height² + depth²) + play = {site.Metres(way.Need)} against {site.Metres(way.Have)}.",
        StandingPlace.FloorThenLifted => $"The larger of √(height² + depth²) + play and its top on the base + room to lift = {site.Metres(way.Need)} against {site.Metres(way.Have)}.",
        StandingPlace.FloorFromFace => $"The toe space saves some of the diagonal: {site.Metres(way.Need)} against {site.Metres(way.Have)}.",
        _ => $"√(height² + depth²) + play = {site.Metres(way.Need)} against {site.Metres(way.Have)}.",
    };

    /// <summary>How the box is held, and what decides.</summary>
    public static string Why(SiteFigures site, PassageFit fit)
    {
        var hold = fit.Hold;
        var held = hold.Tip > 0
            ? FormattableString.Invariant($"Tipped {hold.Tip:0}°: {site.Metres(hold.Along)} long from above, {site.Metres(hold.Up)} high, {site.Metres(hold.Across)} across")
            : $"{site.Metres(hold.Along)} leading, {site.Metres(hold.Across)} across, {site.Metres(hold.Up)} high";
        var turning = fit.Turning is { } longest ? $"; {site.Metres(longest)} turns" : "";
        var kind = fit.Passage.Kind is PassageKind.Stair ? $"; headroom square to the pitch {site.Metres(fit.Passage.Height.Metres * Math.Cos(double.DegreesToRadians(fit.Passage.Pitch ?? 0)))}" : "";
        var leaf = fit.Passage.Leaf > Length.Zero ? $"; the open leaf takes {site.Metres(fit.Passage.Leaf.Metres)} of the width" : "";
        return $"{held}{turning}{kind}{leaf}. {Spare(site, fit)}, play included.";
    }
}
