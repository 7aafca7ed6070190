using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>No door, drawer front or drawer box reaches into another part of its wall, except into parts of its own drawer.</summary>
internal sealed class FrontsMoveFreely : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        foreach (var wall in evidence.Casework.Parts.GroupBy(p => p.Place.Wall, StringComparer.Ordinal))
        {
            var parts = wall.Select(p => (Part: p, Low: p.LowCorner, High: p.HighCorner)).ToList();
            foreach (var moving in parts.Where(p => Moves(p.Part)))
            {
                foreach (var other in parts.Where(o => o.Part != moving.Part && !SameDrawer(o.Part, moving.Part) && Meet(moving.Low, moving.High, o.Low, o.High) && MeetInPlan(o.Part, moving.Part)))
                    yield return new($"parts[{moving.Part.Id}]", $"{moving.Part.Name} cannot move: {other.Part.Name} is in its way.", moving.Part.Id, $"clear of {other.Part.Id}");
            }
        }
    }

    private static bool Moves(Part part) => part.Role is PartRole.Door || IsDrawer(part);

    private static bool IsDrawer(Part part) => part.Role is PartRole.DrawerFront or PartRole.DrawerSide or PartRole.DrawerEnd or PartRole.DrawerBottom;

    /// <summary>Parts of one drawer have its id and a letter.</summary>
    private static bool SameDrawer(Part a, Part b) => IsDrawer(a) && IsDrawer(b) && a.Id[..^1] == b.Id[..^1];

    private static bool Meet(Point3 low, Point3 high, Point3 otherLow, Point3 otherHigh) =>
        Overlap(low.X, high.X, otherLow.X, otherHigh.X) && Overlap(low.Y, high.Y, otherLow.Y, otherHigh.Y) && Overlap(low.Z, high.Z, otherLow.Z, otherHigh.Z);

    /// <summary>
    /// Parts at 45 degrees and panels with clipped corners, seen from above: their outlines run along the wall, out from it or at 45 degrees, so two of them are
    /// apart if they are along one of those four directions. Within a hundredth of a millimetre they only touch.
    /// </summary>
    private static bool MeetInPlan(Part a, Part b)
    {
        if (a.Place.Eighths == 0 && b.Place.Eighths == 0)
            return true;
        var (first, second) = (PartSolid.Of(a).In(a.Place).ToList(), PartSolid.Of(b).In(b.Place).ToList());
        Func<Point3, long>[] directions =
            [p => p.X.Nanometres, p => p.Z.Nanometres, p => p.X.Nanometres + p.Z.Nanometres, p => p.X.Nanometres - p.Z.Nanometres];
        const long Touch = 10_000;
        return Array.TrueForAll(directions, d => first.Min(d) + Touch < second.Max(d) && second.Min(d) + Touch < first.Max(d));
    }

    private static bool Overlap(Length low, Length high, Length otherLow, Length otherHigh) => low < otherHigh && otherLow < high;
}
