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
        "Level pull that tips each empty case forward before it is fixed; low and hung cases are left out.",
        "P₀ = W d/2y",
        "Moments about the front lower edge; a pull of 50 lbf at 60 in is common practice; what is under 27 in high is left out, as in the scope of ASTM F2057-23 (consumer safety guidance, read)",
        Standing.CommonPractice)
    {
        Limits = [new("pull", l => l.TipPull, 222.4, "N", "50 lbf, common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    /// <summary>Whether the top of a case is under 27 in (686 mm) from the floor: nobody is hurt by its tipping.</summary>
    internal static bool IsLow(CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return box.Y + box.Height < Length.FromInches(27);
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        if (IsLow(box))
            return Rule(context, Severity.Pass, box.Id, $"Case {box.Id} ends {context.Say.Size(box.Y + box.Height)} from the floor, too low to hurt anyone by tipping.");
        if (context.Run(box.Run)?.Bridge is not null)
            return Rule(context, Severity.Pass, box.Id, $"Case {box.Id} is hung between its neighbours: hold it up until it is screwed to them and to its cleat.");

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
