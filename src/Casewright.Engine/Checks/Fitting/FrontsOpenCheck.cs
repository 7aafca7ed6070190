using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Doors next to a wall: the pull of a door hinged at the wall must clear it when the door stands open.</summary>
public sealed class FrontsOpenCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "doors-clear-of-wall",
        "Room between a wall and each door that is hinged beside it, for the pull when the door stands open at a right angle.",
        "filler + distance from the case's edge to the hinged edge ≥ what a pull stands out",
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
            if (context.Case(door.Case) is { } box && context.Run(door.Run) is { } run && Room(context, run, box, door) is { } room)
                yield return One(context, door, room);
        }
    }

    // Null where the door is not hinged next to a wall.
    private static Length? Room(CheckContext context, Run run, CaseBox box, Part door)
    {
        var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
        var (low, high) = (door.LowCorner, door.HighCorner);
        if (door.Hand == Hand.Left && run.Left.Kind == EndKind.Wall && box.X == cases.Min(c => c.X) && low.X - box.X < box.ClearBay / 2)
            return run.Left.Filler + low.X - box.X;
        if (door.Hand == Hand.Right && run.Right.Kind == EndKind.Wall && box.X + box.Width == cases.Max(c => c.X + c.Width) && box.X + box.Width - high.X < box.ClearBay / 2)
            return run.Right.Filler + box.X + box.Width - high.X;
        return null;
    }

    private Finding One(CheckContext context, Part door, Length room)
    {
        var (say, standsOut) = (context.Say, context.Limits.PullStandsOut);
        return Report(
            context,
            room <= Length.Zero ? Severity.Stop : room < standsOut ? Severity.Caution : Severity.Pass,
            door.Id,
            $"{door.Name} is hinged {say.Size(room)} from the wall; {say.Size(standsOut)} lets it open square with a pull on it.",
            new((double)room.Millimetres, (double)standsOut.Millimetres, "mm", []),
            $"Make the filler {say.AtLeast((standsOut - room).Metres)} wider, hinge the door at its other edge, or take a flat pull. Look for casings, switches and the run round the corner too.");
    }
}
