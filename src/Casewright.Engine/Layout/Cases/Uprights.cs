using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Fronts;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Sides and partitions with their dados, grooves, rabbets, pin rows and toe notches.</summary>
internal static class Uprights
{
    /// <summary>Left side, partitions from left to right, right side.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        yield return Side(box, Hand.Left);
        for (var p = 1; p < box.Bays; p++)
            yield return Partition(box, p);
        yield return Side(box, Hand.Right);
    }

    private static Part Side(CaseFigures box, Hand hand)
    {
        var run = box.Run;
        var left = hand == Hand.Left;
        var symbols = new CaseSymbols(box);
        var length = Rule.Of(symbols.H).PlusAny(symbols.B);
        if (box.Rake is not null)
            length = RakedUprights.UnderTop(length, box, left ? box.X : box.XEnd - run.T);
        else if (run.Joinery.TopOverSides)
            length = length.Minus(Symbols.Thickness(run));
        var lips = Lippings.Of(box, hand);
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), DepthRules.Side(run, lips), PartMaker.Thickness(run.Panel));
        var front = run.UprightFront - lips.FrontDepth;
        var place = left
            ? Pose.LeftSide(run.Wall.Id, box.X + run.T, box.Foot, front)
            : Pose.FacingLeft(run.Wall.Id, box.XEnd - run.T, box.Foot, front);
        var outside = Exposures.SideOutside(box, hand);
        var part = PartMaker.InCase(box, box.Id + (left ? "-L" : "-R"), $"{(left ? "left" : "right")} side, case {box.Number}", PartRole.Side, run.Panel, size, place, FaceView.Side(outside));
        return part with
        {
            Hand = hand,
            Machining =
            [
                .. SideMachining(box, hand, part with { Width = DepthRules.Side(run).Result }).Select(m => lips.Moved(m, part.Width)).OfType<Machining>(),
                .. RakedUprights.Bevel(box, part),
            ],
            Nosing = run.UprightNosing is null && lips.Front is null ? null : PartIds.Nosing(part.Id),
        };
    }

    private static IEnumerable<Machining> SideMachining(CaseFigures box, Hand hand, Part side)
    {
        var bay = hand == Hand.Left ? 0 : box.Bays - 1;
        foreach (var dado in Dados(box, FixedPanels.InSides(box), bay, Face.Reference, box.Foot, side, atLeft: hand == Hand.Left))
            yield return dado;
        if (BackSeat(box, side, hand) is { } seat)
            yield return seat;
        foreach (var row in PinRows.OnSide(box))
            yield return row;
        if (ToeNotch(box) is { } notch)
            yield return notch;
        foreach (var zone in FrontHardware(box, bay, Face.Reference, box.Foot, side, hand == Hand.Left))
            yield return zone;
        foreach (var (id, lower, upper) in NailerParts.MeetingSides(box, hand))
        {
            var face = side.OppositeFace == Exposure.Hidden ? Face.Opposite : Face.Reference;
            yield return new HardwareZone(id, face, lower - box.Foot, Length.Min(side.Length, upper - box.Foot));
        }
    }

    private static Part Partition(CaseFigures box, int number)
    {
        var run = box.Run;
        var symbols = new CaseSymbols(box);
        var length = box.Rake is null
            ? Rule.Of(symbols.H).Minus(Symbols.Thickness(run), 2).MinusAny(symbols.Raise).Plus(Symbols.Dado(run), 2)
            : RakedUprights.UnderTop(Rule.Of(symbols.H).Minus(Symbols.Thickness(run)).MinusAny(symbols.Raise).Plus(Symbols.Dado(run)), box, box.BayRight(number - 1));
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), DepthRules.Partition(run), PartMaker.Thickness(run.Panel));
        var foot = box.BottomUpper - run.Joinery.DadoDepth;
        var place = Pose.FacingLeft(run.Wall.Id, box.BayRight(number - 1), foot, run.UprightFront);
        var part = PartMaker.InCase(box, PartIds.Numbered(box.Id, "P", number), $"partition {number}, case {box.Number}", PartRole.Partition, run.Panel, size, place, FaceView.Partition);
        return part with
        {
            Machining = [.. PartitionMachining(box, number, foot, part), .. RakedUprights.Bevel(box, part)],
            Nosing = run.UprightNosing is null ? null : PartIds.Nosing(part.Id),
        };
    }

    private static IEnumerable<Machining> PartitionMachining(CaseFigures box, int number, Length foot, Part partition)
    {
        foreach (var (face, bay) in new[] { (Face.Reference, number - 1), (Face.Opposite, number) })
        {
            foreach (var dado in Dados(box, FixedPanels.Shelves(box), bay, face, foot, partition, atLeft: face == Face.Opposite))
                yield return dado;
        }

        foreach (var row in PinRows.OnPartition(box, foot))
            yield return row;
        foreach (var zone in FrontHardware(box, number - 1, Face.Reference, foot, partition, leftEdge: false))
            yield return zone;
        foreach (var zone in FrontHardware(box, number, Face.Opposite, foot, partition, leftEdge: true))
            yield return zone;
    }

    /// <summary>Hinge plates of the doors that hang on this face, and drawer slides.</summary>
    private static IEnumerable<Machining> FrontHardware(CaseFigures box, int bay, Face face, Length foot, Part upright, bool leftEdge) =>
    [
        .. DoorParts.HungOn(box, bay, leftEdge).SelectMany(leaf => Hinges.Plates(leaf, face, foot, upright)),
        .. DrawerParts.Slides(box, bay, face, foot, upright),
    ];

    private static IEnumerable<Dado> Dados(CaseFigures box, IEnumerable<FixedPanel> panels, int bay, Face face, Length foot, Part upright, bool atLeft)
    {
        var run = box.Run;
        if (run.Joinery.DadoDepth == Length.Zero)
            yield break;
        foreach (var panel in panels.Where(p => RakedShelves.IsHoused(box, p.Shelf, bay, atLeft)))
        {
            var x = Length.Min(panel.Upper - run.T - foot, upright.Length - run.T);
            var from = Length.Max(Length.Zero, run.UprightFront - panel.Front);
            var to = Length.Min(upright.Width, run.UprightFront - panel.Front + panel.Depth);
            yield return new(panel.InBay(bay), face, x, run.T, run.Joinery.DadoDepth, from, to);
        }
    }

    private static Machining? BackSeat(CaseFigures box, Part side, Hand hand)
    {
        var run = box.Run;
        var joinery = run.Joinery;
        var panels = box.BackPanels;
        var id = run.Back is null ? "" : BackParts.Id(box, hand == Hand.Left ? 0 : panels.Count - 1, panels.Count);
        switch (run.Run.Back.Kind)
        {
            case BackKind.Captured:
                var from = Length.Max(Length.Zero, box.BottomUpper - joinery.GrooveDepth - box.Foot);
                var to = box.Rake is null ? Length.Min(side.Length, box.TopUnder + joinery.GrooveDepth - box.Foot) : side.Length;
                return new Groove(id, Face.Reference, run.UprightFront - run.BackFront, run.Tb + joinery.BackFit, joinery.GrooveDepth, from, to);
            case BackKind.Rabbeted:
                return new Rabbet(id, Face.Reference, PartEdge.Opposite, run.Tb + joinery.BackFit, run.RabbetDepth);
            default:
                return null;
        }
    }

    /// <summary>The toe notch reaches as far as the toe face stands back; nosing on the uprights ends above it.</summary>
    private static Notch? ToeNotch(CaseFigures box)
    {
        var depth = box.Run.Run.Base.Setback - box.Run.Tf - box.Run.UprightEdge;
        return box.ToFloor && depth > Length.Zero ? new("toe space", Length.Zero, Length.Zero, box.Run.BaseHeight, depth) : null;
    }
}
