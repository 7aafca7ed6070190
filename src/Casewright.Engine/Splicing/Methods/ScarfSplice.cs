using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>A bevel over eight thicknesses, glued face to face.</summary>
public sealed class ScarfSplice : SpliceTechnique
{
    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.Scarf;

    /// <inheritdoc/>
    public override string Name => "scarfs";

    /// <inheritdoc/>
    public override StrengthClass Strength => StrengthClass.AsPanel;

    /// <inheritdoc/>
    public override double UsualMinutes => 40;

    /// <inheritdoc/>
    public override double JigMinutes => 60;

    /// <inheritdoc/>
    public override int LongClamps => 0;

    /// <inheritdoc/>
    public override int FaceClamps => 4;

    /// <inheritdoc/>
    public override string Marks => "a long feathered line on each face";

    /// <inheritdoc/>
    public override string TypicalFailure => "the bevels slide under pressure";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(12);

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(25);

    /// <inheritdoc/>
    public override Length Overlap(Length thickness) => thickness * 8;

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part) => HoldingMethod.FaceClamps;
}
