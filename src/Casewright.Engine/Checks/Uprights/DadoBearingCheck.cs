using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Pressure of fixed shelves on the dados that carry them.</summary>
public sealed class DadoBearingCheck : Check
{
    // Pressure in Pa on panel edges and faces that leaves no mark (judgement; softwood across the grain bears 2 to 3 N/mm²).
    private const double Bearing = 2e6;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "dado-bearing",
        "Pressure at the ends of each fixed shelf on the edge of its dado.",
        "γ R/(b a) ≤ k_mod 2 N/mm²/γ_M",
        "Statics; bearing strength is our judgement, below softwood across the grain",
        Standing.Judgement)
    {
        Limits = [new("factor on loads", l => l.LoadFactor, 1.5, "", "EN 1990, variable loads (from memory)", Standing.FromMemory)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.FixedShelf))
        {
            if (part.LoadPerMetre is not { } load)
                yield return ShelfLoads.Unloaded(this, part);
            else if (TooDamp(context, part.Id) is { } damp)
                yield return damp;
            else if (Housing(context, part) is { } dado)
                yield return One(context, part, ShelfReader.Read(context, part, load), dado);
            else
                yield return NotChecked(context, part.Id, "no dado carries this shelf.", "Say how it is fixed: screws or dowels into its ends hold little in board edges.");
        }
    }

    private static Dado? Housing(CheckContext context, Part shelf) =>
        context.Together(shelf).SelectMany(p => p.Machining.OfType<Dado>()).Where(d => d.For == shelf.Id && d.Depth.Nanometres > 0).MinBy(d => d.Depth);

    private Finding One(CheckContext context, Part part, Shelf shelf, Dado dado)
    {
        var beam = new ContinuousBeam(shelf.Spans, shelf.TotalLoad, 1);
        var reaction = context.Limits.LoadFactor * beam.Reaction(0);
        var pressure = reaction / (part.Width.Metres * dado.Depth.Metres);
        var limit = Bearing * ClimateFactors.StrengthFactor(shelf.Material.Kind, LoadDuration.Permanent) / shelf.Figures.MaterialFactor;
        return Report(
            context,
            pressure > limit ? Severity.Stop : Severity.Pass,
            part.Id,
            $"The ends of {part.Name} press on their dados with {context.Say.Stress(pressure / 1e6)}; {context.Say.Stress(limit / 1e6)} is allowed.",
            new(pressure / 1e6, limit / 1e6, "N/mm²", [new("end reaction with safety", Say.Number(reaction, 0), "N"), new("dado depth", Say.Number(dado.Depth.Metres * 1000, 2), "mm"), Air(context)]),
            pressure > limit ? Advice(context, part, shelf, dado, pressure / limit) : "");
    }

    private static string Advice(CheckContext context, Part part, Shelf shelf, Dado dado, double over)
    {
        var say = context.Say;
        var ways = new List<string>();
        var uprights = context.Together(part).Where(p => p.Machining.OfType<Dado>().Any(d => d.For == part.Id)).ToList();
        var deepest = uprights.Min(p => (1 - context.Limits.LeastWeb) * p.Thickness.Metres / (p.Role == PartRole.Partition ? 2 : 1));
        if (dado.Depth.Metres * over <= deepest)
            ways.Add($"make its dados {say.AtLeast(dado.Depth.Metres * over)} deep");
        var most = ((shelf.TotalLoad / over) - shelf.OwnWeight) / Shelf.Gravity;
        if (most >= 1)
            ways.Add($"keep the load to {say.LoadAtMost(most)}");
        ways.Add("screw a cleat under its ends");
        return Say.Sentence(ways);
    }
}
