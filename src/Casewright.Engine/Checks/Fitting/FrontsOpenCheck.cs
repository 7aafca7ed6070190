using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Doors at the end of a run: the pull of a door hinged there must clear wall, casing and the run round the corner when the door stands open.</summary>
public sealed class FrontsOpenCheck : Check
{
    // A casing stands out as far as this where the survey gives only its width: 20 mm (common practice, no source).
    private static readonly Length UsualCasing = Length.FromMillimetres(20);

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "doors-clear-of-wall",
        "Room between each door that is hinged at the end of its run and the wall, the casing on it or the run round the corner, for the pull when the door stands open at a right angle.",
        "filler + distance from the case's edge to the hinged edge − what stands out there ≥ what a pull stands out",
        "Arithmetic; fronts against other parts are proven by the independent verifier",
        Standing.CommonPractice)
    {
        Limits = [new("a pull stands out", l => (double)l.PullStandsOut.Millimetres, 40, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var door in context.PartsWith(PartRole.Door))
        {
            if (context.Case(door.Case) is { } box && context.Run(door.Run) is { } run && Beside(context, run, box, door) is var (room, what))
                yield return One(context, door, room, what);
        }
    }

    // Null where the door is not hinged at an end of its run that something stands beside.
    private static (Length Room, string What)? Beside(CheckContext context, Run run, CaseBox box, Part door)
    {
        var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
        var (low, high) = (door.LowCorner, door.HighCorner);
        var left = door.Hand == Hand.Left;
        var atEnd = left ? box.X == cases.Min(c => c.X) : door.Hand == Hand.Right && box.X + box.Width == cases.Max(c => c.X + c.Width);
        if (!atEnd)
            return null;
        if (RunFront(context, run, left) is var (front, other))
            return (left ? low.X - front : front - high.X, other.Name);
        var (end, edge) = left ? (run.Left, low.X - box.X) : (run.Right, box.X + box.Width - high.X);
        if (end.Kind != EndKind.Wall || edge >= box.ClearBay / 2)
            return null;
        var (feature, outwards) = StandsOut(context, run, left, low, high);
        return (end.Filler + edge - outwards, feature ?? "the wall");
    }

    // Where the front of the run round the corner stands along this run's front; fronts overlaid on it counted.
    private static (Length At, Run Other)? RunFront(CheckContext context, Run run, bool left)
    {
        var (job, wall) = (context.Job, context.Job.Walls.FirstOrDefault(w => w.Id == run.Wall));
        foreach (var other in job.Runs.Where(r => r.Id != run.Id && wall is not null))
        {
            var own = left ? run.Left : run.Right;
            var theirs = left ? other.Right : other.Left;
            var corner = own is { Kind: EndKind.Corner, Corner: { } c } && c.Run == other.Id ? c
                : theirs is { Kind: EndKind.Corner, Corner: { } t } && t.Run == run.Id ? t
                : null;
            if (corner is null)
                continue;
            var survey = wall!.Survey;
            var angle = corner.Angle ?? (left ? survey?.LeftEnd : survey?.RightEnd)?.Corner?.Angle ?? 90;
            var offset = (left ? survey?.Opening?.LeftIn : survey?.Opening?.RightIn) ?? Length.Zero;
            var at = CornerCut.Of(RunReach.Of(job, other, blind: false), RunReach.Deepest(run), angle).AtFront - offset;
            return (left ? at : wall.Width - at, other);
        }

        return null;
    }

    // What stands out farthest from the wall at the end of the run, where the open door and its pull come by.
    private static (string? Name, Length Out) StandsOut(CheckContext context, Run run, bool left, Point3 low, Point3 high)
    {
        if (context.Job.Walls.FirstOrDefault(w => w.Id == run.Wall) is not { } wall || RoomPlan.EndWall(context.Job, wall.Id, left) is not { } beside)
            return (null, Length.Zero);
        var (from, to) = (low.Z, high.Z + (high.X - low.X));
        Length Near(WallFeature f) => left ? beside.Width - f.OuterRight : f.OuterLeft;
        Length Far(WallFeature f) => left ? beside.Width - f.OuterLeft : f.OuterRight;
        Length Out(WallFeature f) => Length.Max(Length.Max(f.Depth, f.Stool), f.Casing > Length.Zero ? UsualCasing : Length.Zero);
        var met = (beside.Survey?.Features ?? [])
            .Where(f => !f.Moves && Near(f) < to && Far(f) > from && f.OuterBottom < high.Y && f.OuterTop > low.Y)
            .OrderByDescending(Out).FirstOrDefault();
        return met is null ? (null, Length.Zero) : (met.Name, Out(met));
    }

    private Finding One(CheckContext context, Part door, Length room, string what)
    {
        var (say, standsOut) = (context.Say, context.Limits.PullStandsOut);
        return Report(
            context,
            room <= Length.Zero ? Severity.Stop : room < standsOut ? Severity.Caution : Severity.Pass,
            door.Id,
            $"{door.Name} is hinged {say.Size(room)} from {what}; {say.Size(standsOut)} lets it open square with a pull on it.",
            new((double)room.Millimetres, (double)standsOut.Millimetres, "mm", []),
            $"Make the filler {say.AtLeast((standsOut - room).Metres)} wider, hinge the door at its other edge, or take a flat pull.");
    }
}
