using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Runs;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>The toe face between sides that run to the floor.</summary>
internal static class CaseToeFace
{
    /// <summary>The toe face of a case; nothing for other cases.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        if (!box.ToFloor)
            yield break;
        var run = box.Run;
        var length = Rule.Of(new CaseSymbols(box).W).Minus(Symbols.Thickness(run), 2).Nearest(Dimensions.Length, run.Step);
        var place = Pose.StripFromAbove(run.Wall.Id, box.BayLeft(0), run.BaseHeight, run.Run.Depth - run.Run.Base.Setback);
        var size = new PartSize(length, LadderBase.ToeHeight(run), PartMaker.Thickness(run.Base));
        yield return PartMaker.InCase(box, box.Id + "-Z", $"toe face, case {box.Number}", PartRole.ToeFace, run.Base, size, place, FaceView.FrontOnly) with
        {
            FitOnSite = LadderBase.FloorScribe(run),
        };
    }
}
