using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>A full-width loose tongue of plywood or cross grain, stopped short of a bare edge.</summary>
public sealed class SplineSplice : LooseTenonSplice
{
    private static readonly Length s_depth = Length.FromMillimetres(12);

    /// <inheritdoc/>
    public override SpliceMethod Method => SpliceMethod.Spline;

    /// <inheritdoc/>
    public override string Name => "splines";

    /// <inheritdoc/>
    public override double UsualMinutes => 24;

    /// <inheritdoc/>
    public override double JigMinutes => 20;

    /// <inheritdoc/>
    public override string Marks => "the groove shows on the edges unless it is stopped";

    /// <inheritdoc/>
    public override string TypicalFailure => "a swollen spline lifts the face";

    /// <inheritdoc/>
    public override Length Thickest => Length.FromMillimetres(25);

    /// <inheritdoc/>
    public override Length Reach(Length thickness, SpliceRules rules) => s_depth;
}
