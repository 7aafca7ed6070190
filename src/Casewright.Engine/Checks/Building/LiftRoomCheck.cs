using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>Room to lift each case onto its base or onto the case below.</summary>
public sealed class LiftRoomCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "lift-room",
        "Room between the top of each case and the ceiling, to lift it onto what it stands on.",
        "ceiling − (y + h) ≥ lift room",
        "Common practice: 12 to 20 mm",
        Standing.CommonPractice)
    {
        Limits = [new("lift room", l => (double)l.LiftRoom.Millimetres, 12, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var box in context.BuiltCases)
        {
            if (context.Job.Walls.FirstOrDefault(w => w.Id == box.Wall) is { } wall)
                yield return One(context, box, new[] { box.X, box.X + box.Width }.Min(x => wall.CeilingAt(x) - box.Y - box.HeightAt(x)));
            else
                yield return NotChecked(context, box.Id, "the ceiling height at this case is not known.", "Measure the lowest ceiling above the highest floor point.");
        }
    }

    private Finding One(CheckContext context, CaseBox box, Length room)
    {
        // A case that stands on the floor is not lifted, but it must still fit.
        var limit = box.Y > Length.Zero ? context.Limits.LiftRoom : Length.Zero;
        var say = context.Say;
        return Report(
            context,
            room < limit ? Severity.Stop : Severity.Pass,
            box.Id,
            $"{say.Size(room)} is left between case {box.Id} and the ceiling; {say.Size(limit)} is needed to set it.",
            new((double)room.Millimetres, (double)limit.Millimetres, "mm", []),
            $"Make the case {say.AtLeast((limit - room).Metres)} lower and let a fascia, scribe or crown cover the gap.");
    }
}
