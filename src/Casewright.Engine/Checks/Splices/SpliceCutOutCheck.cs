using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints stay out of cut-outs and notches.</summary>
public sealed class SpliceCutOutCheck : SplicePlaceCheck
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-clear-of-cut-outs",
        "Distance of each joint line from cut-outs for outlets and registers and from notches.",
        "distance ≥ half the joint's length",
        "Common practice: never through a cut-out",
        Standing.CommonPractice);

    /// <inheritdoc/>
    protected override string Called => "the cut-out";

    /// <inheritdoc/>
    protected override Length Clear(CheckContext context, SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(spliced);
        return Length.Max(spliced.Reach, context.Job.Shop.Splicing.ClearOfDado);
    }

    /// <inheritdoc/>
    protected override IEnumerable<(Length From, Length To, string Name)> Things(SplicedPart spliced)
    {
        ArgumentNullException.ThrowIfNull(spliced);
        foreach (var machining in spliced.Part.Machining)
        {
            if (machining is CutOut cut)
                yield return (cut.X, cut.X + cut.LengthX, cut.For);
            else if (machining is Notch notch)
                yield return (notch.X, notch.X + notch.LengthX, notch.For);
        }
    }
}
