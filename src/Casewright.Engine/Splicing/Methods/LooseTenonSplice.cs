using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>Loose tenons in mortises of both ends, closed with clamps until the glue has cured.</summary>
public class LooseTenonSplice : SpliceTechnique
{
    /// <summary>Narrow parts with a covered front edge can be drawn together by pinch dogs in their edges up to this width.</summary>
    private static readonly Length s_dogWidth = Length.FromMillimetres(200);

    /// <summary>Longest part that usual bar clamps span end to end.</summary>
    private static readonly Length s_clampLength = Length.FromMillimetres(2400);

    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.LooseTenons;

    /// <inheritdoc/>
    public override string Name => "loose tenons";

    /// <inheritdoc/>
    public override StrengthClass Strength => StrengthClass.Braced;

    /// <inheritdoc/>
    public override double UsualMinutes => 26;

    /// <inheritdoc/>
    public override double JigMinutes => 25;

    /// <inheritdoc/>
    public override int LongClamps => 2;

    /// <inheritdoc/>
    public override int FaceClamps => 4;

    /// <inheritdoc/>
    public override string Marks => "no marks; a hairline under clear finish";

    /// <inheritdoc/>
    public override string TypicalFailure => "a step from mixed reference faces; end grain starved of glue";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(15);

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(30);

    /// <inheritdoc/>
    public override Length Reach(Length thickness, SpliceRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return rules.TenonEmbedment;
    }

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Width <= s_dogWidth && part.Nosing is not null)
            return HoldingMethod.PinchDogs;
        return part.Length <= s_clampLength ? HoldingMethod.EndClamps : HoldingMethod.SpreaderAgainstStop;
    }
}
