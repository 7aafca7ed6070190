using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Every shelf under the load of the architectural woodwork standard for books, whatever it is meant to carry.</summary>
public sealed class StandardLoadCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-standard-load",
        "Sag of each shelf under the load that the woodwork standard sets for books, at most 200 lb on one shelf.",
        "δ as for shelf-sag, under 50 psf, without own weight and creep; limit span/144",
        "Architectural Woodwork Standards, first edition 2009, p. 279",
        Standing.Published)
    {
        Limits =
        [
            new("span over sag", l => l.StandardSagRatio, 144, "", "Architectural Woodwork Standards 2009", Standing.Published),
            new("load", l => l.StandardLoad, 2394, "Pa", "50 psf for books, Architectural Woodwork Standards 2009", Standing.Published),
            new("most on one shelf", l => l.StandardShelfMass, 90.7, "kg", "200 lb, Architectural Woodwork Standards 2009", Standing.Published),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.FixedShelf, PartRole.AdjustableShelf))
            yield return One(context, part, ShelfReader.Read(context, part, part.LoadPerMetre ?? 0));
    }

    /// <summary>Whether a shelf keeps the standard's limit under the standard's load.</summary>
    public static bool Passes(Shelf shelf, CheckLimits limits)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(limits);
        return shelf.SagUnder(Load(shelf, limits)) <= shelf.LongestSpan / limits.StandardSagRatio;
    }

    private static double Load(Shelf shelf, CheckLimits limits) =>
        Math.Min(limits.StandardLoad * shelf.Depth, limits.StandardShelfMass * Shelf.Gravity / shelf.Spans.Sum());

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var (say, limits) = (context.Say, context.Limits);
        var (sag, limit) = (shelf.SagUnder(Load(shelf, limits)), shelf.LongestSpan / limits.StandardSagRatio);
        var passes = Passes(shelf, limits);
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            part.Id,
            $"{part.Name} would sag {say.Fine(sag)} under the woodwork standard's load for books; it allows {say.Fine(limit)}.",
            new(sag * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf)),
            passes ? "" : (ShelfRemedies.For(shelf, s => Passes(s, limits), say.Units) with { Load = null }).Advice(say) + " Where nobody has asked for that standard, the stated load decides.");
    }
}
