using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// Concealed hinges: a cup in the door and a plate on the upright at the same height. Two up to 900 mm of door, three up to 1600, four up
/// to 2000, then five; the outer ones 100 mm from the ends, or a quarter of a low door; moved to clear fixed shelves (common practice, no
/// source; the makers of hinges publish their own tables by weight).
/// </summary>
internal static class Hinges
{
    /// <summary>What the cups and plates are for.</summary>
    public const string For = "hinge";

    /// <summary>Thinnest door that takes a cup: 12.5 mm deep with wood left before it.</summary>
    public static Length ThinnestDoor { get; } = Length.FromMillimetres(15);

    private static readonly Length s_cup = Length.FromMillimetres(35);
    private static readonly Length s_cupDepth = Length.FromMillimetres(12.5m);
    private static readonly Length s_cupFromEdge = Length.FromMillimetres(22.5m);
    private static readonly Length s_fromEnd = Length.FromMillimetres(100);
    private static readonly Length s_halfPlate = Length.FromMillimetres(26);
    private static readonly Length s_apart = Length.FromMillimetres(56);

    /// <summary>Number of hinges on a door of this height.</summary>
    public static int Count(Length height) => height switch
    {
        _ when height <= Length.FromMillimetres(900) => 2,
        _ when height <= Length.FromMillimetres(1600) => 3,
        _ when height <= Length.FromMillimetres(2000) => 4,
        _ => 5,
    };

    /// <summary>Middles of the hinges of a leaf above the highest floor point, from the bottom up.</summary>
    public static IReadOnlyList<Length> Heights(DoorLeaf leaf)
    {
        var height = leaf.Height.Result;
        var count = Count(height);
        var end = Length.Min(s_fromEnd, height / 4);
        var span = height - (end * 2);
        // On a partition the door of the right bay has its plates above those of the left one, so that their screws do not meet.
        var shift = leaf.HingedLeft && leaf.Bay > 0 && height > end * 4 ? s_apart : Length.Zero;
        return [.. Enumerable.Range(0, count).Select(i => Clear(leaf.Box, leaf.Field.FirstY + end + (span * i / (count - 1)) + (i == count - 1 ? -shift : shift)))];
    }

    /// <summary>The cups in a leaf, on its rear face.</summary>
    public static IEnumerable<Machining> Cups(DoorLeaf leaf, Part door)
    {
        var y = leaf.HingedLeft ? s_cupFromEdge : door.Width - s_cupFromEdge;
        return Heights(leaf).Select(height => new Bore(For, Face.Opposite, height - leaf.Field.FirstY, y, s_cup, s_cupDepth));
    }

    /// <summary>Where the plates of a leaf are screwed to an upright, in its coordinates.</summary>
    public static IEnumerable<Machining> Plates(DoorLeaf leaf, Face face, Length foot, Part upright) => Heights(leaf)
        .Select(height => new HardwareZone(
            $"{For} of {leaf.Id}", face, Length.Max(Length.Zero, height - foot - s_halfPlate), Length.Min(upright.Length, height - foot + s_halfPlate)));

    private static Length Clear(CaseFigures box, Length height)
    {
        var shelf = box.Fixed.FirstOrDefault(f => height + s_halfPlate > f.Upper - box.Run.T && height - s_halfPlate < f.Upper);
        return shelf is null ? height : shelf.Upper - box.Run.T - s_halfPlate;
    }
}
