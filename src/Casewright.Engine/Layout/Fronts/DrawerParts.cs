using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>Drawers: a front, and a box of two sides with front and back between them and a bottom in a groove.</summary>
internal static class DrawerParts
{
    private static readonly Length s_bottomUp = Length.FromMillimetres(12);

    /// <summary>The drawers of a case from the bottom up, each from left to right: front, box sides, box front and back, bottom.</summary>
    public static IEnumerable<Part> Of(CaseFigures box) => All(box).SelectMany(drawer => Parts(drawer).Concat(SlidePackers.Of(drawer)));

    /// <summary>The drawers of a case.</summary>
    public static IEnumerable<DrawerFigures> All(CaseFigures box) =>
        from span in box.Fronts
        where span.IsDrawers
        from drawer in Enumerable.Range(0, span.Design.Drawers)
        from bay in Enumerable.Range(0, box.Bays)
        select new DrawerFigures(box, span, bay, drawer);

    /// <summary>Where the slides of the drawers in a bay are screwed to an upright, in its coordinates.</summary>
    public static IEnumerable<Machining> Slides(CaseFigures box, int bay, Face face, Length foot, Part upright) => All(box)
        .Where(d => d.Bay == bay)
        .Select(d => new HardwareZone($"slide of {d.Id}", face, Length.Max(Length.Zero, d.BoxY - foot), Length.Min(upright.Length, d.BoxY - foot + SlidePackers.SlideHeight)));

    /// <summary>Depth of the groove for the bottom: half the side at most.</summary>
    public static Length GrooveDepth(RunFigures run, Material box) => Length.Min(run.Joinery.GrooveDepth, box.Thickness / 2);

    private static IEnumerable<Part> Parts(DrawerFigures drawer)
    {
        yield return Front(drawer);
        yield return Side(drawer, Hand.Left);
        yield return Side(drawer, Hand.Right);
        yield return End(drawer, front: true);
        yield return End(drawer, front: false);
        yield return Bottom(drawer);
    }

    private static Part Front(DrawerFigures drawer)
    {
        var run = drawer.Box.Run;
        var size = new PartSize(drawer.FrontWidth, drawer.FrontHeight, PartMaker.Thickness(drawer.Span.Material));
        var place = Pose.StripFromBelow(run.Wall.Id, drawer.FrontX, drawer.FrontY, drawer.Span.FrontZ(run));
        var part = PartMaker.InCase(drawer.Box, drawer.Id + "F", "front of " + drawer.Name, PartRole.DrawerFront, drawer.Span.Material, size, place, FaceView.Front);
        return part with { Machining = [.. Pulls.OnDrawer(run, part)] };
    }

    private static Part Side(DrawerFigures drawer, Hand hand)
    {
        var run = drawer.Box.Run;
        var material = drawer.Span.Box!;
        var size = new PartSize(SlideRule(drawer).Down(Dimensions.Length, run.Step), drawer.BoxHeight.Down(Dimensions.Width, run.Step), PartMaker.Thickness(material));
        var left = hand == Hand.Left ? drawer.BoxX : drawer.BoxX + drawer.BoxWidth.Exact - material.Thickness;
        var (family, name) = hand == Hand.Left ? ("L", "left side of ") : ("R", "right side of ");
        // From the front end back, lower edge first; the reference face is the inside.
        var place = new Placement(
            run.Wall.Id,
            new(hand == Hand.Left ? left + material.Thickness : left, drawer.BoxY, drawer.Span.RearZ(run)),
            Axis.In,
            Axis.Up,
            hand == Hand.Left ? Axis.Left : Axis.Right);
        var part = PartMaker.InCase(drawer.Box, drawer.Id + family, name + drawer.Name, PartRole.DrawerSide, material, size, place, FaceView.BoxMember);
        return part with { Hand = hand, Machining = [BottomGroove(drawer, part)] };
    }

    private static Part End(DrawerFigures drawer, bool front)
    {
        var run = drawer.Box.Run;
        var material = drawer.Span.Box!;
        var length = drawer.BoxWidth.Minus(Symbols.Thickness("tx", material), 2).Down(Dimensions.Length, run.Step);
        var size = new PartSize(length, drawer.BoxHeight.Down(Dimensions.Width, run.Step), PartMaker.Thickness(material));
        var z = front ? drawer.Span.RearZ(run) - material.Thickness : drawer.Span.RearZ(run) - drawer.SlideLength!.Value + material.Thickness;
        var place = new Placement(run.Wall.Id, new(drawer.BoxX + material.Thickness, drawer.BoxY, z), Axis.Right, Axis.Up, front ? Axis.Out : Axis.In);
        var (family, name) = front ? ("A", "box front of ") : ("Z", "box back of ");
        var part = PartMaker.InCase(drawer.Box, drawer.Id + family, name + drawer.Name, PartRole.DrawerEnd, material, size, place, FaceView.BoxMember);
        return part with { Machining = [BottomGroove(drawer, part)] };
    }

    private static Part Bottom(DrawerFigures drawer)
    {
        var run = drawer.Box.Run;
        var (material, box) = (drawer.Span.Bottom!, drawer.Span.Box!);
        var groove = new DerivationInput("g", "depth of the groove", GrooveDepth(run, box));
        var play = Symbols.Joint(run, "p", "play of the bottom, as of a back", "backPlay", run.Joinery.BackPlay);
        Rule Captured(Rule outer) => outer.Minus(Symbols.Thickness("tx", box), 2).Plus(groove, 2).Minus(play);
        var size = new PartSize(
            Captured(drawer.BoxWidth).Down(Dimensions.Length, run.Step), Captured(SlideRule(drawer)).Down(Dimensions.Width, run.Step), PartMaker.Thickness(material));
        var inset = box.Thickness - groove.Value + (play.Value / 2);
        var place = Pose.Level(run.Wall.Id, drawer.BoxX + inset, drawer.BoxY + s_bottomUp + material.Thickness, drawer.Span.RearZ(run) - inset);
        return PartMaker.InCase(drawer.Box, drawer.Id + "B", "bottom of " + drawer.Name, PartRole.DrawerBottom, material, size, place, FaceView.Bottom);
    }

    private static Groove BottomGroove(DrawerFigures drawer, Part part)
    {
        var run = drawer.Box.Run;
        var box = drawer.Span.Box!;
        return new(drawer.Id + "B", Face.Reference, s_bottomUp, drawer.Span.Bottom!.Thickness + run.Joinery.BackFit, GrooveDepth(run, box), Length.Zero, part.Length);
    }

    private static Rule SlideRule(DrawerFigures drawer) =>
        Rule.Of(new("L", "length of the slides: the longest that the depth of the case takes", drawer.SlideLength!.Value));
}
