using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints keep clear of dados.</summary>
public sealed class SpliceDadoCheck : SplicePlaceCheck
{
    private static readonly Length BeyondTenon = Length.FromMillimetres(5);

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-clear-of-dado",
        "Distance of each joint line from the nearest edge of a dado.",
        "distance ≥ the shop's clearance, and ≥ half the joint's length + 5 mm",
        "Common practice: half the tenon and 5 mm, at least 30 mm",
        Standing.CommonPractice);

    /// <inheritdoc/>
    protected override string Called => "the dado";

    /// <inheritdoc/>
    protected override Length Clear(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        return Length.Max(context.Job.Shop.Splicing.ClearOfDado, spliced.Reach + BeyondTenon);
    }

    /// <inheritdoc/>
    protected override IEnumerable<(Length From, Length To, string Name)> Things(SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(spliced);
        return spliced.Part.Machining.OfType<Dado>().Select(d => (d.X, d.X + d.Width, d.For));
    }
}
