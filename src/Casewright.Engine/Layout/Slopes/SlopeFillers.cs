using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>Strips that close the gap between raked tops and the sloping ceiling, scribed to it: one over each raked case.</summary>
internal static class SlopeFillers
{
    /// <summary>The strips from left to right; none where the design asks for none.</summary>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        if (run.SlopeFiller is null)
            yield break;
        var number = 0;
        foreach (var box in cases)
        {
            if (box.Rake is { } rake)
                yield return Over(box, rake, ++number);
        }
    }

    private static Part Over(CaseFigures box, RakeFigures rake, int number)
    {
        var (run, material) = (box.Run, box.Run.SlopeFiller!);
        var gap = run.Run.Head.SlopeGap ?? run.Run.Head.Gap ?? Length.Zero;
        var width = Rule.Of(new("gk", "gap under the slope, square to it: gap·cos θ", rake.Slope.Level(gap + rake.Lowered))).Plus(Symbols.Scribe(run)).Nearest(Dimensions.Width, run.Step);
        var length = RakedStrips.Length(rake, Rule.Of(new CaseSymbols(box).W), width.Result).Nearest(Dimensions.Length, run.Step);
        var place = Pose.StripFromBelow(run.Wall.Id, box.X, rake.Top(box.X), run.Run.Depth);
        var size = new PartSize(length, width, PartMaker.Thickness(material));
        var part = PartMaker.InRun(run, PartIds.Numbered(run.Letters, "XS", number), $"slope filler, case {box.Number}", PartRole.Filler, material, size, place, FaceView.FrontOnly);
        return RakedStrips.Along(rake, part, box.X, rake.Top(box.X)) with
        {
            FitOnSite = $"{LengthFormat.Usual(run.Joinery.ScribeAllowance, run.Job.Units)} left on along the upper edge, scribed to the sloping ceiling",
        };
    }
}
