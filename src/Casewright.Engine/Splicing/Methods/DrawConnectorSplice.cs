using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>Loose tenons drawn closed by hidden connectors; they need one face that nobody sees, and free the station at once.</summary>
public sealed class DrawConnectorSplice : LooseTenonSplice
{
    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.TenonsAndConnectors;

    /// <inheritdoc/>
    public override string Name => "tenons with draw connectors";

    /// <inheritdoc/>
    public override double UsualMinutes => 28;

    /// <inheritdoc/>
    public override double JigMinutes => 40;

    /// <inheritdoc/>
    public override int LongClamps => 0;

    /// <inheritdoc/>
    public override int FaceClamps => 2;

    /// <inheritdoc/>
    public override string Marks => "slots or holes on one face";

    /// <inheritdoc/>
    public override string TypicalFailure => "hardware hit by later drilling; blow-out near an edge";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(18);

    /// <inheritdoc/>
    public override bool NeedsHiddenFace => true;

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part) => HoldingMethod.DrawConnectors;
}
