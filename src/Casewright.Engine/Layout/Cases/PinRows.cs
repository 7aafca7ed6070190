using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>
/// A front and a rear row of pin holes for each opening that holds loose shelves. Where a partition carries rows on both faces, the
/// holes are made no deeper than (t − 2 mm)/2, or, where that would be too shallow to hold a pin, the rows of its right face stand
/// half a pitch further from the edges, so that no two holes meet and every shelf still lies level.
/// </summary>
internal static class PinRows
{
    /// <summary>Shallowest hole that holds a pin (7.5 mm; common practice, no source).</summary>
    public static Length Shallowest { get; } = Length.FromMillimetres(7.5m);

    /// <summary>What the rows take, as named in the machining.</summary>
    public const string For = "shelf pins";

    private static readonly Length WoodBetween = Length.FromMillimetres(2);

    /// <summary>Rows of the inside of a side.</summary>
    public static IEnumerable<PinRow> OnSide(CaseFigures box) => Rows(box, Face.Reference, box.Foot, Length.Zero, box.Run.Joinery.PinDepth);

    /// <summary>Rows of both faces of a partition.</summary>
    public static IEnumerable<PinRow> OnPartition(CaseFigures box, Length foot)
    {
        var joinery = box.Run.Joinery;
        var limit = (box.Run.T - WoodBetween) / 2;
        var shallow = joinery.PinDepth <= limit || limit >= Shallowest;
        var depth = shallow ? Length.Min(joinery.PinDepth, limit) : joinery.PinDepth;
        var shift = shallow ? Length.Zero : joinery.PinPitch / 2;
        return Rows(box, Face.Reference, foot, Length.Zero, depth).Concat(Rows(box, Face.Opposite, foot, shift, depth));
    }

    private static IEnumerable<PinRow> Rows(CaseFigures box, Face face, Length foot, Length shift, Length depth)
    {
        var joinery = box.Run.Joinery;
        var front = joinery.PinInset + shift;
        var rear = box.Run.UprightFront - box.Run.BackFront - joinery.PinInset - shift;
        foreach (var level in box.PinLevels)
        {
            foreach (var y in new[] { front + level.Setback, rear })
                yield return new(For, face, y, level.FirstHole - foot, joinery.PinPitch, level.Holes, joinery.PinDiameter, depth);
        }
    }
}
