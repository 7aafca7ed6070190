using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// Packers behind a face frame: the frame laps over the sides, so drawer slides are packed out to be flush with its opening. A board is planed to
/// what the frame laps, glued and screwed to the upright at the height of the slide, and reaches back from the frame as far as the slide.
/// </summary>
internal static class SlidePackers
{
    /// <summary>Height of a side slide: 45 mm (common practice, no source).</summary>
    public static Length SlideHeight { get; } = Length.FromMillimetres(45);

    /// <summary>Left, then right packer of a drawer; none where the frame is flush with the upright.</summary>
    public static IEnumerable<Part> Of(DrawerFigures drawer)
    {
        if (drawer.Box.Run.Frame?.SlidePacker is null)
            yield break;
        var (left, right) = drawer.Packing;
        if (left > Length.Zero)
            yield return Packer(drawer, Hand.Left, left);
        if (right > Length.Zero)
            yield return Packer(drawer, Hand.Right, right);
    }

    /// <summary>Notes packers that are missing, too thin or too wide.</summary>
    public static void Check(DrawerFigures drawer, ProblemList problems)
    {
        var run = drawer.Box.Run;
        var most = Length.Max(drawer.Packing.Left, drawer.Packing.Right);
        if (run.Frame is null || most <= Length.Zero)
            return;
        var path = run.Path + ".faceFrame.slidePacker";
        if (run.Frame.SlidePacker is not { } board)
        {
            problems.Add(path, "The frame laps over the sides, so the slides of drawers must be packed out to its opening.", "nothing", $"a board material {problems.Say(most)} thick or more");
            return;
        }

        problems.Least(path, "thickness of the packer, which is planed to what the frame laps over the side,", board.Thickness, most);
        problems.Least(path, "board width of the packer, which carries the slide,", board.BoardWidth!.Value, SlideHeight);
        if (Foot(drawer, board.BoardWidth!.Value) < drawer.Slice.Low)
            problems.Add(path, "The packer is wider than the drawer has room for.", board.BoardWidth!.Value, $"at most {problems.Say(SlideHeight + run.Gaps.Headroom)}");
    }

    private static Length Foot(DrawerFigures drawer, Length width) => drawer.BoxY + ((SlideHeight - width) / 2);

    private static Part Packer(DrawerFigures drawer, Hand hand, Length packing)
    {
        var (box, run) = (drawer.Box, drawer.Box.Run);
        var board = run.Frame!.SlidePacker!;
        var room = run.CaseFront - run.BackFront - (run.NailersBehind ? Length.Zero : run.Nailer?.Thickness ?? Length.Zero);
        var length = new DerivationInput("L", "length of the slides, or what the case has behind the frame", Length.Min(drawer.SlideLength!.Value, room));
        var thickness = Rule.Of(new DerivationInput("pk", $"what the frame laps over the {(hand == Hand.Left ? "left" : "right")} side of the bay", packing));
        var size = new PartSize(Rule.Of(length).Down(Dimensions.Length, run.Step), PartMaker.BoardWidth(board), thickness.As(Dimensions.Thickness));
        var side = hand == Hand.Left ? box.BayLeft(drawer.Bay) : box.BayRight(drawer.Bay);
        var place = new Placement(
            run.Wall.Id, new(side, Foot(drawer, board.BoardWidth!.Value), run.CaseFront), Axis.In, Axis.Up, hand == Hand.Left ? Axis.Right : Axis.Left);
        var part = PartMaker.InCase(
            box, $"{drawer.Id}P{(hand == Hand.Left ? "L" : "R")}", $"{(hand == Hand.Left ? "left" : "right")} slide packer of {drawer.Name}", PartRole.SlidePacker, board, size, place, new(Exposure.Hidden, Exposure.Shows, "side", "drawer"));
        return packing == board.Thickness ? part : part with { FitOnSite = $"planed from {LengthFormat.Usual(board.Thickness, run.Job.Units)} to {LengthFormat.Usual(packing, run.Job.Units)}, flush with the frame" };
    }
}
