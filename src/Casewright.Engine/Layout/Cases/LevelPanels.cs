using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Tops and bottoms with the dados of partitions and the grooves of captured backs.</summary>
internal static class LevelPanels
{
    /// <summary>The top: between the sides, or over them; along the slope under a sloping ceiling.</summary>
    public static Part Top(CaseFigures box)
    {
        if (box.Rake is { } rake)
            return RakedTop.Of(box, rake);
        var over = box.Run.Joinery.TopOverSides;
        var part = Panel(box, "T", "top", PartRole.Top, over ? Over(box) : Between(box), over ? box.X : HousedLeft(box), box.YEnd, FaceView.Top(Exposures.TopUpper(box)));
        return part with { Machining = [.. Machine(box, part, Face.Opposite), .. over ? [] : Lippings.Corners(box, part, atLeft: true, atRight: true)] };
    }

    /// <summary>The bottom: between the sides. It carries the derivations of the case itself.</summary>
    public static Part Bottom(CaseFigures box)
    {
        var part = Panel(box, "B", "bottom", PartRole.Bottom, Between(box), HousedLeft(box), box.BottomUpper, FaceView.Bottom);
        return part with
        {
            Machining = [.. Machine(box, part, Face.Reference), .. Lippings.Corners(box, part, atLeft: true, atRight: true)],
            Derivations = [.. part.Derivations, .. box.Column.Derivations],
        };
    }

    /// <summary>W − 2t + 2a: a panel housed in both sides.</summary>
    public static Rule Between(CaseFigures box) =>
        Rule.Of(new CaseSymbols(box).W).Minus(Symbols.Thickness(box.Run), 2).Plus(Symbols.Dado(box.Run), 2);

    private static Rule Over(CaseFigures box) => Rule.Of(new CaseSymbols(box).W);

    private static Length HousedLeft(CaseFigures box) => box.BayLeft(0) - box.Run.Joinery.DadoDepth;

    private static Part Panel(CaseFigures box, string family, string name, PartRole role, Rule length, Length left, Length upper, FaceView faces)
    {
        var run = box.Run;
        var id = $"{box.Id}-{family}";
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), DepthRules.Level(run), PartMaker.Thickness(run.Panel));
        var place = Pose.Level(run.Wall.Id, left, upper, run.UprightFront);
        return PartMaker.InCase(box, id, $"{name}, case {box.Number}", role, run.Panel, size, place, faces) with
        {
            Nosing = run.UprightNosing is null ? null : PartIds.Nosing(id),
        };
    }

    private static IEnumerable<Machining> Machine(CaseFigures box, Part panel, Face face)
    {
        var run = box.Run;
        var left = panel.Place.Origin.X;
        if (run.Joinery.DadoDepth > Length.Zero)
        {
            var depth = Length.Min(panel.Width, DepthRules.Partition(run).Result);
            for (var p = 1; p < box.Bays; p++)
                yield return new Dado(PartIds.Numbered(box.Id, "P", p), face, box.BayRight(p - 1) - left, run.T, run.Joinery.DadoDepth, Length.Zero, depth);
        }

        if (run.Run.Back.Kind != BackKind.Captured)
            yield break;
        var joinery = run.Joinery;
        var panels = box.BackPanels;
        for (var i = 0; i < panels.Count; i++)
        {
            var from = i == 0 ? box.BayLeft(0) - joinery.GrooveDepth : BackSpan.Left(box, panels[i].First);
            var to = i == panels.Count - 1 ? box.BayRight(box.Bays - 1) + joinery.GrooveDepth : BackSpan.Left(box, panels[i + 1].First);
            yield return new Groove(
                BackParts.Id(box, i, panels.Count),
                face,
                run.UprightFront - run.BackFront,
                run.Tb + joinery.BackFit,
                joinery.GrooveDepth,
                Length.Max(Length.Zero, from - left),
                Length.Min(panel.Length, to - left));
        }
    }
}
