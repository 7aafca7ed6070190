using Casewright.Engine.Access;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Building;

/// <summary>Carrying each case and each long part through every narrow place on the way in.</summary>
public sealed class AccessRouteCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "access-route",
        "Whether each case, and each part taken in singly, passes the doorways, turns, stairs and lifts between the van and the room.",
        "doorway: two smaller sizes; turn: L ≤ min (a cos u + b sin u − w)/(sin u cos u), level or tipped; stair: headroom · cos pitch; lift: level or leaning",
        "Geometry; Carver 1957 for leaning in a lift; a batten of the size carried through beats arithmetic",
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

        var built = context.BuiltCases.Select(b => b.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var access in AccessStage.Study(context.Job, context.Casework).Where(a => built.Contains(a.Case.Id)))
        {
            var box = access.Case;
            yield return One(context, route, box.Id, $"Case {box.Id}", (box.Width, box.Height, box.Depth), () => string.Join(" ", access.Advice));
        }

        foreach (var part in context.Parts.Where(p => p.Length > context.Limits.PieceForOne))
            yield return One(context, route, part.Id, part.Name, (part.Length, part.Width, part.Thickness), () => InPieces(context, route, part));
    }

    private static string InPieces(CheckContext context, ValueList<Passage> route, Part part)
    {
        var play = context.Limits.CarryPlay;
        bool Passes(Length length) => route.All(p => AccessRouteCheck.Passes(p, (length, part.Width, part.Thickness), play));
        return Solving.Largest(context.Say.Step, part.Length, Passes) is { } longest
            ? $"Join it in the room: pieces {context.Say.Size(longest)} long or shorter get in."
            : "Nothing as wide gets in: make it narrower, or hand it in another way.";
    }

    /// <summary>Whether a box with these outer sizes passes.</summary>
    public static bool Passes(Passage passage, (Length A, Length B, Length C) box, Length play)
    {
        ArgumentNullException.ThrowIfNull(passage);
        return PassageGeometry.Fit(passage, [(box.A + (2 * play)).Metres, (box.B + (2 * play)).Metres, (box.C + (2 * play)).Metres]).Passes;
    }

    private Finding One(CheckContext context, ValueList<Passage> route, string subject, string name, (Length A, Length B, Length C) box, Func<string> advice)
    {
        var say = context.Say;
        var size = $"{say.Size(box.A)} × {say.Size(box.B)} × {say.Size(box.C)}";
        return route.FirstOrDefault(p => !Passes(p, box, context.Limits.CarryPlay)) is { } tight
            ? Rule(context, Severity.Stop, subject, $"{name}, {size}, does not pass {tight.Name} ({say.Size(tight.Clear)} wide, {say.Size(tight.Height)} high).", advice())
            : Rule(context, Severity.Pass, subject, $"{name}, {size}, passes {(route.Count == 0 ? "the way in, which has no narrow place" : "every place on the way in")}.");
    }
}
