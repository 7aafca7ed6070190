using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Sag of every loaded shelf, top and bottom under its stated load, before creep.</summary>
public sealed class ShelfSagCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-sag",
        "Sag of each shelf under its load and own weight on the first day.",
        "δ = 5wL⁴/384EI + wL²/8GA′; over several spans the three-moment equation; with a nosing or a carried back the two-parameter strip model × 1.06",
        "Standard beam theory; strip model of our own within 6 % of solid finite elements; span/360 is common practice for fine built-ins",
        Standing.CommonPractice)
    {
        Limits = [new("span over sag", l => l.SagRatio, 360, "", "common practice for fine built-ins, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ShelfLoads.Each(context, this, One, (_, part) => ShelfLoads.Unloaded(this, part));
    }

    /// <summary>Whether a shelf keeps the limit.</summary>
    public static bool Passes(Shelf shelf, double ratio)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return shelf.Sag <= shelf.LongestSpan / ratio;
    }

    // A shelf in a dado turns its uprights and is no built-in beam; the figure shows what is not counted on.
    private static ValueList<FindingInput> WithBuiltInEnds(Shelf shelf)
    {
        var inputs = ShelfInputs.Of(shelf);
        if (shelf.Spans.Count > 1 || shelf.Nosing is not null || shelf.BackCarried)
            return inputs;
        var stiffness = shelf.Figures.Elasticity(shelf.AlongGrain) * shelf.Section.SecondMoment;
        return inputs.Add(new("sag by bending were both ends built in, not counted on", Say.Number(Beams.FixedSag(shelf.TotalLoad, shelf.LongestSpan, stiffness) * 1000, 2), "mm"));
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var say = context.Say;
        var ratio = context.Limits.SagRatio;
        var (sag, limit) = (shelf.Sag, shelf.LongestSpan / ratio);
        var figures = new Figures(sag * 1000, limit * 1000, "mm", WithBuiltInEnds(shelf));
        var found = $"{part.Name} sags {say.Fine(sag)} over a clear span of {say.Fine(shelf.LongestSpan)}; {say.Fine(limit)} is allowed.";
        if (Passes(shelf, ratio))
            return Report(context, Severity.Pass, part.Id, found, figures);

        // A loose shelf can be turned over or changed; a fixed one is built in.
        var severity = part.Role == PartRole.AdjustableShelf && Passes(shelf, ratio / 2) ? Severity.Caution : Severity.Stop;
        return Report(context, severity, part.Id, found, figures, ShelfRemedies.For(shelf, s => Passes(s, ratio), say.Units).Advice(say));
    }
}
