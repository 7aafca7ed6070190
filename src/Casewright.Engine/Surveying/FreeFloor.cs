using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>
/// Floor that must stay free: the quarter circle that the leaf of a door sweeps, and what was asked to be kept clear in front of something on a
/// wall. A run that stands there, on whatever wall that corners tie to it, is a problem of the job. Seen from above, in metres.
/// </summary>
internal static class FreeFloor
{
    private const double Touch = 0.0005;
    private const int Sectors = 45;

    /// <summary>Notes every run whose cases stand where the floor must stay free.</summary>
    public static void Check(Job job, IEnumerable<CaseBox> cases, ProblemList problems)
    {
        var poses = RoomPlan.Of(job);
        var boxes = cases.ToList();
        for (var w = 0; w < job.Walls.Count; w++)
        {
            var wall = job.Walls[w];
            var features = wall.Survey?.Features ?? [];
            for (var f = 0; f < features.Count; f++)
            {
                var path = string.Create(CultureInfo.InvariantCulture, $"walls[{w}].survey.features[{f}]");
                foreach (var area in Areas(wall, features[f]))
                    CheckArea(job, boxes, poses, area, path, problems);
            }
        }
    }

    private static void CheckArea(Job job, List<CaseBox> boxes, IReadOnlyDictionary<string, WallPose> poses, Area area, string path, ProblemList problems)
    {
        var tied = RoomPlan.TiedTo(job, area.Wall.Id);
        (double X, double Z)[] free = [.. area.Outline.Select(p => poses[area.Wall.Id].At(p.Along, p.Out))];
        var feature = area.Feature;
        foreach (var box in boxes.Where(b => tied.Contains(b.Wall) && b.Y < feature.Y + feature.Height && b.Y + b.Height > feature.Y))
        {
            if (!Meet(free, Outline(box, poses[box.Wall])))
                continue;
            var run = job.Runs.Select((r, i) => (r, i)).First(r => r.r.Id == box.Run);
            problems.Add(string.Create(CultureInfo.InvariantCulture, $"runs[{run.i}]"), $"Run {run.r.Name} stands {area.Where}{feature.Name} ({path}).", $"case {box.Id}", area.Accepted(problems));
        }
    }

    /// <summary>A stretch of floor that must stay free, along the wall and out from it.</summary>
    private sealed record Area(Wall Wall, WallFeature Feature, bool Swing, (double Along, double Out)[] Outline)
    {
        public string Where => Swing ? "in the swing of " : "in the space to be kept clear before ";

        public string Accepted(ProblemList problems) => Swing
            ? $"cases clear of its leaf, {problems.Say(Feature.Width)} from the hinges; or a door that opens the other way"
            : $"cases clear of {problems.Say(Feature.KeepClear)} in front of the wall there";
    }

    private static IEnumerable<Area> Areas(Wall wall, WallFeature feature)
    {
        if (feature.Moves)
            yield break;
        var (left, width) = (feature.X.Metres, feature.Width.Metres);
        if (feature is { Kind: FeatureKind.Door, Swing: DoorSwing.InHungLeft or DoorSwing.InHungRight })
        {
            var (hinge, way) = feature.Swing == DoorSwing.InHungLeft ? (left, width) : (left + width, -width);
            var arc = Enumerable.Range(0, Sectors + 1).Select(i => Math.SinCos(Math.PI / 2 * i / Sectors)).Select(a => (hinge + (way * a.Cos), width * a.Sin));
            yield return new(wall, feature, Swing: true, [(hinge, 0), .. arc]);
        }

        if (feature.KeepClear.Metres is > 0 and var clear)
            yield return new(wall, feature, Swing: false, [(left, 0), (left + width, 0), (left + width, clear), (left, clear)]);
    }

    private static (double X, double Z)[] Outline(CaseBox box, WallPose pose)
    {
        var (from, to, depth) = (box.X.Metres, (box.X + box.Width).Metres, box.Depth.Metres);
        return [pose.At(from, 0), pose.At(to, 0), pose.At(to, depth), pose.At(from, depth)];
    }

    /// <summary>Whether two convex outlines reach into each other: no edge of either has them on its two sides.</summary>
    private static bool Meet((double X, double Z)[] a, (double X, double Z)[] b) => !Parted(a, b) && !Parted(b, a);

    private static bool Parted((double X, double Z)[] edges, (double X, double Z)[] other)
    {
        for (var i = 0; i < edges.Length; i++)
        {
            var (p, q) = (edges[i], edges[(i + 1) % edges.Length]);
            var length = Math.Sqrt(((q.X - p.X) * (q.X - p.X)) + ((q.Z - p.Z) * (q.Z - p.Z)));
            if (length < Touch)
                continue;
            double Off((double X, double Z) r) => (((q.X - p.X) * (r.Z - p.Z)) - ((q.Z - p.Z) * (r.X - p.X))) / length;
            var (mine, theirs) = (edges.Select(Off).ToArray(), other.Select(Off).ToArray());
            if (mine.Max() <= theirs.Min() + Touch || theirs.Max() <= mine.Min() + Touch)
                return true;
        }

        return false;
    }
}
