using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Shop;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>One of several plans of equal cost and sheets.</summary>
/// <param name="Aim">What it is best at.</param>
/// <param name="Plan">The plan.</param>
public sealed record CutAlternative(LayoutAim Aim, CutPlan Plan)
{
    /// <summary>The alternatives in figures, the first as the one that the plan follows; those no better at their aim are left out.</summary>
    public static ValueList<LayoutChoice> Figures(IEnumerable<CutAlternative> alternatives)
    {
        LayoutChoice[] all =
        [
            .. alternatives.Index().Select(a => LayoutChoice.Of(
                a.Item.Plan, a.Item.Aim == LayoutAim.LargestOffcut ? SheetAim.LargestOffcut : SheetAim.FewestSettings, chosen: a.Index == 0)),
        ];
        return [.. all.Where(choice => choice.Chosen || choice.BeatsAtItsAim(all[0]))];
    }
}
