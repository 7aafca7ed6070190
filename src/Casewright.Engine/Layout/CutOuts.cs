using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Layout;

/// <summary>
/// Cut-outs for outlets and registers that stay where a case comes, with play all round: in the back; in the toe face and the rails behind it for
/// a register in the floor line; in the side that stands before the wall at the end of its run. What would cut through an upright, shelf, back or
/// nailer is left to the finding of the survey, because no cut-out helps there.
/// </summary>
internal static class CutOuts
{
    private static readonly PartRole[] s_before = [PartRole.Side, PartRole.Partition, PartRole.Top, PartRole.Bottom, PartRole.FixedShelf, PartRole.Nailer, PartRole.TrimBand];

    /// <summary>Play round an outlet or register: 3 mm (common practice, no source).</summary>
    public static Length Play { get; } = Length.FromMillimetres(3);

    /// <summary>The parts with their cut-outs.</summary>
    public static IEnumerable<Part> In(IReadOnlyList<Part> parts, Job job)
    {
        var wanted = job.Walls.SelectMany(w => (w.Survey?.Features ?? []).Where(IsCutOut).Select(f => (Wall: w, Feature: f))).ToList();
        if (wanted.Count == 0)
            return parts;
        var cases = parts.ToLookup(p => p.Case, StringComparer.Ordinal);
        return parts.Select(part =>
        {
            var cuts = wanted.Select(w => Of(part, cases[part.Case], job, w.Wall, w.Feature)).OfType<CutOut>().ToList();
            return cuts.Count == 0 ? part : part with { Machining = [.. part.Machining, .. cuts] };
        });
    }

    /// <summary>Whether something on a wall is cut out where it stays.</summary>
    public static bool IsCutOut(WallFeature feature) => !feature.Moves && feature.Kind is FeatureKind.Outlet or FeatureKind.Register;

    /// <summary>The cut-out of something on a wall in a part; null where it does not lie wholly within it or another part of the case is in the way.</summary>
    /// <param name="part">The part.</param>
    /// <param name="around">The parts of its case, or of its run for those that span cases.</param>
    /// <param name="job">The job.</param>
    /// <param name="wall">The wall with the feature.</param>
    /// <param name="feature">The feature.</param>
    public static CutOut? Of(Part part, IEnumerable<Part> around, Job job, Wall wall, WallFeature feature) => part.Role switch
    {
        PartRole.Back or PartRole.ToeFace or PartRole.BaseRail when part.Place.Wall == wall.Id && part.Place.IntoThickness == Axis.In => Facing(part, around, feature),
        PartRole.Side => InSide(part, around, job, wall, feature),
        _ => null,
    };

    /// <summary>Where something on the wall at the end of a side's run lies, seen from the side: how far out from the wall of the run. Null for other walls.</summary>
    public static (Length From, Length To)? BesideEnd(Part side, Job job, Wall wall, WallFeature feature)
    {
        if (job.Runs.FirstOrDefault(r => r.Id == side.Run) is not { } run || !StandsAtEnd(side, job, run))
            return null;
        var left = side.Hand == Hand.Left;
        if (RoomPlan.EndWall(job, side.Place.Wall, left)?.Id != wall.Id)
            return null;
        return left ? (wall.Width - feature.X - feature.Width, wall.Width - feature.X) : (feature.X, feature.X + feature.Width);
    }

    private static bool StandsAtEnd(Part side, Job job, Run run)
    {
        var width = job.Walls.First(w => w.Id == run.Wall).Width;
        var end = run.Width is { } stated ? run.Offset + stated : width;
        return side.Hand == Hand.Left
            ? run.Left.Kind == EndKind.Wall && run.Offset == Length.Zero && Low(side).X == run.Left.Filler
            : run.Right.Kind == EndKind.Wall && end == width && High(side).X == end - run.Right.Filler;
    }

    /// <summary>The rectangle of a feature behind a part that faces the room.</summary>
    private static CutOut? Facing(Part part, IEnumerable<Part> around, WallFeature feature)
    {
        var (low, high) = (Low(part), High(part));
        var (x0, x1) = (feature.X - Play, feature.X + feature.Width + Play);
        var (y0, y1) = (feature.Y - Play, feature.Y + feature.Height + Play);
        if (x0 <= low.X || x1 >= high.X || y0 <= low.Y || y1 >= high.Y)
            return null;
        if (part.Role == PartRole.Back && around.Any(p => s_before.Contains(p.Role) && Low(p).X < x1 && High(p).X > x0 && Low(p).Y < y1 && High(p).Y > y0))
            return null;
        var fromLeft = x0 - low.X;
        var (fromFoot, fromHead) = (y0 - low.Y, high.Y - y1);
        return part.Place.AlongLength == Axis.Up
            ? new(feature.Name, fromFoot, fromLeft, y1 - y0, x1 - x0)
            : new(feature.Name, fromLeft, part.Place.AlongWidth == Axis.Down ? fromHead : fromFoot, x1 - x0, y1 - y0);
    }

    /// <summary>The rectangle of a feature on the wall beside a side; the corner is taken as square, which the play covers within a degree.</summary>
    private static CutOut? InSide(Part side, IEnumerable<Part> around, Job job, Wall wall, WallFeature feature)
    {
        if (BesideEnd(side, job, wall, feature) is not var (from, to))
            return null;
        var (low, high) = (Low(side), High(side));
        var (z0, z1) = (from - Play, to + Play);
        var (y0, y1) = (feature.Y - Play, feature.Y + feature.Height + Play);
        if (z0 <= low.Z || z1 >= high.Z || y0 <= low.Y || y1 >= high.Y)
            return null;
        bool Meets(Part p) => (s_before.Contains(p.Role) || p.Role == PartRole.Back) && p.Id != side.Id
            && Low(p).X <= high.X && High(p).X >= low.X && Low(p).Z < z1 && High(p).Z > z0 && Low(p).Y < y1 && High(p).Y > y0;
        return around.Any(Meets) ? null : new(feature.Name, y0 - low.Y, high.Z - z1, y1 - y0, z1 - z0);
    }

    private static Point3 Low(Part part) => part.LowCorner;

    private static Point3 High(Part part) => part.HighCorner;
}
