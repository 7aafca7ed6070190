using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Nosings taken off the depth of what they are glued to.</summary>
public sealed class EdgingDepthCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "edging-deducted",
        "Whether each nosed part of a case and its nosing together stay within the depth of the case.",
        "front of the nosing ≤ depth of the case",
        "Arithmetic",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.Parts)
        {
            if (context.Part(part.Nosing) is { } nosing && context.Case(part.Case) is { } box)
                yield return One(context, part, ShelfReader.Box(nosing).High.Z, box.Depth);
        }
    }

    private Finding One(CheckContext context, Part part, Length front, Length depth)
    {
        var say = context.Say;
        return Report(
            context,
            front > depth ? Severity.Caution : Severity.Pass,
            part.Id,
            $"The nosing of {part.Name} ends {say.Size(front)} from the wall; the case is {say.Size(depth)} deep.",
            new((double)front.Millimetres, (double)depth.Millimetres, "mm", []),
            $"Take {say.AtLeast((front - depth).Metres)} off the width of the part.");
    }
}
