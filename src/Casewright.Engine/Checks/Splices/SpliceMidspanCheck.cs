using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Splices;

/// <summary>No splice in the middle of an unsupported span.</summary>
public sealed class SpliceMidspanCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-midspan",
        "Where a splice of a level part lies in its span.",
        "distance from the nearer support ÷ span ≤ (1 − middle share)/2",
        "Common practice: never in the middle third of an unsupported span",
        Standing.CommonPractice)
    {
        Limits = [new("middle share kept free", l => l.SpliceFreeShare, 1.0 / 3.0, "", "middle third, common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => s.Carries && !s.Upright && ShelfReader.Roles.Contains(s.Part.Role)))
            yield return One(context, spliced);
    }

    private Finding One(CheckContext context, SplicedPart spliced)
    {
        var (splice, part) = spliced;
        if (ShelfReader.Hold(context, part) == ShelfHold.Along || spliced.InSpan(context) is not var (span, x))
            return Rule(context, Severity.Pass, splice.Id, $"The joint in {part.Name} lies on a support.");
        var length = ShelfReader.ClearSpans(context, part)[span];
        var share = Math.Min(x, length - x) / length;
        var limit = (1 - context.Limits.SpliceFreeShare) / 2;
        return Report(
            context,
            share > limit ? Severity.Stop : Severity.Pass,
            splice.Id,
            $"The joint in {part.Name} lies {Say.Number(share * 100, 0)} % of the span from the nearer support.",
            new(share, limit, "", []),
            $"Move the joint {context.Say.AtLeast((share - limit) * length)} {(x > length / 2 ? "to the right" : "to the left")}, out of the middle of the span, or over an upright.");
    }
}
