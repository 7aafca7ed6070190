using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Cases;

/// <summary>
/// Nosings. Uprights and tops over sides run through, the others butt between them. A nosing on a shelf is flush with its upper face
/// and hangs below by what its board is wider; a nosing on an upright, top or bottom is trimmed flush to the panel.
/// </summary>
internal static class NosingParts
{
    /// <summary>The nosings of the case's parts, in their order.</summary>
    public static IEnumerable<Part> Of(CaseFigures box, IEnumerable<Part> parts) =>
        parts.Where(p => p.Nosing is not null).Select(p => Of(box, p));

    private static Part Of(CaseFigures box, Part part) => part.Role switch
    {
        PartRole.Side => OnSide(box, part),
        PartRole.Partition => OnPartition(box, part),
        PartRole.Top when box.Rake is { } rake => RakedTop.Nosing(box, rake, part),
        PartRole.Top or PartRole.Bottom => OnLevel(box, part),
        _ => OnShelf(box, part),
    };

    private static Part OnSide(CaseFigures box, Part side)
    {
        var run = box.Run;
        var symbols = new CaseSymbols(box);
        // Over a toe space the nosing ends where the notch ends.
        var notched = box.ToFloor && run.Run.Base.Setback > Length.Zero;
        var rule = Rule.Of(symbols.H);
        if (!notched)
            rule = rule.PlusAny(symbols.B);
        if (box.Rake is not null)
            rule = RakedUprights.UnderTop(rule, box, side.Hand == Hand.Left ? box.X : box.XEnd - run.T);
        else if (run.Joinery.TopOverSides)
            rule = rule.Minus(Symbols.Thickness(run));
        var left = side.Hand == Hand.Left ? box.X : box.XEnd - run.T;
        var nosing = Upright(box, side, Lippings.Of(box, side.Hand).Front ?? run.UprightNosing!, rule.Nearest(Dimensions.Length, run.Step), left, notched ? box.Y : box.Foot);
        return run.UprightNosing is null ? nosing with { Name = "front lipping of " + side.Name } : nosing;
    }

    private static Part OnPartition(CaseFigures box, Part partition)
    {
        var run = box.Run;
        var symbols = new CaseSymbols(box);
        var rule = Rule.Of(symbols.H).Minus(Symbols.Thickness(run)).MinusAny(symbols.Raise);
        rule = box.Rake is null ? rule.Minus(Symbols.Thickness(run)) : RakedUprights.UnderTop(rule, box, partition.Place.Origin.X);
        return Upright(box, partition, run.UprightNosing!, rule.Down(Dimensions.Length, run.Step), partition.Place.Origin.X, box.BottomUpper);
    }

    private static Part Upright(CaseFigures box, Part covered, Material board, Derivation length, Length left, Length foot) => RakedStrips.Upright(box.Rake, Make(
        box,
        covered,
        board,
        length,
        Flush(box.Run),
        Pose.UprightFacingRoom(box.Run.Wall.Id, left, foot, box.Run.CaseFront)));

    private static Part OnLevel(CaseFigures box, Part level)
    {
        var run = box.Run;
        var symbols = new CaseSymbols(box);
        var over = level.Role == PartRole.Top && run.Joinery.TopOverSides;
        var rule = over ? Rule.Of(symbols.W) : Rule.Of(symbols.W).Minus(Symbols.Thickness(run), 2);
        var length = over ? rule.Nearest(Dimensions.Length, run.Step) : rule.Down(Dimensions.Length, run.Step);
        var place = Pose.StripFromAbove(run.Wall.Id, over ? box.X : box.BayLeft(0), level.Place.Origin.Y, run.CaseFront);
        return Make(box, level, run.UprightNosing!, length, Flush(run), place);
    }

    private static Part OnShelf(CaseFigures box, Part shelf)
    {
        var run = box.Run;
        var loose = shelf.Role == PartRole.AdjustableShelf;
        var bay = BayOf(box, shelf);
        var left = loose ? shelf.Place.Origin.X : box.BayLeft(bay);
        var rule = Rule.Of(new CaseSymbols(box).Clear(bay));
        if (loose)
            rule = rule.Minus(Symbols.Joint(run, "p", "side play of loose shelves", "shelfPlay", run.Joinery.ShelfPlay));
        var place = Pose.StripFromAbove(run.Wall.Id, left, shelf.Place.Origin.Y, shelf.Place.Origin.Z + run.ShelfEdge);
        var nosing = Make(box, shelf, run.ShelfNosing!, rule.Down(Dimensions.Length, run.Step), PartMaker.BoardWidth(run.ShelfNosing!), place);
        return box.Rake is null || loose ? nosing : RakedShelves.Nosing(box, bay, shelf, nosing);
    }

    private static int BayOf(CaseFigures box, Part shelf)
    {
        var middle = shelf.Place.Origin.X + (shelf.Length / 2) - box.BayLeft(0);
        return Math.Min(box.Bays - 1, (int)(middle / (box.Column.Clear + box.Run.T)));
    }

    /// <summary>The width of a nosing that is trimmed flush to the panel.</summary>
    public static Derivation Flush(RunFigures run) => Rule.Of(Symbols.Thickness(run)).As(Dimensions.Width);

    /// <summary>A nosing of a part.</summary>
    public static Part Make(CaseFigures box, Part covered, Material board, Derivation length, Derivation width, Placement place) =>
        PartMaker.InCase(
            box,
            PartIds.Nosing(covered.Id),
            "nosing of " + covered.Name,
            PartRole.Nosing,
            board,
            new(length, width, PartMaker.Thickness(board)),
            place,
            FaceView.FrontOnly);
}
