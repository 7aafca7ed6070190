using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Corners;

/// <summary>The panel on the front of an end case that the run on the next wall stands in front of: visible filler and a lap behind that run.</summary>
internal static class BlindPanel
{
    /// <summary>The panels of a case, one for each blind corner it reaches into.</summary>
    public static IEnumerable<Part> Of(CaseFigures box) => box.Blind.Select(b => Panel(box, b));

    private static Part Panel(CaseFigures box, BlindFigures blind)
    {
        var run = box.Run;
        var width = Rule.Of(new DerivationInput("f", "visible width in front of the blind part, as the filler of the other run", blind.Filler))
            .Plus(new("b", "lap behind the run that stands in front", BlindFigures.Lap(run.Job)));
        var size = new PartSize(
            Rule.Of(new CaseSymbols(box).H).Nearest(Dimensions.Length, run.Step), width.Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(run.Panel));
        var place = blind.AtRight
            ? Pose.UprightFacingRoom(run.Wall.Id, blind.Limit, box.Y, run.Run.Depth + run.T)
            : Pose.UprightFacingRoomFromRight(run.Wall.Id, blind.Limit, box.Y, run.Run.Depth + run.T);
        return PartMaker.InCase(box, box.Id + "-Q" + (blind.AtRight ? "R" : "L"), $"blind panel, case {box.Number}", PartRole.BlindPanel, run.Panel, size, place, FaceView.FrontOnly);
    }
}
