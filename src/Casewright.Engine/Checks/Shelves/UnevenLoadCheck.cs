using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Panels that run over several bays, loaded in every second one: the loaded bay sags more and the far end may lift.</summary>
public sealed class UnevenLoadCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-one-bay-loaded",
        "Sag of each bare panel that runs over several bays when only every second bay is loaded, and whether an end lifts.",
        "three-moment equation M1 l1 + 2 M2 (l1 + l2) + M3 l2 = −(w1 l1³ + w2 l2³)/4; two equal spans, one loaded: 0.0092 wL⁴/EI",
        "Standard beam theory; span/360 is common practice for fine built-ins",
        Standing.CommonPractice)
    {
        Limits = [new("span over sag", l => l.SagRatio, 360, "", "common practice for fine built-ins, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(ShelfReader.Roles))
        {
            // With a nosing or a carried back each span is reckoned by itself, which is this case already.
            if (ShelfReader.Hold(context, part) == ShelfHold.Along || ShelfReader.Read(context, part, part.LoadPerMetre ?? 0) is not { Spans.Count: > 1, Nosing: null, BackCarried: false } shelf)
                continue;
            if (part.LoadPerMetre is not null)
                yield return One(context, part, shelf);
            else if (part.Role is PartRole.FixedShelf or PartRole.AdjustableShelf)
                yield return ShelfLoads.Unloaded(this, part);
        }
    }

    /// <summary>Largest sag in m of any span, and least upward force in N of any support, over both ways of loading every second span.</summary>
    public static (double Sag, double LeastReaction) Worst(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var (sag, least) = (0.0, double.PositiveInfinity);
        var figures = shelf.Figures;
        var stiffness = figures.Elasticity(shelf.AlongGrain) * shelf.Section.SecondMoment;
        for (var first = 0; first < 2; first++)
        {
            var beam = new ContinuousBeam(shelf.Spans, [.. shelf.Spans.Select((_, i) => i % 2 == first ? shelf.TotalLoad : shelf.OwnWeight)], stiffness);
            sag = Math.Max(sag, Enumerable.Range(0, beam.Count).Max(beam.LargestSag));
            least = Math.Min(least, Enumerable.Range(0, beam.Count + 1).Min(beam.Reaction));
        }

        return (sag + Beams.SimpleShearSag(shelf.TotalLoad, shelf.LongestSpan, figures.PlanarShearModulus * shelf.Section.ShearArea), least);
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        var (say, ratio) = (context.Say, context.Limits.SagRatio);
        bool Passes(Shelf s) => Worst(s) is var (sag, least) && sag <= s.LongestSpan / ratio && least >= 0;
        var (worst, limit) = (Worst(shelf), shelf.LongestSpan / ratio);
        var lifts = worst.LeastReaction < 0;
        var passes = Passes(shelf);
        var remedies = passes ? "" : ShelfRemedies.For(shelf, Passes, say.Units).Advice(say);
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            part.Id,
            $"{part.Name} sags {say.Fine(worst.Sag)} where only every second bay is loaded; {say.Fine(limit)} is allowed."
                + (lifts ? $" One of its supports must then hold it down with {say.Force(-worst.LeastReaction)}." : ""),
            new(worst.Sag * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf).Add(new("least upward force of a support", Say.Number(worst.LeastReaction, 0), "N"))),
            lifts ? "Fix it down in its dados, glued or screwed. Else: " + char.ToLowerInvariant(remedies[0]) + remedies[1..] : remedies);
    }
}
