using Casewright.Engine.Layout.Figures;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>Who sees the faces that depend on what stands beside or above a case.</summary>
internal static class Exposures
{
    /// <summary>
    /// The outside of a side shows only at a finished end without an applied panel; against a wall, other casework, the next case of
    /// the run or a panel it is hidden. Beside a knee space it shows.
    /// </summary>
    public static Exposure SideOutside(CaseFigures box, Hand hand)
    {
        var atEnd = hand == Hand.Left ? box.IsFirst : box.IsLast;
        var end = hand == Hand.Left ? box.Run.Left : box.Run.Right;
        var knee = box.Tier.Index == 0 && (hand == Hand.Left ? box.Column.OpenOnLeft : box.Column.OpenOnRight);
        return knee || (atEnd && end.SideShows) ? Exposure.Shows : Exposure.Hidden;
    }

    /// <summary>The upper face of a top shows only where no counter and no case as deep lies on it, and no higher than eye height.</summary>
    public static Exposure TopUpper(CaseFigures box) =>
        box.Rake is null && box.Tier.Counter is null && (box.IsTopTier || box.Deeper) && box.YEnd <= RunFigures.EyeHeight ? Exposure.Shows : Exposure.Hidden;
}
