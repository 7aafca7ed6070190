using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Surveying;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Doors of the room: how far their leaves open beside the casework, on their own wall and round the corner. A case in the leaf's own swing is a problem of the layout before this is asked.</summary>
public sealed class RoomDoorsCheck : Check
{
    private const double Square = 90;

    // A hundredth of a degree: no hinge is hung nearer.
    private const double Hair = 0.01;

    // A handle: 60 mm from the free edge, and as far out (common practice, no source).
    private const double Handle = 0.060;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "room-doors-open",
        "How far each surveyed door into the room opens before its leaf or handle meets a case.",
        "opening angle ≥ 90°; beside a case g from the hinge and d deep 180° − arctan(d/g); handle 60 mm from the edge, 60 mm out",
        "Plane geometry, corners taken as square; the handle is common practice",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var wall in context.Job.Walls)
        {
            foreach (var door in wall.Survey?.Features.Where(f => f.Kind == FeatureKind.Door && !f.Moves) ?? [])
                yield return Opens(context, wall, door);
        }
    }

    /// <summary>Angle in degrees to which a leaf opens beside the cases near it, and the case that stops it; 180 without one.</summary>
    internal static (double Angle, CaseBox? Case) Opening(CheckContext context, Wall wall, WallFeature door, bool hungLeft)
    {
        var (angle, stopped) = (180.0, (CaseBox?)null);
        foreach (var (box, from, to, near, far, _) in Plan(context, wall))
        {
            if (!Level(box, door))
                continue;
            var hinge = hungLeft ? door.X : door.X + door.Width;
            var (a, b) = hungLeft ? (from - hinge, to - hinge) : (hinge - to, hinge - from);
            var each = LeafSwing.Angle(door.Width.Metres, Handle, Handle, new(a.Metres, b.Metres, near.Metres, far.Metres));
            if (each < angle)
                (angle, stopped) = (each, box);
        }

        return (angle, stopped);
    }

    private Finding Opens(CheckContext context, Wall wall, WallFeature door)
    {
        if (door.Swing is not { } swing)
            return NotChecked(context, wall.Id, $"nobody has said how {door.Name} opens.", "Give its swing: into the room hung left or right, out of it, or none.");
        if (swing is DoorSwing.Out or DoorSwing.None)
            return Rule(context, Severity.Pass, wall.Id, $"The leaf of {door.Name} does not turn into the room.");
        var hungLeft = swing == DoorSwing.InHungLeft;
        var (angle, box) = Opening(context, wall, door, hungLeft);
        var passes = angle >= Square - Hair;
        return Report(
            context,
            passes ? Severity.Pass : Severity.Stop,
            wall.Id,
            $"{Say.Sentence([door.Name])[..^1]} opens to {Say.Number(angle, 0)}°{(box is null ? "" : $" before it meets case {box.Id}")}; 90° is needed to walk and to carry through.",
            new(angle, Square, "°", [new("leaf", Say.Number(door.Width.Metres * 1000), "mm")]),
            passes ? "" : Advice(context, wall, door, hungLeft, box!));
    }

    private static string Advice(CheckContext context, Wall wall, WallFeature door, bool hungLeft, CaseBox box)
    {
        var say = context.Say;
        var ways = new List<string>();
        if (box.Wall != wall.Id)
        {
            var room = hungLeft ? door.X : wall.Width - door.X - door.Width;
            var least = hungLeft == Plan(context, wall).First(p => p.Box.Id == box.Id).AtLeft ? Handle : 0;
            if (room.Metres - least > 0 && box.Depth.Metres > room.Metres - least)
                ways.Add($"make that run {say.AtLeast(box.Depth.Metres - (room.Metres - least))} shallower");
            ways.Add($"let it stop {say.AtLeast(door.Width.Metres)} from the wall of the door");
        }

        if (Opening(context, wall, door, !hungLeft).Angle >= Square - Hair)
            ways.Add($"hang the door on its {(hungLeft ? "right" : "left")}");
        ways.Add("let it open out of the room, where codes and neighbours allow");
        return Say.Sentence(ways);
    }

    private static bool Level(CaseBox box, WallFeature feature) => box.Y < feature.OuterTop && box.Y + box.Height > feature.OuterBottom;

    // Every case of this wall and of those that meet it, as it stands before this wall: along it, and out from it.
    private static IEnumerable<(CaseBox Box, Length From, Length To, Length Near, Length Far, bool AtLeft)> Plan(CheckContext context, Wall wall)
    {
        foreach (var box in context.Cases.Where(c => c.Wall == wall.Id))
            yield return (box, box.X, box.X + box.Width, Length.Zero, box.Depth, false);
        foreach (var left in new[] { true, false })
        {
            if (RoomPlan.EndWall(context.Job, wall.Id, left) is not { } other)
                continue;
            foreach (var box in context.Cases.Where(c => c.Wall == other.Id))
            {
                // Out from this wall: from the other wall's right end where that meets this one's left, else from its left end.
                var (near, far) = left ? (other.Width - box.X - box.Width, other.Width - box.X) : (box.X, box.X + box.Width);
                yield return (box, left ? Length.Zero : wall.Width - box.Depth, left ? box.Depth : wall.Width, near, far, left);
            }
        }
    }
}
