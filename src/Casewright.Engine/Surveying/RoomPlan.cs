using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Site;

namespace Casewright.Engine.Surveying;

/// <summary>Where a wall stands in the room, seen from above; metres.</summary>
/// <param name="X">Its left end, along the first wall.</param>
/// <param name="Z">Its left end, out from the first wall.</param>
/// <param name="AlongX">Direction along it, part in x.</param>
/// <param name="AlongZ">Direction along it, part in z.</param>
public sealed record WallPose(double X, double Z, double AlongX, double AlongZ)
{
    /// <summary>The point of the room at a distance along the wall and out from it; metres.</summary>
    public (double X, double Z) At(double along, double @out) => (X + (along * AlongX) - (@out * AlongZ), Z + (along * AlongZ) + (@out * AlongX));
}

/// <summary>
/// Places walls that meet in corners at one another, beginning with the first of the job: where casework meets, or where the survey says so. With an inner angle θ the next wall
/// to the right runs in the direction (−cos θ, sin θ) of this one. Walls that nothing ties to the first keep an origin of their own.
/// </summary>
public static class RoomPlan
{
    /// <summary>The pose of every wall by its id.</summary>
    public static IReadOnlyDictionary<string, WallPose> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var poses = new Dictionary<string, WallPose>(StringComparer.Ordinal);
        var corners = AllCornersOf(job);
        foreach (var wall in job.Walls)
        {
            if (poses.TryAdd(wall.Id, new(0, 0, 1, 0)))
                Spread(job, corners, poses, wall.Id);
        }

        return poses;
    }

    /// <summary>Corners of the room with casework: the wall on the left, the wall on the right of it, the angle between them in degrees.</summary>
    public static IEnumerable<(string Left, string Right, double Angle)> CornersOf(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var walls = job.Walls.ToDictionary(w => w.Id, StringComparer.Ordinal);
        var seen = new HashSet<(string, string)>();
        foreach (var run in job.Runs)
        {
            foreach (var (end, atLeft) in new[] { (run.Left, true), (run.Right, false) })
            {
                if (end is not { Kind: EndKind.Corner, Corner: { } corner } || job.Runs.FirstOrDefault(r => r.Id == corner.Run) is not { } other)
                    continue;
                var pair = atLeft ? (other.Wall, run.Wall) : (run.Wall, other.Wall);
                var survey = walls[run.Wall].Survey;
                if (seen.Add(pair))
                    yield return (pair.Item1, pair.Item2, corner.Angle ?? (atLeft ? survey?.LeftEnd : survey?.RightEnd)?.Corner?.Angle ?? 90);
            }
        }
    }

    /// <summary>The walls that corners tie to one, itself included.</summary>
    public static IReadOnlySet<string> TiedTo(Job job, string wall)
    {
        var corners = AllCornersOf(job);
        var tied = new HashSet<string>(StringComparer.Ordinal) { wall };
        for (var before = 0; before < tied.Count;)
        {
            before = tied.Count;
            foreach (var (left, right, _) in corners.Where(c => tied.Contains(c.Left) || tied.Contains(c.Right)))
                tied.UnionWith([left, right]);
        }

        return tied;
    }

    /// <summary>The wall that meets one at an end of it; null when nobody said.</summary>
    public static Wall? EndWall(Job job, string wall, bool atLeft)
    {
        ArgumentNullException.ThrowIfNull(job);
        var id = AllCornersOf(job).Where(c => (atLeft ? c.Right : c.Left) == wall).Select(c => atLeft ? c.Left : c.Right).FirstOrDefault();
        return job.Walls.FirstOrDefault(w => w.Id == id);
    }

    private static List<(string Left, string Right, double Angle)> AllCornersOf(Job job)
    {
        var corners = CornersOf(job).ToList();
        foreach (var wall in job.Walls)
        {
            foreach (var (end, atLeft) in new[] { (wall.Survey?.LeftEnd, true), (wall.Survey?.RightEnd, false) })
            {
                if (end?.Wall is not { } other || job.Walls.All(w => w.Id != other))
                    continue;
                var (left, right) = atLeft ? (other, wall.Id) : (wall.Id, other);
                if (!corners.Exists(c => c.Left == left && c.Right == right))
                    corners.Add((left, right, end.Corner?.Angle ?? 90));
            }
        }

        return corners;
    }

    private static void Spread(Job job, List<(string Left, string Right, double Angle)> corners, Dictionary<string, WallPose> poses, string from)
    {
        var width = job.Walls.First(w => w.Id == from).Width.Metres;
        var pose = poses[from];
        foreach (var (left, right, angle) in corners)
        {
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(angle));
            if (left == from && !poses.ContainsKey(right))
            {
                var (x, z) = Turn(pose, -cos, sin);
                poses[right] = new(pose.X + (width * pose.AlongX), pose.Z + (width * pose.AlongZ), x, z);
                Spread(job, corners, poses, right);
            }
            else if (right == from && !poses.ContainsKey(left))
            {
                var (x, z) = Turn(pose, -cos, -sin);
                var length = job.Walls.First(w => w.Id == left).Width.Metres;
                poses[left] = new(pose.X - (length * x), pose.Z - (length * z), x, z);
                Spread(job, corners, poses, left);
            }
        }
    }

    private static (double X, double Z) Turn(WallPose pose, double along, double across) =>
        ((pose.AlongX * along) - (pose.AlongZ * across), (pose.AlongZ * along) + (pose.AlongX * across));
}
