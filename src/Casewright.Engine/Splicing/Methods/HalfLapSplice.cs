using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>Each end halved over five thicknesses (four to six are usual) and glued face to face.</summary>
public sealed class HalfLapSplice : SpliceTechnique
{
    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.HalfLap;

    /// <inheritdoc/>
    public override string Name => "half-laps";

    /// <inheritdoc/>
    public override StrengthClass Strength => StrengthClass.Braced;

    /// <inheritdoc/>
    public override double UsualMinutes => 28;

    /// <inheritdoc/>
    public override double JigMinutes => 30;

    /// <inheritdoc/>
    public override int LongClamps => 0;

    /// <inheritdoc/>
    public override int FaceClamps => 4;

    /// <inheritdoc/>
    public override string Marks => "a line on each face, apart from each other";

    /// <inheritdoc/>
    public override string TypicalFailure => "a lap too thick or too thin; no pressure on the ends";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(18);

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(30);

    /// <inheritdoc/>
    public override Length Overlap(Length thickness) => thickness * 5;

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part) => HoldingMethod.FaceClamps;
}
