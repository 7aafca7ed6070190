using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Checks.Splices;

/// <summary>What the checks of a joint's place share: the nearest thing of one kind on its part, and the distance it wants.</summary>
public abstract class SplicePlaceCheck : Check
{
    /// <summary>Distance that the shop keeps from things of this kind.</summary>
    protected abstract Length Clear(CheckContext context, SplicedPart spliced);

    /// <summary>Stretches of the part, along x, that hold such things.</summary>
    protected abstract IEnumerable<(Length From, Length To, string Name)> Things(SplicedPart spliced);

    /// <summary>What the things are called.</summary>
    protected abstract string Called { get; }

    /// <inheritdoc/>
    public sealed override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context))
        {
            var things = Things(spliced).ToList();
            if (things.Count > 0)
                yield return One(context, spliced, things);
        }
    }

    private Finding One(CheckContext context, SplicedPart spliced, List<(Length From, Length To, string Name)> things)
    {
        var line = spliced.Splice.Position;
        Length Distance((Length From, Length To, string Name) thing) =>
            line < thing.From ? thing.From - line : line > thing.To ? line - thing.To : Length.Zero;
        var nearest = things.MinBy(Distance);
        var (distance, clear) = (Distance(nearest), Clear(context, spliced));
        var say = context.Say;
        return Report(
            context,
            distance < clear ? Severity.Stop : Severity.Pass,
            spliced.Splice.Id,
            $"The joint in {spliced.Part.Name} is {say.Size(distance)} from {Called} for {nearest.Name}; {say.Size(clear)} is kept.",
            new((double)distance.Millimetres, (double)clear.Millimetres, "mm", []),
            distance < clear ? Advice(context, spliced, things, clear) : "");
    }

    // The nearest place either way that is clear of everything of this kind.
    private static string Advice(CheckContext context, SplicedPart spliced, List<(Length From, Length To, string Name)> things, Length clear)
    {
        var (line, length) = (spliced.Splice.Position, spliced.Part.Length);
        var (lower, upper) = (line, line);
        while (things.Any(t => lower > t.From - clear && lower < t.To + clear))
            lower = things.Where(t => lower > t.From - clear && lower < t.To + clear).Min(t => t.From - clear);
        while (things.Any(t => upper > t.From - clear && upper < t.To + clear))
            upper = things.Where(t => upper > t.From - clear && upper < t.To + clear).Max(t => t.To + clear);
        var moves = SpliceAdvice.Moves(spliced.Part, line, lower > Length.Zero ? lower : null, upper < length ? upper : null, context.Say);
        return moves.Length == 0
            ? "No place along this part is clear of them: move what is in the way, or cut the part whole from a longer sheet."
            : $"Move the joint {moves}.";
    }
}
