using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// Pulls: at the free edge of a door, near the top of a low one, near the bottom of a high one, at 1000 mm where the door passes that; in
/// the middle of a drawer front, two on one wider than 800 mm (common practice, no source).
/// </summary>
internal static class Pulls
{
    /// <summary>What the first hole of a pull is for: one to a pull.</summary>
    public const string For = "pull";

    private const string Second = "pull, second hole";

    private static readonly Length s_diameter = Length.FromMillimetres(5);
    private static readonly Length s_fromEnd = Length.FromMillimetres(60);
    private static readonly Length s_hand = Length.FromMillimetres(1000);
    private static readonly Length s_widest = Length.FromMillimetres(800);

    /// <summary>The holes in a door.</summary>
    public static IEnumerable<Machining> OnDoor(DoorLeaf leaf, Part door)
    {
        var gaps = leaf.Box.Run.Gaps;
        var y = leaf.HingedLeft ? door.Width - gaps.PullInset : gaps.PullInset;
        var foot = leaf.Field.FirstY;
        var end = Length.Min(s_fromEnd, door.Length / 4);
        var spacing = Length.Min(gaps.PullSpacing, door.Length - (end * 2));
        var lowest = foot > s_hand ? end : s_hand - foot - (spacing / 2);
        return Holes(Length.Max(end, Length.Min(lowest, door.Length - end - spacing)), y, spacing, door);
    }

    /// <summary>The holes in a drawer front.</summary>
    public static IEnumerable<Machining> OnDrawer(RunFigures run, Part front)
    {
        var pulls = front.Length > s_widest ? 2 : 1;
        for (var i = 0; i < pulls; i++)
        {
            var middle = front.Length * ((2 * i) + 1) / (2 * pulls);
            foreach (var hole in Holes(middle - (run.Gaps.PullSpacing / 2), front.Width / 2, run.Gaps.PullSpacing, front))
                yield return hole;
        }
    }

    private static IEnumerable<Machining> Holes(Length x, Length y, Length spacing, Part part)
    {
        yield return new Bore(For, Face.Reference, x, y, s_diameter, part.Thickness);
        if (spacing > Length.Zero)
            yield return new Bore(Second, Face.Reference, x + spacing, y, s_diameter, part.Thickness);
    }
}
