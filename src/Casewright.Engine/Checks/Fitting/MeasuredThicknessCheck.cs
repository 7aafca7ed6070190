using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Panels measured before they are cut.</summary>
public sealed class MeasuredThicknessCheck : Check
{
    private static readonly PartRole[] Housed = [PartRole.Side, PartRole.Partition, PartRole.Top, PartRole.Bottom, PartRole.FixedShelf];

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "measured-thickness",
        "Whether each sheet material has been measured, since dados and clear sizes follow its true thickness.",
        "",
        "Sanded plywood may be 1/64 in off its nominal thickness (PS 1-19, trade summary), hardwood plywood up to 3/64 in under (from memory)",
        Standing.Published);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var id in context.Parts.Select(p => p.Material).Distinct(StringComparer.Ordinal))
        {
            var material = context.Job.Stock.Material(id);
            if (!material.IsBoard)
                yield return One(context, material, context.Parts.Any(p => p.Material == id && Housed.Contains(p.Role)));
        }
    }

    private Finding One(CheckContext context, Material material, bool housed)
    {
        var say = context.Say;
        if (material.Measured is not { } measured)
        {
            return Rule(
                context,
                housed ? Severity.Stop : Severity.Caution,
                material.Id,
                $"{material.Name} has not been measured; the plan takes it at {say.Size(material.Nominal)} as sold.",
                "Measure three sheets with a caliper and enter the thickness before cutting: every dado and clear size changes with it.");
        }

        var off = measured - material.Nominal;
        return Report(
            context,
            Severity.Pass,
            material.Id,
            $"{material.Name} measures {say.Size(measured)}, {say.Size(off.Abs())} {(off < Length.Zero ? "under" : "over")} its nominal size; everything is computed with it.",
            new((double)measured.Millimetres, null, "mm", []));
    }
}
