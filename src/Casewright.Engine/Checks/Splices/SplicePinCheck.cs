using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints keep clear of pin holes; holes within the shop's clearance are left out when the row is drilled, so only the joint's own holes must not meet one.</summary>
public sealed class SplicePinCheck : SplicePlaceCheck
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-clear-of-pins",
        "Distance of each joint line from the nearest hole of a pin row.",
        "distance ≥ the shop's clearance",
        "Common practice: 25 mm (1 in)",
        Standing.CommonPractice);

    /// <inheritdoc/>
    protected override string Called => "a pin hole";

    /// <inheritdoc/>
    protected override Length Clear(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Shop.Splicing.ClearOfPinHole;
    }

    /// <inheritdoc/>
    protected override IEnumerable<(Length From, Length To, string Name)> Things(SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(spliced);
        foreach (var row in spliced.Part.Machining.OfType<PinRow>())
        {
            for (var i = 0; i < row.Count; i++)
            {
                var x = row.FirstX + (row.Pitch * i);
                yield return (x, x, row.For);
            }
        }
    }
}
