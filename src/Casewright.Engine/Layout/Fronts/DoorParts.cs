using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// Doors with their hinges and pulls. Overlaid: height H − 2·gap, width (W − 2·gap − gaps between)/n; inset: opening − 2·gap, a pair
/// (opening − 3·gap)/2. All are rounded down, so that they never bind.
/// </summary>
internal static class DoorParts
{
    /// <summary>The leaves of a case from the lowest front up, each from left to right.</summary>
    public static IEnumerable<Part> Of(CaseFigures box) =>
        from span in box.Fronts
        where !span.IsDrawers
        from bay in Enumerable.Range(0, box.Bays)
        from leaf in Enumerable.Range(0, span.Design.Leaves)
        select Leaf(new DoorLeaf(box, span, bay, leaf));

    /// <summary>The leaves that hang on an upright: on its right face those of the bay to the right.</summary>
    public static IEnumerable<DoorLeaf> HungOn(CaseFigures box, int bay, bool leftEdge) =>
        from span in box.Fronts
        where !span.IsDrawers && bay >= 0 && bay < box.Bays
        from leaf in Enumerable.Range(0, span.Design.Leaves)
        let door = new DoorLeaf(box, span, bay, leaf)
        where door.HingedLeft == leftEdge
        select door;

    private static Part Leaf(DoorLeaf leaf)
    {
        var (box, span) = (leaf.Box, leaf.Span);
        var size = new PartSize(leaf.Height, leaf.Width, PartMaker.Thickness(span.Material));
        var place = Pose.UprightFacingRoom(box.Run.Wall.Id, leaf.X, leaf.Field.FirstY, span.FrontZ(box.Run));
        var part = PartMaker.InCase(box, leaf.Id, leaf.Name, PartRole.Door, span.Material, size, place, FaceView.Front);
        return part with
        {
            Hand = leaf.HingedLeft ? Hand.Left : Hand.Right,
            Machining = [.. Hinges.Cups(leaf, part), .. Pulls.OnDoor(leaf, part)],
        };
    }
}

/// <summary>One leaf of a door.</summary>
/// <param name="Box">Its case.</param>
/// <param name="Span">The front it is part of.</param>
/// <param name="Bay">Its bay, from 0.</param>
/// <param name="Leaf">Its place in the bay, from 0 at the left.</param>
internal sealed record DoorLeaf(CaseFigures Box, FrontSpan Span, int Bay, int Leaf)
{
    /// <summary>The field that it shares.</summary>
    public FrontField Field { get; } = new(Box, Span, Bay);

    /// <summary>C3-D1, C3-D1.2 in the second bay, with L and R for the leaves of a pair.</summary>
    public string Id => PartIds.InBay(Box.Id, "D", Span.Number, Bay, Box.Bays) + (Span.Design.Leaves == 1 ? "" : Leaf == 0 ? "L" : "R");

    /// <summary>Name in words.</summary>
    public string Name
    {
        get
        {
            var leaf = Span.Design.Leaves == 1 ? "" : Leaf == 0 ? "left " : "right ";
            var bay = Box.Bays == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" bay {Bay + 1}");
            return string.Create(CultureInfo.InvariantCulture, $"{leaf}door {Span.Number}{bay}, case {Box.Number}");
        }
    }

    /// <summary>Whether its hinges are on its left edge.</summary>
    public bool HingedLeft => Span.Design.Leaves == 2 ? Leaf == 0 : Span.Design.Hinged == HingeSide.Left;

    /// <summary>Finished width, rounded down.</summary>
    public Derivation Width => Field.Across(Span.Design.Leaves).ShareDown(Dimensions.Width, Span.Design.Leaves, Box.Run.Step);

    /// <summary>Finished height, rounded down.</summary>
    public Derivation Height => Field.Up(1).Down(Dimensions.Length, Box.Run.Step);

    /// <summary>Left edge.</summary>
    public Length X => Field.FirstX + ((Width.Exact + Field.Gap.Value) * Leaf);
}
