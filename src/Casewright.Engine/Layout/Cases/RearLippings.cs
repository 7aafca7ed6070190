using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Lippings on the rear edges of sides that a finished end shows: planed to the wall on site, so that the plies never do.</summary>
internal static class RearLippings
{
    private const string Suffix = "r";

    /// <summary>Whether a part is one.</summary>
    public static bool Is(Part part) => part.Role == PartRole.Nosing && part.Id.EndsWith(Suffix, StringComparison.Ordinal);

    /// <summary>Id of the side it is glued to.</summary>
    public static string SideOf(Part lip) => lip.Id[..^Suffix.Length];

    /// <summary>The rear lippings of a case.</summary>
    public static IEnumerable<Part> Of(CaseFigures box, IEnumerable<Part> parts) =>
        parts.Where(p => p.Role == PartRole.Side && Lippings.Of(box, p.Hand).Rear is not null).Select(side => Lip(box, side));

    private static Part Lip(CaseFigures box, Part side)
    {
        var run = box.Run;
        var lips = Lippings.Of(box, side.Hand);
        var length = Rule.Of(new DerivationInput("L", "length of the side", side.Length)).As(Dimensions.Length);
        var size = new PartSize(length, Rule.Of(Symbols.Thickness(run)).As(Dimensions.Width), PartMaker.Thickness(lips.Rear!));
        var left = side.Hand == Hand.Left ? box.X : box.XEnd - run.T;
        var place = Pose.UprightFacingRoom(run.Wall.Id, left, box.Foot, lips.SideRear);
        var lip = PartMaker.InCase(box, side.Id + Suffix, "rear lipping of " + side.Name, PartRole.Nosing, lips.Rear!, size, place, FaceView.HiddenStrip) with
        {
            FitOnSite = $"{LengthFormat.Usual(lips.Proud, run.Job.Units)} left on behind, planed to the wall",
        };
        return RakedStrips.Upright(box.Rake, lip);
    }
}
