using Casewright.Engine.Checks.Materials;
using Casewright.Model.Findings;

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
                yield return Rule(context, Severity.Stop, id, $"{material.Name} is not made for so damp a place.", "Dry the room first, or use a material made for damp places.");
            else
                yield return Rule(context, Severity.Pass, id, $"{material.Name} suits the room.");
        }
    }
}
