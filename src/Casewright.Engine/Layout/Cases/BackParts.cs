using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Backs: one to a case, or several that meet on partitions.</summary>
internal static class BackParts
{
    /// <summary>C3-K, or C3-K2 for the second of several panels.</summary>
    public static string Id(CaseFigures box, int panel, int panels) => panels == 1 ? box.Id + "-K" : PartIds.Numbered(box.Id, "K", panel + 1);

    /// <summary>The backs of a case from left to right.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        var panels = box.BackPanels;
        for (var i = 0; i < panels.Count; i++)
            yield return Panel(box, panels[i], i, panels.Count);
    }

    private static Part Panel(CaseFigures box, (int First, int Last) bays, int index, int count)
    {
        var run = box.Run;
        var size = new PartSize(
            BackSpan.Height(box, bays.First, bays.Last).Down(Dimensions.Length, run.Step),
            BackSpan.Of(box, bays.First, bays.Last).Down(Dimensions.Width, run.Step),
            PartMaker.Thickness(run.Back!));
        var place = Pose.UprightFacingRoom(run.Wall.Id, BackSpan.Left(box, bays.First), BackSpan.Foot(box), run.BackFront);
        var name = count == 1 ? $"back, case {box.Number}" : $"back {index + 1}, case {box.Number}";
        return RakedStrips.Upright(box.Rake, PartMaker.InCase(box, Id(box, index, count), name, PartRole.Back, run.Back!, size, place, FaceView.FrontOnly));
    }
}
