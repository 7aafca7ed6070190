using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>Cases that a pull tips over before they are fixed.</summary>
public sealed class TipOverCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "tip-over-before-fixing",
        "Level pull that tips each empty case forward before it is fixed.",
        "P₀ = W d/2y",
        "Moments about the front lower edge; a pull of 50 lbf at 60 in is common practice",
        Standing.CommonPractice)
    {
        Limits = [new("pull", l => l.TipPull, 222.4, "N", "50 lbf, common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Cases.Select(box => One(context, box));
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        var weight = UprightLoads.OwnMass(context, box) * Shelf.Gravity;
        var height = Length.Min(context.Limits.TipPullHeight, box.Height).Metres;
        var pull = TipOver.PullThatTips(weight, box.Depth.Metres, height);
        var say = context.Say;
        var passes = pull >= context.Limits.TipPull;
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            box.Id,
            $"Unfixed and empty, case {box.Id} tips from a pull of {say.Force(pull)} at {say.Size(height)}.",
            new(pull, context.Limits.TipPull, "N", [new("weight", Say.Number(weight, 0), "N"), new("depth", Say.Number(box.Depth.Metres * 1000, 0), "mm")]),
            "Do not let go of it, load it or leave it alone before it is screwed to the structure. Local codes and product rules come first.");
    }
}
