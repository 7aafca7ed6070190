using Casewright.Engine.Checks.Materials;
using Casewright.Model.Findings;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Seasons;

/// <summary>Panels that suit the air of the room.</summary>
public sealed class MaterialClimateCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "material-in-climate",
        "Whether each material in use may live in the air of the room.",
        "",
        "EN 1995-1-1 table 3.2: materials without a creep figure in a class are not for it (arrangement by class from memory)",
        Standing.FromMemory);

    // The dampest air that the material still lives in.
    private static string Advice(MaterialKind kind)
    {
        var room = ClimateFactors.CreepFactor(kind, Climate.Unheated) is null ? "a heated room" : "a dry room, heated or not";
        return $"It lives in {room}: dry the place first, or use birch or softwood plywood, or solid wood.";
    }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var id in context.Parts.Select(p => p.Material).Distinct(StringComparer.Ordinal))
        {
            var material = context.Job.Stock.Material(id);
            if (context.Job.Site.Climate is not { } climate)
                yield return NotChecked(context, id, "the job does not say whether the room is heated.", "Give the climate of the room.");
            else if (ClimateFactors.CreepFactor(material.Kind, climate) is null)
                yield return Rule(context, Severity.Stop, id, $"{material.Name} is not made for so damp a place.", Advice(material.Kind));
            else
                yield return Rule(context, Severity.Pass, id, $"{material.Name} suits the room.");
        }
    }
}
