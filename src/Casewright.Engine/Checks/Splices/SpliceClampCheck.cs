using Casewright.Model.Findings;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Force that long clamps or spreaders must give at each glued butt.</summary>
public sealed class SpliceClampCheck : Check
{
    // 150 psi on panel edges: the Wood Handbook names about 100 psi for light woods to 247 for dense ones (from memory).
    private const double Pressure = 150 * 6894.757293168;

    // One above and one below, and one more of each at a wide panel.
    private const int MostClamps = 4;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-clamp-force",
        "Force that end clamps or a spreader must give at each glued splice, and how many clamps that takes.",
        "F = 150 psi · b · t; clamps = ⌈F ÷ force of one clamp⌉, two at least",
        "Pressure after the Wood Handbook (from memory: 100 to 250 psi by density)",
        Standing.FromMemory)
    {
        Limits = [new("force of one long clamp", l => l.ClampForce, 4000, "N", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => s.Splice.Holding is HoldingMethod.EndClamps or HoldingMethod.SpreaderAgainstStop))
            yield return One(context, spliced);
    }

    private Finding One(CheckContext context, SplicedPart spliced)
    {
        var (splice, part) = spliced;
        var force = Mechanics.Gluing.ClampForce(Pressure, part.Width.Metres * part.Thickness.Metres);
        var clamps = Math.Max(2, (int)Math.Ceiling(force / context.Limits.ClampForce));
        return Report(
            context,
            clamps <= MostClamps ? Severity.Pass : Severity.Caution,
            splice.Id,
            $"The joint in {part.Name} wants {context.Say.Force(force)} while it closes: {clamps} clamps, one above and one below in turn.",
            new(clamps, MostClamps, "clamps", [new("force", Say.Number(force, 0), "N"), new("width of the joint", Say.Number(part.Width.Metres * 1000), "mm"), new("thickness", Say.Number(part.Thickness.Metres * 1000, 2), "mm")]),
            $"{MostClamps} clamps that give {context.Say.ForceAtLeast(force / MostClamps)} each would do. Draw connectors save the clamps where a face is hidden; else glue it in two widths, or borrow clamps.");
    }
}
