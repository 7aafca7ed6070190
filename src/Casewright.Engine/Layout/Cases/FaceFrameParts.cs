using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Cases;

/// <summary>
/// Face frames: end stiles of the frame's full height, rails through between them, mid stiles between the rails over the middle of
/// each partition. The top edge of the bottom rail is flush with the bottom panel.
/// </summary>
internal static class FaceFrameParts
{
    /// <summary>Stiles from left to right, then the top and the bottom rail.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        if (box.Run.Frame is not { } frame)
            yield break;
        if (frame.JointStile is not null)
        {
            // The members within a case belong to the frame of the run too: they are glued up with it.
            for (var p = 1; p < box.Bays; p++)
                yield return MidStile(box, frame, p) with { Case = box.Run.Run.Id };
            foreach (var rail in MidRails(box, frame))
                yield return rail with { Case = box.Run.Run.Id };
            yield break;
        }

        var (left, right) = Overlaps(box);
        yield return EndStile(box, frame, Hand.Left, box.X - left, left);
        for (var p = 1; p < box.Bays; p++)
            yield return MidStile(box, frame, p);
        yield return EndStile(box, frame, Hand.Right, box.XEnd + right - frame.EndStileWidth, right);
        yield return Rail(box, frame, "HT", "top rail", frame.TopRail, box.YEnd - frame.TopRailWidth);
        yield return Rail(box, frame, "HB", "bottom rail", frame.BottomRail, box.Y);
        foreach (var rail in MidRails(box, frame))
            yield return rail;
    }

    /// <summary>Rails between the stiles in front of fixed shelves at which doors end, from the bottom up.</summary>
    private static IEnumerable<Part> MidRails(CaseFigures box, FrameMaterials frame)
    {
        if (frame.MidRail is not { } board)
            yield break;
        var number = 0;
        for (var shelf = 0; shelf < box.Fixed.Count; shelf++)
        {
            if (!FaceFrames.HasRail(box, shelf))
                continue;
            number++;
            for (var bay = 0; bay < box.Bays; bay++)
            {
                var length = Rule.Of(new DerivationInput("o", "width of the opening in the frame", Opening(box, bay))).Nearest(Dimensions.Length, box.Run.Step);
                var place = Pose.StripFromAbove(box.Run.Wall.Id, FaceFrames.Left(box, bay), box.Fixed[shelf].Upper, box.Run.Run.Depth);
                var name = string.Create(CultureInfo.InvariantCulture, $"mid rail {number}{(box.Bays == 1 ? "" : $" bay {bay + 1}")}, case {box.Number}");
                yield return Make(box, PartIds.InBay(box.Id, "HM", number, bay, box.Bays), name, PartRole.Rail, board, length, place);
            }
        }
    }

    /// <summary>How far the frame laps past the case on either side before it is trimmed.</summary>
    public static (Length Left, Length Right) Overlaps(CaseFigures box)
    {
        var design = box.Run.Run.FaceFrame;
        return (box.IsFirst ? box.Run.Left.FrameOverlap(design) : Length.Zero, box.IsLast ? box.Run.Right.FrameOverlap(design) : Length.Zero);
    }

    /// <summary>Clear width of the frame opening in front of a bay.</summary>
    public static Length Opening(CaseFigures box, int bay) => FaceFrames.Right(box, bay) - FaceFrames.Left(box, bay);

    /// <summary>Left edge of the stile over a partition.</summary>
    public static Length MidLeft(CaseFigures box, FrameMaterials frame, int partition) =>
        box.BayRight(partition - 1) + (box.Run.T / 2) - (frame.MidStile!.BoardWidth!.Value / 2);

    private static Part EndStile(CaseFigures box, FrameMaterials frame, Hand hand, Length left, Length overlap)
    {
        var length = Rule.Of(new CaseSymbols(box).H).Nearest(Dimensions.Length, box.Run.Step);
        var id = box.Id + (hand == Hand.Left ? "-VL" : "-VR");
        var name = $"{(hand == Hand.Left ? "left" : "right")} stile, case {box.Number}";
        var part = Make(box, id, name, PartRole.Stile, frame.EndStile, length, Pose.UprightFacingRoom(box.Run.Wall.Id, left, box.Y, box.Run.Run.Depth));
        return overlap == Length.Zero ? part : part with { FitOnSite = $"{LengthFormat.Usual(overlap, box.Run.Job.Units)} past the finished end, trimmed flush after gluing" };
    }

    private static Part MidStile(CaseFigures box, FrameMaterials frame, int partition)
    {
        var length = Rule.Of(new CaseSymbols(box).H)
            .Minus(Symbols.BoardWidth("wt", frame.TopRail))
            .Minus(Symbols.BoardWidth("wb", frame.BottomRail))
            .Nearest(Dimensions.Length, box.Run.Step);
        var place = Pose.UprightFacingRoom(box.Run.Wall.Id, MidLeft(box, frame, partition), box.Y + frame.BottomRailWidth, box.Run.Run.Depth);
        var name = string.Create(CultureInfo.InvariantCulture, $"mid stile {partition}, case {box.Number}");
        return Make(box, PartIds.Numbered(box.Id, "V", partition), name, PartRole.Stile, frame.MidStile!, length, place);
    }

    private static Part Rail(CaseFigures box, FrameMaterials frame, string family, string name, Material board, Length lower)
    {
        var (left, right) = Overlaps(box);
        var rule = Rule.Of(new CaseSymbols(box).W);
        if (left + right > Length.Zero)
            rule = rule.Plus(new("v", $"lap past a finished end ({box.Run.Path}.faceFrame.finishedOverlap)", Length.Max(left, right)), left > Length.Zero && right > Length.Zero ? 2 : 1);
        var length = rule.Minus(Symbols.BoardWidth("ws", frame.EndStile), 2).Nearest(Dimensions.Length, box.Run.Step);
        var place = Pose.StripFromBelow(box.Run.Wall.Id, box.X - left + frame.EndStileWidth, lower, box.Run.Run.Depth);
        return Make(box, $"{box.Id}-{family}", $"{name}, case {box.Number}", PartRole.Rail, board, length, place);
    }

    private static Part Make(CaseFigures box, string id, string name, PartRole role, Material board, Derivation length, Placement place) =>
        PartMaker.InCase(box, id, name, role, board, new(length, PartMaker.BoardWidth(board), PartMaker.Thickness(board)), place, FaceView.FrontOnly);
}
