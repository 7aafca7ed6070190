using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Papers.Documents;

/// <summary>Cases that are built alike, part for part.</summary>
/// <param name="Cases">The cases, in the order of the plan.</param>
/// <param name="Parts">Parts of the first of them.</param>
public sealed record CaseGroup(ValueList<CaseBox> Cases, ValueList<Part> Parts)
{
    /// <summary>One of them, for what they share.</summary>
    public CaseBox First => Cases[0];

    /// <summary>Their codes: C1, C2 and 18 more.</summary>
    public string Codes => NameList.Of(Cases.Select(box => box.Id));

    /// <summary>The code of one of its parts without the case, which is the same in every case of the group.</summary>
    public string CodeOf(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var lead = First.Id + "-";
        return part.Id.StartsWith(lead, StringComparison.Ordinal) ? part.Id[lead.Length..] : part.Id;
    }
}

/// <summary>Puts cases that are built alike together.</summary>
public static class CaseGroups
{
    /// <summary>Groups in the order of their first case. Which faces show, and what is joined from pieces, makes no difference to assembly.</summary>
    public static IReadOnlyList<CaseGroup> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var parts = plan.Parts.ToLookup(part => part.Case, StringComparer.Ordinal);
        return [.. plan.Cases
            .GroupBy(box => Key(box, parts[box.Id]), StringComparer.Ordinal)
            .Select(group => new CaseGroup(group.ToValueList(), parts[group.First().Id].ToValueList()))];
    }

    private static string Key(CaseBox box, IEnumerable<Part> parts)
    {
        var corner = new Point3(box.X, box.Y, Length.Zero);
        return string.Create(CultureInfo.InvariantCulture, $"{box.Width} {box.Height} {box.Depth} {box.Bays}|") + string.Join('|', parts.Select(part => Key(part, corner)));
    }

    private static string Key(Part part, Point3 corner)
    {
        var at = part.Place.Origin;
        var place = $"{at.X - corner.X} {at.Y - corner.Y} {at.Z} {part.Place.AlongLength} {part.Place.AlongWidth} {part.Place.IntoThickness}";
        return $"{part.Role} {part.Hand} {part.Material} {part.Length} {part.Width} {part.Thickness} {place} {WorkOn.Key(part)}";
    }
}

/// <summary>
/// What is done to a part, told apart from what goes in, whose code differs from case to case. Stretches kept free for screws are no work.
/// </summary>
internal static class WorkOn
{
    public static string Key(Part part) => string.Join(';', part.Machining.Where(work => work is not HardwareZone).Select(work => (work with { For = "" }).ToString()));
}

/// <summary>Writes lists of codes short enough for a heading.</summary>
internal static class NameList
{
    private const int Most = 6;

    public static string Of(IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Count <= Most ? string.Join(", ", all) : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", all.Take(Most - 1))} and {all.Count - Most + 1} more");
    }
}
