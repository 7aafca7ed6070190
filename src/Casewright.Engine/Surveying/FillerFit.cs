using Casewright.Model.Measure;

namespace Casewright.Engine.Surveying;

/// <summary>A filler between a plumb case and a wall that is not.</summary>
/// <param name="Part">Id of the filler.</param>
/// <param name="IsLeft">Whether it is at the left end.</param>
/// <param name="Visible">Its visible width as designed, where the wall is innermost.</param>
/// <param name="Scribe">What is taken off it, by height from its foot.</param>
public sealed record FillerFit(string Part, bool IsLeft, Length Visible, ScribeTable Scribe)
{
    /// <summary>Narrowest gap between case and wall.</summary>
    public Length LeastGap => Scribe.Narrowest;

    /// <summary>Widest gap between case and wall.</summary>
    public Length WidestGap => Scribe.Widest;
}
