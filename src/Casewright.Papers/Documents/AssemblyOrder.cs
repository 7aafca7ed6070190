using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Papers.Documents;

/// <summary>A step of putting a case together.</summary>
/// <param name="Number">Its number on the drawing, from 1.</param>
/// <param name="Text">What to do.</param>
/// <param name="Parts">What goes on in it; may be empty.</param>
public sealed record AssemblyStep(int Number, string Text, ValueList<Part> Parts);

/// <summary>
/// The order in which a case goes together. What is housed on both ends has to be there before what closes on it: shelves between
/// two partitions first, then partitions into bottom and top, then the shelves of the end bays, a side, a captured back while one
/// side is still off, the other side. Common practice, no source.
/// </summary>
public static class AssemblyOrder
{
    /// <summary>The steps for one case.</summary>
    public static IReadOnlyList<AssemblyStep> Of(Plan plan, CaseGroup group)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(group);
        var steps = new List<AssemblyStep>();
        foreach (var (text, parts) in IsAcrossCorner(group) ? AcrossCorner(group) : Stages(plan, group))
            steps.Add(new(steps.Count + 1, text, parts.ToValueList()));
        return steps;
    }

    /// <summary>Whether the case stands across a corner: its panels have a corner clipped for a front at 45 degrees.</summary>
    public static bool IsAcrossCorner(CaseGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return group.Parts.Any(part => part.Role == PartRole.Bottom && part.Machining.OfType<Clip>().Any());
    }

    private static IEnumerable<(string Text, List<Part> Parts)> AcrossCorner(CaseGroup group)
    {
        List<Part> With(params PartRole[] roles) => [.. group.Parts.Where(part => roles.Contains(part.Role))];
        string Codes(IEnumerable<Part> parts) => string.Join(", ", parts.Select(group.CodeOf));
        var (sides, panels) = (With(PartRole.Side), With(PartRole.Bottom, PartRole.Top, PartRole.FixedShelf));
        var (backs, cleats, doors) = (With(PartRole.Back), With(PartRole.Cleat), With(PartRole.Door));
        yield return ($"Clip the panels {Codes(panels)}: lay them on one another and see that all fronts lie in one line, shelves behind a door further in. Dry, without glue.", panels);
        yield return ($"Panels into the sides {Codes(sides)}, front arrises flush with the clipped edges; clamp each side back to the far corner of the panels.", sides);
        if (backs.Count > 0)
            yield return ($"Backs {Codes(backs)} planted on the rear edges, the first along its wall, the second against it; they make the corner square: test it on the bottom before they are pinned.", backs);
        if (cleats.Count > 0)
            yield return ($"Cleats {Codes(cleats)} glued and screwed to the backs, tight under their shelves.", cleats);
        if (doors.Count > 0)
            yield return ($"The door is hung once the case stands plumb, on hinges for a front at 45 degrees: {Codes(doors)}.", doors);
    }

    private static IEnumerable<(string Text, List<Part> Parts)> Stages(Plan plan, CaseGroup group)
    {
        List<Part> With(params PartRole[] roles) => [.. group.Parts.Where(part => roles.Contains(part.Role))];
        string Codes(IEnumerable<Part> parts) => string.Join(", ", parts.Select(group.CodeOf));
        var (partitions, shelves) = (With(PartRole.Partition), With(PartRole.FixedShelf));
        var (left, right) = (Sides(group, Hand.Left), Sides(group, Hand.Right));
        var (backs, over) = (With(PartRole.Back), With(PartRole.Top).Where(top => IsOverSides(group, top)).ToList());
        var ends = With(PartRole.Bottom, PartRole.Top).Except(over).ToList();
        var captured = plan.Job.Runs.FirstOrDefault(run => run.Id == group.First.Run)?.Back.Kind == BackKind.Captured && backs.Count > 0;

        yield return ("Dry, without glue: every dado closes, marks meet, nothing rocks. Then take it apart and spread what closes within the glue's open time, "
            + plan.Job.Shop.Glue.OpenMinutes.ToString("0.#", CultureInfo.InvariantCulture) + " min.", []);
        var inner = shelves.Where(shelf => partitions.Count(p => Touches(p, shelf)) == 2).ToList();
        if (inner.Count > 0)
            yield return ($"Shelves of the inner bays between their partitions: {Codes(inner)}.", [.. inner, .. partitions]);
        if (partitions.Count > 0)
            yield return ($"{Codes(partitions)} into {Codes(ends)}, front edges flush.", inner.Count > 0 ? ends : [.. partitions, .. ends]);
        var outer = shelves.Except(inner).ToList();
        if (partitions.Count > 0 && outer.Count > 0)
            yield return ($"Fixed shelves of the end bays into the partitions: {Codes(outer)}.", outer);
        var between = partitions.Count > 0 ? [] : (List<Part>)[.. ends, .. outer];
        yield return (between.Count > 0 ? $"{Codes(between)} into the left side {Codes(left)}, front edges flush." : $"Left side {Codes(left)} onto their ends.", [.. between, .. left]);
        if (captured)
            yield return ($"Back {Codes(backs)} into its grooves, dry, {(over.Count > 0 ? "before the top goes on" : "while the right side is off")}.", backs);
        yield return ($"Right side {Codes(right)}; clamp across front and rear at every shelf, from the middle out.", right);
        var raked = group.First.Rake is not null;
        if (over.Count > 0)
        {
            yield return (raked
                ? $"Raked top {Codes(over)} onto the bevelled uprights, ends flush outside; screw it down into them and into the shelves that end under it."
                : $"Top {Codes(over)} onto the sides.", over);
        }

        yield return ($"Measure both diagonals; rack the case until they are {(raked ? "as stated" : "alike")}, then leave the clamps on.", []);
        foreach (var later in Later(group, captured ? [] : backs, Codes))
            yield return later;
    }

    private static IEnumerable<(string Text, List<Part> Parts)> Later(CaseGroup group, List<Part> backs, Func<IEnumerable<Part>, string> codes)
    {
        List<Part> With(params PartRole[] roles) => [.. group.Parts.Where(part => roles.Contains(part.Role))];
        if (With(PartRole.Nailer) is { Count: > 0 } nailers)
            yield return ($"Nailers glued and screwed: {codes(nailers)}. They carry the case on the wall.", nailers);
        if (backs.Count > 0)
            yield return ($"Back {codes(backs)} glued and pinned all round; it keeps the case square.", backs);
        if (With(PartRole.TrimBand) is { Count: > 0 } bands)
            yield return ($"Trim band over the joint of the backs: {codes(bands)}.", bands);
        if (With(PartRole.ToeFace) is { Count: > 0 } toes)
            yield return ($"Toe face {codes(toes)}, scribed to the floor when the case stands.", toes);
        if (With(PartRole.SlidePacker) is { Count: > 0 } packers)
            yield return ($"Slide packers {codes(packers)} planed, glued and screwed to the uprights, flush with the opening of the frame.", packers);
        if (With(PartRole.Stile, PartRole.Rail) is { Count: > 0 } frame)
            yield return ($"Face frame, glued up first and square by itself: {codes(frame)}. Then onto the case.", frame);
        if (group.Parts.Where(part => part.Role == PartRole.Nosing && !OnLooseShelf(group, part)).ToList() is { Count: > 0 } nosings)
            yield return ($"Nosings, where they are not on yet: {codes(nosings)}.", nosings);
        if (With(PartRole.Door) is { Count: > 0 } doors)
            yield return ($"Doors are hung once the case stands plumb: {codes(doors)}.", []);
        if (With(PartRole.DrawerFront) is { Count: > 0 } drawers)
            yield return ($"Drawers are built by themselves, square by their diagonals; fronts go on last: {codes(drawers)}.", []);
        if (With(PartRole.AdjustableShelf) is { Count: > 0 } loose)
            yield return ($"Loose shelves stay out until the case stands: {codes(loose)}.", []);
    }

    /// <summary>Whether the nosing belongs to a loose shelf, which stays out.</summary>
    internal static bool OnLooseShelf(CaseGroup group, Part nosing) =>
        group.Parts.Any(part => part.Role == PartRole.AdjustableShelf && part.Nosing == nosing.Id);

    private static List<Part> Sides(CaseGroup group, Hand hand) => [.. group.Parts.Where(part => part.Role == PartRole.Side && part.Hand == hand)];

    private static bool IsOverSides(CaseGroup group, Part top)
    {
        if (top.Place.Tilt is not null)
            return true;
        var sides = group.Parts.Where(part => part.Role == PartRole.Side).ToList();
        return sides.Count > 0 && sides.All(side => PartBox.High(side).Y <= PartBox.Low(top).Y);
    }

    private static bool Touches(Part partition, Part shelf) =>
        PartBox.Low(partition).X <= PartBox.High(shelf).X && PartBox.High(partition).X >= PartBox.Low(shelf).X;
}

/// <summary>The corners of the box that a part fills.</summary>
internal static class PartBox
{
    public static Point3 Low(Part part) => part.LowCorner;

    public static Point3 High(Part part) => part.HighCorner;

    public static double Mm(Length length) => (double)length.Millimetres;
}
