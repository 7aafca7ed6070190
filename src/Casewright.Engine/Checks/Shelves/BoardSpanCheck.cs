using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>The rule of thumb for bare particleboard and fibreboard shelves under books.</summary>
public sealed class BoardSpanCheck : Check
{
    /// <summary>Load in kg/m that the rule is stated for.</summary>
    private const double RuleLoad = 30;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "board-shelf-span",
        "Clear span of particleboard and fibreboard shelves without nosing or cleat, which creep most.",
        "span ≤ 500 mm ∛(30 kg/m ÷ load)",
        "Common practice for 18 mm board, no source",
        Standing.CommonPractice)
    {
        Limits = [new("clear span at 30 kg/m", l => (double)l.BoardSpan.Millimetres, 500, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.FixedShelf, PartRole.AdjustableShelf))
        {
            if (context.Material(part).Kind is not (MaterialKind.Particleboard or MaterialKind.Mdf))
                continue;
            if (part.LoadPerMetre is not { } load)
                yield return ShelfLoads.Unloaded(this, part);
            else if (ShelfReader.Read(context, part, load) is { Nosing: null, BackCarried: false } shelf)
                yield return One(context, part, shelf);
        }
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var limit = context.Limits.BoardSpan.Metres * Math.Cbrt(RuleLoad / Math.Max(shelf.LoadPerMetre, 1));
        var passes = shelf.LongestSpan <= limit;
        var say = context.Say;
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            part.Id,
            $"{part.Name} is board over a clear span of {say.Size(shelf.LongestSpan)}; at this load {say.AtMost(limit)} is the rule.",
            new(shelf.LongestSpan * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf)),
            $"Keep the bay to {say.AtMost(limit)}, give the shelf a hardwood nosing and a cleat behind, or use plywood.");
    }
}
