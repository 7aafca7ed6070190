using Casewright.Engine.Layout.Cases;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>
/// The raked top of a case: it lies over the uprights along the slope, both ends cut plumb and flush with the outsides of the sides.
/// Partitions and shelves that end under it are screwed through it before the case is stood up.
/// </summary>
internal static class RakedTop
{
    /// <summary>The top: W/cos θ on either face, and t·tan θ more over both for the plumb ends.</summary>
    public static Part Of(CaseFigures box, RakeFigures rake)
    {
        var run = box.Run;
        var length = RakedStrips.Length(rake, Rule.Of(new CaseSymbols(box).W), run.T).Nearest(Dimensions.Length, run.Step);
        var id = box.Id + "-T";
        var size = new PartSize(length, DepthRules.Level(run), PartMaker.Thickness(run.Panel));
        var lean = rake.Slope.Lean(run.T);
        var place = Pose.Level(run.Wall.Id, box.X, rake.Top(box.X), run.UprightFront);
        var faces = FaceView.Top(Exposure.Hidden);
        var part = PartMaker.InCase(box, id, $"raked top, case {box.Number}", PartRole.Top, run.Panel, size, place, faces);
        var (start, end) = rake.FallsRight ? (Face.Reference, Face.Opposite) : (Face.Opposite, Face.Reference);
        return part with
        {
            Hand = RakedStrips.HandOf(rake),
            Nosing = run.UprightNosing is null ? null : PartIds.Nosing(id),
            Place = place with { Origin = RakedStrips.Origin(rake, place, box.X, rake.Top(box.X), rake.FallsRight ? Length.Zero : lean), Tilt = rake.Slope },
            Machining =
            [
                new Bevel(RakedUprights.For, PartEdge.Start, start, lean),
                new Bevel(RakedUprights.For, PartEdge.End, end, lean),
                .. Grooves(box, rake, part),
                .. Screws(box, rake),
            ],
        };
    }

    /// <summary>The nosing of a raked top runs over the uprights too.</summary>
    public static Part Nosing(CaseFigures box, RakeFigures rake, Part top)
    {
        var run = box.Run;
        var length = RakedStrips.Length(rake, Rule.Of(new CaseSymbols(box).W), run.T).Nearest(Dimensions.Length, run.Step);
        var place = Pose.StripFromAbove(run.Wall.Id, box.X, rake.Top(box.X), run.CaseFront);
        return RakedStrips.Along(rake, NosingParts.Make(box, top, run.UprightNosing!, length, NosingParts.Flush(run), place), box.X, rake.Top(box.X));
    }

    /// <summary>Where a place of the room lies along the underside: on the falling side it begins t·tan θ from the end of the blank.</summary>
    private static Length OnUnderside(CaseFigures box, RakeFigures rake, Length x) =>
        rake.Slope.Along(x - box.X) + (rake.FallsRight ? rake.Slope.Lean(box.Run.T) : Length.Zero);

    private static IEnumerable<Machining> Grooves(CaseFigures box, RakeFigures rake, Part top)
    {
        var run = box.Run;
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
                Face.Opposite,
                run.UprightFront - run.BackFront,
                run.Tb + joinery.BackFit,
                joinery.GrooveDepth,
                Length.Max(Length.Zero, OnUnderside(box, rake, from)),
                Length.Min(top.Length, OnUnderside(box, rake, to)));
        }
    }

    /// <summary>Where partitions and shelves that end under the top are screwed through it.</summary>
    private static IEnumerable<Machining> Screws(CaseFigures box, RakeFigures rake)
    {
        for (var p = 1; p < box.Bays; p++)
            yield return Zone(box, rake, PartIds.Numbered(box.Id, "P", p), box.BayRight(p - 1), box.BayRight(p - 1) + box.Run.T);
        for (var shelf = 0; shelf < box.Fixed.Count; shelf++)
        {
            for (var bay = 0; bay < box.Bays; bay++)
            {
                if (RakedShelves.Reach(box, shelf, bay) != ShelfReach.CutShort)
                    continue;
                var upper = box.Fixed[shelf].Upper;
                var (above, below) = (rake.WhereUnder(upper, box.Run.T), rake.WhereUnder(upper - box.Run.T, box.Run.T));
                yield return Zone(box, rake, PartIds.InBay(box.Id, "F", shelf + 1, bay, box.Bays), Length.Min(above, below), Length.Max(above, below));
            }
        }
    }

    private static HardwareZone Zone(CaseFigures box, RakeFigures rake, string what, Length from, Length to) =>
        new(what, Face.Reference, OnUnderside(box, rake, from), OnUnderside(box, rake, to));
}
