using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>A butt joint with a plate glued over it on a hidden face, 150 mm and more on each side.</summary>
public sealed class BackedButtSplice : SpliceTechnique
{
    private static readonly Length s_plateEachSide = Length.FromMillimetres(150);

    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.BackedButt;

    /// <inheritdoc/>
    public override string Name => "butt joints with a backing plate";

    /// <inheritdoc/>
    public override StrengthClass Strength => StrengthClass.Braced;

    /// <inheritdoc/>
    public override double UsualMinutes => 12;

    /// <inheritdoc/>
    public override double JigMinutes => 5;

    /// <inheritdoc/>
    public override int LongClamps => 0;

    /// <inheritdoc/>
    public override int FaceClamps => 4;

    /// <inheritdoc/>
    public override string Marks => "a plate on one face; the neighbour needs room for it";

    /// <inheritdoc/>
    public override string TypicalFailure => "the plate fouls the neighbour";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(3);

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(60);

    /// <inheritdoc/>
    public override bool NeedsHiddenFace => true;

    /// <inheritdoc/>
    public override Length ReachOnFace(Length thickness, SpliceRules rules) => s_plateEachSide;

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part) => HoldingMethod.FaceClamps;
}
