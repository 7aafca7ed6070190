using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints keep clear of hinge plates, slides, brackets and screws.</summary>
public sealed class SpliceHardwareCheck : SplicePlaceCheck
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-clear-of-hardware",
        "Distance of each joint line from stretches where screws or fittings go.",
        "distance ≥ the shop's clearance",
        "Common practice: 50 mm (2 in), and never under a ladder bracket",
        Standing.CommonPractice);

    /// <inheritdoc/>
    protected override string Called => "the fixing";

    /// <inheritdoc/>
    protected override Length Clear(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Shop.Splicing.ClearOfHardware;
    }

    /// <inheritdoc/>
    protected override IEnumerable<(Length From, Length To, string Name)> Things(SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(spliced);
        return spliced.Part.Machining.OfType<HardwareZone>().Select(z => (z.FromX, z.ToX, z.For));
    }
}
