using Casewright.Engine.Checks.Uprights;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>Uprights, cases and the building, and what their checks say would pass.</summary>
public static class BuildingAdvice
{
    private static readonly SiteFacts Studs = new() { Walls = WallStructure.WoodStuds, StudSpacing = Length.FromInches(16) };

    public static IEnumerable<AdviceCase> All =>
    [
        AdviceCase.One("dado-web", "dados that face each other", "P1", TwoBays with { Dado = 7 }, t => TwoBays with { Dado = t.Mm("Make the dados at most ", " deep") }),
        AdviceCase.One("pin-holes-meet", "deep holes", "L", Bored(14, false), t => Bored(t.Mm("Bore at most ", " deep"), false)),
        AdviceCase.One("pin-holes-meet", "holes from both faces", "L", Bored(10, true), t => Bored(t.Mm("Bore at most ", " deep"), true)),
        new("dado-bearing", "a shallow dado in board", "F1", Shallow, t => [Shallow with { Dado = t.Mm("make its dados ", " deep") }, Shallow with { Load = t.Load("keep the load to ") }]),
        new("upright-buckling", "thin uprights, one tall opening", "C1", Slender, Buckling),
        AdviceCase.One("case-racking", "no back", "C1", new() { Back = false }, t => Says(t, "Glue and fix in a back", new())),
        AdviceCase.One("case-racking", "a flimsy back", "C1", ThinBack(0.2m), t => ThinBack(t.Mm("Use a back ", " thick or more"))),
        AdviceCase.One("tilt-up", "under a low ceiling", "C1", new() { Ceiling = 2410 }, t => new() { Ceiling = 2410, Height = t.Mm("Make the case ", " high or less") }),
        AdviceCase.One("lift-room", "taller than the room", "C1", new() { Ceiling = 2393 }, t => new() { Ceiling = 2393, Height = 2400 - t.Mm("Make the case ", " lower") }),
        AdviceCase.One("access-route", "a case at a turn", "C1", Turn, t => Turn with { Height = t.Mm("cases up to ", " high") }),
        AdviceCase.One("access-route", "a long part at a turn", "L", Turn with { Height = 3200 }, t => Turn with { Height = t.Mm("pieces ", " long or shorter") }),
        AdviceCase.One("access-route", "a door leaf in the way", "C1", Leaf(40), t => Leaf(40 - t.Mm("that gives ", ","))),
        new("floor-load", "a weak floor", "R", Floor, t =>
        [
            Floor with { Site = new() { FloorRating = t.FloorLoad("Only a floor rated for ") } },
            Floor with { Load = 30 * t.Mass("this one bears ") / 162 },
        ]),
        AdviceCase.One("case-anchorage", "a great pull on each fixing", "C1", Pulled, t => Pulled with { Limits = Pulled.Limits with { FixingThread = Bookcase.Mm(t.Mm("Use screws with ", " of thread")) } }),
        AdviceCase.One("nailers-hit-studs", "a narrow case", "C1", new() { Site = Studs, Width = 736 }, t => ShelfAdvice.Span(new() { Site = Studs }, t.Mm("A nailer ", " long is sure"))),
        AdviceCase.One("nailers-hit-studs", "no nailer", "C1", new() { Site = Studs, Nailers = false }, t => Says(t, "Add a nailer", new() { Site = Studs })),
        new("ladder-rail", "a joint at the rail", "R", Jointed(2200), t => [Jointed(t.Mm("Set the rail at ", " or at ")), Jointed(t.Mm(" or at ", ","))]),
        AdviceCase.One("ladder-rail", "a flat ladder", "R", Leaning(2000), t => Leaning(t.Mm("foot stand out ", " at most"))),
        AdviceCase.One("ladder-rail", "brackets far apart", "R", Ladder(new() { Height = Bookcase.Mm(2200) }), t => Ladder(new() { Height = Bookcase.Mm(2200) }) with { Width = t.Mm("a bracket every ", " or less") + 18 }),
        AdviceCase.One("case-weight", "too heavy for four", "C1", Heavy, t => Heavy with { Bays = 1, Width = Heavy.Width / (decimal)t.Number("build it as ", " cases") }) with { After = Casewright.Model.Findings.Severity.Caution },
    ];

    private static Bookcase TwoBays => new() { Bays = 2, Width = 1200 };

    private static Bookcase Bored(decimal depth, bool both)
    {
        var row = new PinRow("pins", Face.Reference, Bookcase.Mm(37), Bookcase.Mm(150), Bookcase.Mm(32), 10, Bookcase.Mm(5), Bookcase.Mm(depth));
        return new() { Change = p => p.Id == "L" ? p with { Machining = both ? [row, row with { Face = Face.Opposite }] : [row] } : p };
    }

    private static Bookcase Shallow => new() { Kind = MaterialKind.Mdf, Dado = 2, Load = 45 };

    private static Bookcase Slender => new() { Thickness = 9, FixedShelves = 0, LooseShelves = 5, Back = false, Dado = 3, Load = 45 };

    // Loose shelves become fixed ones until no opening is taller than advised; nothing else changes, so neither does the load.
    private static IEnumerable<Bookcase> Buckling(Told told)
    {
        var tallest = (double)told.Mm("between fixed panels is over ", " or use") / 1000;
        var (fixedShelves, mended) = (0, Slender);
        while (UprightBucklingCheck.FreeLength(mended.Context, mended.Box) > tallest)
            mended = Slender with { FixedShelves = ++fixedShelves, LooseShelves = 5 - fixedShelves };
        yield return mended;
        var thickness = told.Mm("use uprights ", " thick");
        yield return Slender with { Change = p => p.Role == PartRole.Side ? p with { Thickness = Bookcase.Mm(thickness) } : p };
    }

    private static Bookcase ThinBack(decimal thickness) => new() { Limits = new() { DriftRatio = 3000 }, Change = p => p.Role == PartRole.Back ? p with { Thickness = Bookcase.Mm(thickness) } : p };

    private static Bookcase Turn => new()
    {
        Site = new() { Route = [new() { Name = "landing", Kind = PassageKind.Turn, Width = Bookcase.Mm(900), NextWidth = Bookcase.Mm(1000), Height = Bookcase.Mm(2000) }] },
        Height = 2450,
    };

    // 300 deep and 10 of play on each side: 320 through 350 less the leaf, lying on its back.
    private static Bookcase Leaf(decimal leaf) => new()
    {
        Width = 800,
        Site = new() { Route = [new() { Name = "hall door", Kind = PassageKind.Doorway, Width = Bookcase.Mm(350), Height = Bookcase.Mm(2000), Leaf = Bookcase.Mm(leaf) }] },
    };

    private static Bookcase Floor => new() { Site = new() { FloorRating = 2.5 } };

    private static Bookcase Pulled => new() { Site = Studs, Limits = new() { FixingForce = 3000 } };

    private static Bookcase Ladder(LadderRail rail) => new() { ChangeJob = j => j with { Runs = [j.Runs[0] with { Ladder = rail }] } };

    private static Bookcase Jointed(decimal height) => Ladder(new() { Height = Bookcase.Mm(height) }) with { Width = 900, Splices = [Bookcase.TenonSplice("L", 2180), Bookcase.TenonSplice("R", 2215)] };

    private static Bookcase Leaning(decimal reach) => Ladder(new() { Height = Bookcase.Mm(2200), Reach = Bookcase.Mm(reach) }) with { Width = 900 };

    private static Bookcase Heavy => new() { Width = 2400, Depth = 600, Bays = 3 };

    private static Bookcase Says(Told told, string words, Bookcase mended)
    {
        Assert.True(told.Says(words), told.Advice);
        return mended;
    }
}
