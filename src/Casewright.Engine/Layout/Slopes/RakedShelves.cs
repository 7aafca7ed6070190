using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>How far a fixed shelf goes in a bay.</summary>
internal enum ShelfReach
{
    /// <summary>From upright to upright.</summary>
    Whole,

    /// <summary>From the higher upright to the raked top, which cuts it short.</summary>
    CutShort,

    /// <summary>Not there: the slope leaves too little of it, or none.</summary>
    LeftOut,
}

/// <summary>
/// Fixed shelves under a raked top. One that the slope crosses is housed in the higher upright, its other end bevelled to the underside of
/// the top and screwed through it. What is left of it above is its usable width; under 150 mm (6 in) it is left out.
/// </summary>
internal static class RakedShelves
{
    /// <summary>Shortest usable width that a shelf is made for: 150 mm (6 in; our judgement).</summary>
    public static Length Shortest { get; } = Length.FromMillimetres(150);

    /// <summary>How far a fixed shelf goes in a bay.</summary>
    public static ShelfReach Reach(CaseFigures box, int shelf, int bay)
    {
        if (box.Rake is not { } rake)
            return ShelfReach.Whole;
        var upper = box.Fixed[shelf].Upper;
        if (upper + box.Run.T <= LowUnder(box, rake, bay))
            return ShelfReach.Whole;
        var high = High(box, rake, bay);
        return upper < rake.Under(high, box.Run.T) && Usable(box, rake, shelf, bay) >= Shortest ? ShelfReach.CutShort : ShelfReach.LeftOut;
    }

    /// <summary>What the slope leaves of a shelf on its upper face; below zero where it is higher than the bay.</summary>
    public static Length Usable(CaseFigures box, RakeFigures rake, int shelf, int bay)
    {
        var meets = rake.WhereUnder(box.Fixed[shelf].Upper, box.Run.T);
        return rake.FallsRight ? meets - box.BayLeft(bay) : box.BayRight(bay) - meets;
    }

    /// <summary>Whether a shelf goes from upright to upright in every bay.</summary>
    public static bool IsWhole(CaseFigures box, int shelf) => Enumerable.Range(0, box.Bays).All(bay => Reach(box, shelf, bay) == ShelfReach.Whole);

    /// <summary>Whether a panel is housed in the upright at an end of a bay; bottoms and tops always are.</summary>
    public static bool IsHoused(CaseFigures box, int? shelf, int bay, bool atLeft) => shelf is not { } index || Reach(box, index, bay) switch
    {
        ShelfReach.Whole => true,
        ShelfReach.CutShort => atLeft == box.Rake!.FallsRight,
        _ => false,
    };

    /// <summary>Notes shelves that come out just where the raked top meets the lower upright, where there is wood for neither housing nor bevel; and fronts that the slope cuts.</summary>
    public static void Check(CaseFigures box, ProblemList problems)
    {
        if (box.Rake is not { } rake)
            return;
        for (var shelf = 0; shelf < box.Fixed.Count; shelf++)
        {
            for (var bay = 0; bay < box.Bays; bay++)
            {
                var (low, hang) = (LowUnder(box, rake, bay), Hang(box));
                var upper = box.Fixed[shelf].Upper;
                if (Reach(box, shelf, bay) != ShelfReach.CutShort || upper - hang >= low)
                    continue;
                var path = box.InteriorPath + (box.Interior.Fixed > 0 ? ".fixed" : string.Create(CultureInfo.InvariantCulture, $".fixedAt[{shelf}]"));
                problems.Add(path, string.Create(CultureInfo.InvariantCulture, $"Shelf {shelf + 1} of case {box.Number} meets the raked top just at the low upright, where it can be neither housed nor screwed."), upper, $"fixedAt with a height up to {problems.Say((low - box.Run.T).FloorTo(box.Run.Step))}, or from {problems.Say((low + hang).CeilingTo(box.Run.Step))}");
            }
        }

        foreach (var front in box.Fronts.Where(f => f.Last == box.Fixed.Count || !IsWhole(box, f.Last)))
            problems.Add(front.Path, $"The sloping ceiling cuts this front in case {box.Number}; doors and drawers are square.", "a front under the slope", "fronts under a fixed shelf that goes from upright to upright");
    }

    /// <summary>A shelf that the slope cuts short, made from the one that would go through.</summary>
    public static Part CutShort(CaseFigures box, int shelf, int bay, Part whole)
    {
        var (run, rake) = (box.Run, box.Rake!);
        var upper = box.Fixed[shelf].Upper;
        var high = High(box, rake, bay);
        var under = new DerivationInput("wu", "from the higher upright to where the raked top meets the underside of the shelf", (rake.WhereUnder(upper - run.T, run.T) - high).Abs());
        var length = Rule.Of(under).Plus(Symbols.Dado(run)).Nearest(Dimensions.Length, run.Step);
        var usable = Rule.Of(new("wo", "from the higher upright to where the raked top meets the upper face", (rake.WhereUnder(upper, run.T) - high).Abs())).As("usable width");
        var left = rake.FallsRight ? whole.Place.Origin.X : whole.Place.Origin.X + whole.Length - length.Result;
        var end = rake.FallsRight ? PartEdge.End : PartEdge.Start;
        return whole with
        {
            Name = whole.Name + ", cut short",
            Hand = RakedStrips.HandOf(rake),
            Length = length.Result,
            Place = whole.Place with { Origin = whole.Place.Origin with { X = left } },
            Machining = [.. Kept(rake, whole, length.Result), new Bevel(box.Id + "-T", end, Face.Opposite, rake.Slope.LevelFor(run.T))],
            Derivations = [length, .. whole.Derivations.Skip(1), usable],
        };
    }

    /// <summary>The nosing of a shelf that the slope cuts short ends on the slope as well.</summary>
    public static Part Nosing(CaseFigures box, int bay, Part shelf, Part whole)
    {
        if (!shelf.Machining.OfType<Bevel>().Any())
            return whole;
        var (run, rake) = (box.Run, box.Rake!);
        var reach = (rake.WhereUnder(shelf.Place.Origin.Y - whole.Width, run.T) - High(box, rake, bay)).Abs();
        var length = Rule.Of(new("wn", "from the higher upright to where the raked top meets the lower edge", reach)).Down(Dimensions.Length, run.Step);
        var left = rake.FallsRight ? box.BayLeft(bay) : box.BayRight(bay) - length.Result;
        return whole with
        {
            Hand = RakedStrips.HandOf(rake),
            Length = length.Result,
            Place = whole.Place with { Origin = whole.Place.Origin with { X = left } },
            Machining = [new Clip(box.Id + "-T", rake.FallsRight ? PartEdge.End : PartEdge.Start, PartEdge.Reference, rake.Slope.LevelFor(whole.Width), whole.Width)],
            Derivations = [length, .. whole.Derivations.Skip(1)],
        };
    }

    /// <summary>Notches to clear what stands behind or before a shelf: for the nailer along the slope, where it is in view.</summary>
    public static Part WithNailer(CaseFigures box, int bay, Part shelf)
    {
        var run = box.Run;
        if (box.Rake is not { } rake || run.Nailer is not { } nailer || run.NailersBehind)
            return shelf;
        var meets = rake.WhereUnder(shelf.Place.Origin.Y + rake.Slope.Along(run.Run.Nailers!.Height), run.T);
        var left = shelf.Place.Origin.X;
        var (from, to) = rake.FallsRight ? (Length.Max(meets - left, Length.Zero), shelf.Length) : (Length.Zero, Length.Min(meets - left, shelf.Length));
        if (from >= to)
            return shelf;
        return shelf with { Machining = [.. shelf.Machining, new Notch(PartIds.InBay(box.Id, "N", 1, bay, box.Bays), from, shelf.Width - nailer.Thickness, to - from, nailer.Thickness)] };
    }

    /// <summary>How far shelf and nosing reach down from the upper face.</summary>
    private static Length Hang(CaseFigures box) => Length.Max(box.Run.T, box.Run.ShelfNosing?.BoardWidth ?? Length.Zero);

    private static Length High(CaseFigures box, RakeFigures rake, int bay) => rake.Higher(box.BayLeft(bay), box.BayRight(bay));

    private static Length LowUnder(CaseFigures box, RakeFigures rake, int bay) => rake.Under(rake.Lower(box.BayLeft(bay), box.BayRight(bay)), box.Run.T);

    /// <summary>Notches at the housed end stay; those of the end that is gone go.</summary>
    private static IEnumerable<Machining> Kept(RakeFigures rake, Part whole, Length length) => whole.Machining.OfType<Notch>()
        .Where(n => rake.FallsRight ? n.X == Length.Zero : n.X + n.LengthX == whole.Length)
        .Select(n => rake.FallsRight ? n : n with { X = length - n.LengthX });
}
