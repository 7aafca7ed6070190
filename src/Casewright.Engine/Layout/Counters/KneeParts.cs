using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Counters;

/// <summary>What carries a counter over a knee space: a cleat on the wall, one on each side against a wall or other casework, and an apron.</summary>
internal static class KneeParts
{
    /// <summary>Height of a cleat (60 mm, 2 1/2 in; common practice, no source).</summary>
    public static Length CleatHeight(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(2, 1, 2) : Length.FromMillimetres(60);

    /// <summary>Wall cleat, side cleats, apron.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        var run = box.Run;
        yield return Cleat(box, "Y", "wall cleat", Across(box), Pose.StripFromAbove(run.Wall.Id, box.X, box.YEnd, run.T));
        yield return Cleat(box, "YL", "left cleat", SideLength(run), Pose.ReturnFacingRight(run.Wall.Id, box.X + run.T, box.YEnd, SideFront(run)));
        yield return Cleat(box, "YR", "right cleat", SideLength(run), Pose.ReturnFacingLeft(run.Wall.Id, box.XEnd - run.T, box.YEnd, SideFront(run)));
        if (box.Tier.Counter is { } counter && counter.Design.Apron > Length.Zero)
        {
            var height = new DerivationInput("ap", $"height of the apron ({counter.Path}.apron)", counter.Design.Apron);
            var size = new PartSize(Across(box), Rule.Of(height).Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(run.Panel));
            var place = Pose.StripFromAbove(run.Wall.Id, box.X, box.YEnd, SideFront(run) + run.T);
            yield return PartMaker.InCase(box, box.Id + "-A", $"apron, knee space {box.Number}", PartRole.Apron, run.Panel, size, place, FaceView.Front);
        }
    }

    private static Derivation Across(CaseFigures box) => Rule.Of(new DerivationInput("W", $"width of the knee space {box.Number}", box.Width)).Down(Dimensions.Length, box.Run.Step);

    // From the wall cleat to behind the apron, which stands back by a thickness from the front of the cases.
    private static Length SideFront(RunFigures run) => run.Run.Depth - (run.T * 2);

    private static Derivation SideLength(RunFigures run) => Rule.Of(Symbols.Depth(run)).Minus(Symbols.Thickness(run), 3).Down(Dimensions.Length, run.Step);

    private static Part Cleat(CaseFigures box, string family, string name, Derivation length, Placement place)
    {
        var height = new DerivationInput("y", "height of a cleat", CleatHeight(box.Run));
        var size = new PartSize(length, Rule.Of(height).Nearest(Dimensions.Width, box.Run.Step), PartMaker.Thickness(box.Run.Panel));
        return PartMaker.InCase(box, $"{box.Id}-{family}", $"{name}, knee space {box.Number}", PartRole.Cleat, box.Run.Panel, size, place, FaceView.FrontOnly);
    }
}
