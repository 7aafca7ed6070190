using Casewright.Model.Findings;
using Mechanic = Casewright.Engine.Checks.Mechanics.Gluing;

namespace Casewright.Engine.Checks.Gluing;

/// <summary>Shop, wood and glue warm enough.</summary>
public sealed class GlueTemperatureCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "glue-temperature",
        "Temperature of the shop against the coldest that the glue bears, and the clamp time at it.",
        "T ≥ least; clamp time × 0.7 at 27 °C, 1 at 20, 1.5 at 15, 2.2 at 10",
        "Common practice for PVA glue; the glue's own label comes first",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var (glue, least) = (context.Job.Shop.Glue, context.Job.Shop.Glue.LeastTemperature);
        if (context.Job.Shop.Temperature is not { } celsius)
        {
            yield return NotChecked(context, "job", "the job does not say how warm the shop is while glue cures.", $"Give the shop's temperature; below {context.Say.Temperature(least)} this glue does not bond.");
            yield break;
        }

        var clamp = glue.ClampMinutes * Mechanic.ClampTimeFactor(celsius);
        yield return Report(
            context,
            celsius < least ? Severity.Stop : Severity.Pass,
            "job",
            celsius < least
                ? $"At {context.Say.Temperature(celsius)} this glue does not bond; {context.Say.Temperature(least)} is the least for wood, glue and shop."
                : $"At {context.Say.Temperature(celsius)} a splice stays {Say.Number(clamp, 0)} minutes in the clamps.",
            new(celsius, least, "°C", [new("clamp time", Say.Number(clamp, 0), "min")]),
            $"Warm the shop, the wood and the glue to {context.Say.Temperature(least)} or more, or take a glue made for the cold.");
    }
}
