using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Sag of shelves after years under load that stays.</summary>
public sealed class FinalSagCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-sag-in-time",
        "Sag of each shelf after years, creep included.",
        "δ_fin = δ_own (1 + k_def) + δ_load (1 + ψ k_def)",
        "EN 1995-1-1 2.2.3 and table 3.2 (public code tables; arrangement by class from memory); span/240 is called visibly noticeable in a panel trade bulletin",
        Standing.Published)
    {
        Limits =
        [
            new("span over sag after years", l => l.FinalSagRatio, 240, "", "particleboard and fibreboard shelving bulletin", Standing.Published),
            new("share of the load that stays", l => l.SustainedShare, 1, "", "books stay; EN 1990 takes 0.8 for storage (from memory)", Standing.Judgement),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ShelfLoads.Each(context, this, One, (_, part) => ShelfLoads.Unloaded(this, part));
    }

    /// <summary>Sag in m after years.</summary>
    public static double Final(Shelf shelf, double creepFactor, double sustained)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return Creep.FinalSag(shelf.SagUnder(shelf.OwnWeight), shelf.SagUnder(shelf.LoadPerMetre * Shelf.Gravity), creepFactor, sustained);
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        if (context.Job.Site.Climate is not { } climate)
            return NotChecked(context, part.Id, "the job does not say whether the room is heated, and creep depends on it.", "Give the climate of the room.");
        if (ClimateFactors.CreepFactor(shelf.Material.Kind, climate) is not { } creep)
            return NotChecked(context, part.Id, "there is no creep figure for this material in so damp a place.", "Choose a material made for damp places.");
        var (say, limits) = (context.Say, context.Limits);
        bool Passes(Shelf s) => Final(s, creep, limits.SustainedShare) <= s.LongestSpan / limits.FinalSagRatio;
        var (sag, limit) = (Final(shelf, creep, limits.SustainedShare), shelf.LongestSpan / limits.FinalSagRatio);
        var message = $"{part.Name} will have sagged {say.Fine(sag)} after years under its load; {say.Fine(limit)} is allowed.";
        var inputs = ShelfInputs.Of(shelf).Add(new("creep factor k_def", Say.Number(creep, 2), ""));
        return Report(
            context,
            Passes(shelf) ? Severity.Pass : Severity.Caution,
            part.Id,
            message,
            new(sag * 1000, limit * 1000, "mm", inputs),
            Passes(shelf) ? "" : ShelfRemedies.For(shelf, Passes, say.Units).Advice(say));
    }
}
