using Casewright.Engine.Splicing.Methods;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>Zones that a part's own machining keeps free of joints.</summary>
internal static class MachiningZones
{
    /// <summary>Wood kept beyond the end of a tenon (common practice, no source).</summary>
    private static readonly Length s_beyondTenon = Length.FromMillimetres(5);

    /// <summary>The zones, in the order of the machining.</summary>
    public static IEnumerable<ForbiddenZone> Of(Part part, SpliceTechnique technique, SpliceRules rules) =>
        part.Machining.SelectMany(work => Of(work, part, technique, rules));

    /// <summary>Clearance to the edge of a housing, notch or panel that meets the given face; null for work through the whole thickness.</summary>
    public static Length ClearOfHousing(Face? face, Part part, SpliceTechnique technique, SpliceRules rules) =>
        Length.Max(technique.Spread(part.Thickness, rules) + rules.ClearOfDado, Reach(face, part, technique, rules) + s_beyondTenon);

    /// <summary>Clearance to a panel that meets a face which the joint does not touch.</summary>
    public static Length ClearOfPanel(Part part, SpliceTechnique technique, SpliceRules rules) =>
        Length.Max(technique.Spread(part.Thickness, rules) + rules.ClearOfDado, technique.Reach(part.Thickness, rules) + s_beyondTenon);

    private static IEnumerable<ForbiddenZone> Of(Machining work, Part part, SpliceTechnique technique, SpliceRules rules)
    {
        switch (work)
        {
            case Dado dado:
                yield return Around(dado.X, dado.Width, ClearOfHousing(dado.Face, part, technique, rules), $"the dado for {dado.For}");
                break;
            case Rabbet { Edge: PartEdge.Start } rabbet:
                yield return Around(Length.Zero, rabbet.Width, ClearOfHousing(rabbet.Face, part, technique, rules), $"the rabbet for {rabbet.For}");
                break;
            case Rabbet { Edge: PartEdge.End } rabbet:
                yield return Around(part.Length - rabbet.Width, rabbet.Width, ClearOfHousing(rabbet.Face, part, technique, rules), $"the rabbet for {rabbet.For}");
                break;
            case Notch notch:
                yield return Around(notch.X, notch.LengthX, ClearOfHousing(null, part, technique, rules), $"the notch for {notch.For}");
                break;
            case CutOut cutOut:
                yield return Around(cutOut.X, cutOut.LengthX, ClearOfHousing(null, part, technique, rules), $"the cut-out for {cutOut.For}");
                break;
            case Bevel bevel:
                yield return FromEnd(bevel.Edge, bevel.Setback, part, ClearOfHousing(null, part, technique, rules), $"the bevel at {bevel.For}");
                break;
            case Clip clip:
                yield return FromEnd(clip.End, clip.AlongX, part, ClearOfHousing(null, part, technique, rules), $"the raked cut at {clip.For}");
                break;
            case Bore bore:
                yield return Around(bore.X - (bore.Diameter / 2), bore.Diameter, ClearOfHousing(bore.Face, part, technique, rules), $"the hole for {bore.For}");
                break;
            case HardwareZone zone:
                var clear = Length.Max(technique.Spread(part.Thickness, rules) + rules.ClearOfHardware, Reach(zone.Face, part, technique, rules) + s_beyondTenon);
                yield return Around(zone.FromX, zone.ToX - zone.FromX, clear, $"the place of {zone.For}");
                break;
            case PinRow row:
                foreach (var hole in Holes(row, Length.Max(technique.Spread(part.Thickness, rules) + rules.ClearOfPinHole, Reach(row.Face, part, technique, rules))))
                    yield return hole;
                break;
            default:
                break;
        }
    }

    /// <summary>Holes closer together than twice the clearance make one zone.</summary>
    private static IEnumerable<ForbiddenZone> Holes(PinRow row, Length clear)
    {
        var room = clear + (row.Diameter / 2);
        if (row.Count == 0)
            yield break;
        if (row.Pitch < room * 2)
        {
            yield return new ForbiddenZone(row.FirstX - room, row.LastX + room, "the pin row");
            yield break;
        }

        for (var hole = 0; hole < row.Count; hole++)
        {
            var centre = row.FirstX + (row.Pitch * hole);
            yield return new ForbiddenZone(centre - room, centre + room, "the pin row");
        }
    }

    private static Length Reach(Face? face, Part part, SpliceTechnique technique, SpliceRules rules)
    {
        var inside = technique.Reach(part.Thickness, rules);
        var access = technique.AccessFace(part);
        return access is not null && (face is null || face == access)
            ? Length.Max(inside, technique.ReachOnFace(part.Thickness, rules))
            : inside;
    }

    private static ForbiddenZone FromEnd(PartEdge end, Length reach, Part part, Length clear, string reason) =>
        Around(end == PartEdge.Start ? Length.Zero : part.Length - reach, reach, clear, reason);

    private static ForbiddenZone Around(Length from, Length size, Length clear, string reason) => new(from - clear, from + size + clear, reason);
}
