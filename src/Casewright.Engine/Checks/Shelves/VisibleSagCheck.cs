using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Sag of loose shelves that an eye begins to see.</summary>
public sealed class VisibleSagCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "loose-shelf-visible-sag",
        "Whether a loose shelf sags enough to be seen.",
        "δ as for shelf-sag; limit 0.02 in per foot of span",
        "Standard beam theory; 0.02 in per foot is common practice",
        Standing.CommonPractice)
    {
        Limits = [new("span over visible sag", l => l.VisibleSagRatio, 600, "", "0.02 in per foot, common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.PartsWith(PartRole.AdjustableShelf)
            .Select(part => part.LoadPerMetre is { } load ? One(context, part, ShelfReader.Read(context, part, load)) : ShelfLoads.Unloaded(this, part));
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var (say, ratio) = (context.Say, context.Limits.VisibleSagRatio);
        var (sag, limit) = (shelf.Sag, shelf.LongestSpan / ratio);
        var passes = ShelfSagCheck.Passes(shelf, ratio);
        var message = $"{part.Name} sags {say.Fine(sag)}; from {say.Fine(limit)} on the eye sees it.";
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            part.Id,
            message,
            new(sag * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf)),
            passes ? "" : ShelfRemedies.For(shelf, s => ShelfSagCheck.Passes(s, ratio), say.Units).Advice(say));
    }
}
