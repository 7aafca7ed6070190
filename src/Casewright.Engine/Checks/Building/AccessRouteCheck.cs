using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Building;

/// <summary>Carrying each case and each long part through every narrow place on the way in.</summary>
public sealed class AccessRouteCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "access-route",
        "Whether each case, and each part taken in singly, passes the doorways, turns and lifts between the van and the room.",
        "doorway: two smaller sizes; turn: L ≤ min (a cos u + b sin u − w)/(sin u cos u); lift: size by size",
        "Geometry, things kept level or upright; a batten of the size carried through beats arithmetic",
        Standing.Arithmetic)
    {
        Limits = [new("play on each side", l => (double)l.CarryPlay.Millimetres, 10, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Job.Site.Route is not { } route)
        {
            yield return NotChecked(context, "job", "nobody has measured the way in.", "Give the doorways, turns and lifts between the van and the room; an empty list if there are none.");
            yield break;
        }

        foreach (var box in context.Cases)
            yield return One(context, route, box.Id, $"Case {box.Id}", (box.Width, box.Height, box.Depth), "Take it in unassembled, build it in smaller cases, or hand it in through a window.");
        foreach (var part in context.Parts.Where(p => p.Length > context.Limits.PieceForOne))
            yield return One(context, route, part.Id, part.Name, (part.Length, part.Width, part.Thickness), "Join it in the room, or choose joints that make shorter pieces.");
    }

    /// <summary>Whether a box with these outer sizes passes.</summary>
    public static bool Passes(Passage passage, (Length A, Length B, Length C) box, Length play)
    {
        ArgumentNullException.ThrowIfNull(passage);
        double[] sizes = [.. new[] { box.A, box.B, box.C }.Select(s => (s + (2 * play)).Metres).Order()];
        var (width, height) = (passage.Width.Metres, passage.Height.Metres);
        return (passage.Kind, passage.NextWidth?.Metres) switch
        {
            (PassageKind.Doorway or PassageKind.Window, _) => sizes[0] <= Math.Min(width, height) && sizes[1] <= Math.Max(width, height),
            (PassageKind.LiftCar, { } depth) => Fits(sizes, [.. new[] { width, height, depth }.Order()]),
            (PassageKind.LiftCar, null) => sizes[0] <= Math.Min(width, height) && sizes[1] <= Math.Max(width, height),
            (_, var next) => Turns(sizes, width, next ?? width, height),
        };
    }

    private static bool Fits(double[] sizes, double[] car) => sizes.Zip(car, (s, c) => s <= c).All(ok => ok);

    // Any of the three sizes may stand upright while the other two turn.
    private static bool Turns(double[] sizes, double a, double b, double height)
    {
        for (var up = 0; up < 3; up++)
        {
            if (sizes[up] <= height && CorridorTurn.Passes(a, b, sizes[(up + 1) % 3], sizes[(up + 2) % 3]))
                return true;
        }

        return false;
    }

    private Finding One(CheckContext context, ValueList<Passage> route, string subject, string name, (Length A, Length B, Length C) box, string advice)
    {
        var say = context.Say;
        var size = $"{say.Size(box.A)} × {say.Size(box.B)} × {say.Size(box.C)}";
        return route.FirstOrDefault(p => !Passes(p, box, context.Limits.CarryPlay)) is { } tight
            ? Rule(context, Severity.Stop, subject, $"{name}, {size}, does not pass {tight.Name} ({say.Size(tight.Width)} wide, {say.Size(tight.Height)} high).", advice)
            : Rule(context, Severity.Pass, subject, $"{name}, {size}, passes {(route.Count == 0 ? "the way in, which has no narrow place" : "every place on the way in")}.");
    }
}
