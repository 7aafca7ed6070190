using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>
/// A plain butt joint whose ends lie on the part that carries or covers them: backs on a shelf, trim over an upright.
/// Its work is that of fitting the two pieces, and is not counted as a joint's.
/// </summary>
public sealed class CoveredButtSplice : SpliceTechnique
{
    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.CoveredButt;

    /// <inheritdoc/>
    public override string Name => "covered butt joints";

    /// <inheritdoc/>
    public override StrengthClass Strength => StrengthClass.PlacesOnly;

    /// <inheritdoc/>
    public override double UsualMinutes => 0;

    /// <inheritdoc/>
    public override double JigMinutes => 0;

    /// <inheritdoc/>
    public override int LongClamps => 0;

    /// <inheritdoc/>
    public override int FaceClamps => 0;

    /// <inheritdoc/>
    public override string Marks => "a line where nothing covers it";

    /// <inheritdoc/>
    public override string TypicalFailure => "an end that misses its bearing";

    /// <inheritdoc/>
    public override Length Thinnest => Length.FromMillimetres(1);

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(60);

    /// <inheritdoc/>
    public override HoldingMethod Holding(Part part) => HoldingMethod.Carried;
}
