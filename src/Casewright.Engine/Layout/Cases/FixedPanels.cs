using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Cases;

/// <summary>A panel that is housed in the uprights, and how it meets them. Ids differ from bay to bay, heights do not.</summary>
/// <param name="Upper">Its upper face above the highest floor point.</param>
/// <param name="Front">Its front edge from the wall, nosing not counted.</param>
/// <param name="Depth">Its finished width.</param>
/// <param name="InBay">Its id in a bay.</param>
/// <param name="Shelf">Which fixed shelf it is, from 0 at the bottom; null for bottom and top.</param>
internal sealed record FixedPanel(Length Upper, Length Front, Length Depth, Func<int, string> InBay, int? Shelf = null);

/// <summary>The panels that are housed in the uprights of a case.</summary>
internal static class FixedPanels
{
    /// <summary>Fixed shelves, from the bottom up.</summary>
    public static IEnumerable<FixedPanel> Shelves(CaseFigures box)
    {
        return box.Fixed.Select((level, i) => new FixedPanel(level.Upper, box.Run.ShelfFront - box.ShelfSetback(i), DepthRules.FixedShelf(box.Run, box.ShelfSetback(i)).Result, bay => PartIds.InBay(box.Id, "F", i + 1, bay, box.Bays), i));
    }

    /// <summary>What is housed in the sides: the bottom, the fixed shelves and a top between the sides.</summary>
    public static IEnumerable<FixedPanel> InSides(CaseFigures box)
    {
        var depth = DepthRules.Level(box.Run).Result;
        yield return new(box.BottomUpper, box.Run.UprightFront, depth, _ => box.Id + "-B");
        foreach (var shelf in Shelves(box))
            yield return shelf;
        if (!box.TopOver)
            yield return new(box.YEnd, box.Run.UprightFront, depth, _ => box.Id + "-T");
    }
}
