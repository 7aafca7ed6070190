using Casewright.Engine.Checks.Materials;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Shop;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Bending strength of shelves, the nosing not counted on.</summary>
public sealed class ShelfStrengthCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "shelf-strength",
        "Bending stress of each shelf, against its strength under a load that stays.",
        "γ M/(b t²/6) ≤ k_mod f_m/γ_M",
        "EN 1995-1-1 in form (k_mod, γ_M from memory); strengths are planning figures",
        Standing.FromMemory)
    {
        Limits = [new("factor on loads", l => l.LoadFactor, 1.5, "", "EN 1990, variable loads (from memory)", Standing.FromMemory)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ShelfLoads.Each(context, this, One, (_, part) => ShelfLoads.Unloaded(this, part));
    }

    /// <summary>Stress in Pa under the factored load.</summary>
    public static double Stress(Shelf shelf, CheckLimits limits)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(limits);
        return limits.LoadFactor * shelf.LargestMoment(shelf.TotalLoad) / shelf.Section.Modulus;
    }

    /// <summary>Strength in Pa under a load that stays, in a dry room.</summary>
    public static double Strength(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var figures = shelf.Figures;
        return ClimateFactors.StrengthFactor(shelf.Material.Kind, LoadDuration.Permanent) * figures.Bending(shelf.AlongGrain) / figures.MaterialFactor;
    }

    private Finding One(CheckContext context, Part part, Shelf shelf)
    {
        if (TooDamp(context, part.Id) is { } damp)
            return damp;
        var (say, limits) = (context.Say, context.Limits);
        bool Passes(Shelf s) => Stress(s, limits) <= Strength(s);
        var (stress, strength) = (Stress(shelf, limits) / 1e6, Strength(shelf) / 1e6);
        return Report(
            context,
            Passes(shelf) ? Severity.Pass : Severity.Stop,
            part.Id,
            $"{part.Name} is stressed to {say.Stress(stress)} with safety; it bears {say.Stress(strength)} for good.",
            new(stress, strength, "N/mm²", ShelfInputs.Of(shelf).Add(Air(context))),
            Passes(shelf) ? "" : ShelfRemedies.For(shelf, Passes, say.Units).Advice(say));
    }
}
