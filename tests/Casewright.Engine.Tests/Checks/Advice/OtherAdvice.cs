using System.Globalization;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>Sheets, fitting, glue and seasons, and what their checks say would pass.</summary>
public static class OtherAdvice
{
    private static readonly SiteFacts Seasons = new() { RoomTemperature = 21.1, DriestHumidity = 30, DampestHumidity = 50 };

    public static IEnumerable<AdviceCase> All =>
    [
        AdviceCase.One("part-over-sheet", "a long side", "L", new() { Height = 2453 }, t => new() { Height = 2453 - t.Mm("design away ", " by") }),
        AdviceCase.One("part-over-sheet", "a wide side", "L", new() { Depth = 1250 }, t => new() { Depth = 1250 - t.Mm("Make it ", " narrower") }),
        AdviceCase.One("grain-direction", "a piece across", "L/a", Piece(true), t => Says(t, "Turn it", Piece(false))),
        AdviceCase.One("stock-lead-time", "late sheets", "full", Needed(new(2026, 1, 6)), t => Needed(DateOnly.Parse(t.Between("it is there on ", ":"), CultureInfo.InvariantCulture))),
        AdviceCase.One("run-in-tightest-width", "a tight wall", "R", Wall(981), t => Wall(981) with { Width = 936 - t.Mm("Make the cases ", " narrower") }),
        AdviceCase.One("run-in-tightest-width", "a run too far left", "R", Wall(1096, -7), t => Wall(1096, -7 + t.Moves()[0])),
        AdviceCase.One("run-in-tightest-width", "a run too far right", "R", Wall(1096, 109), t => Wall(1096, 109 + t.Moves()[0])),
        AdviceCase.One("measured-thickness", "a panel as sold", "panel", Measured(null), t => Says(t, "enter the thickness", Measured(17.6m))),
        AdviceCase.One("handed-sides", "a side without a hand", "L", new(), t => Says(t, "Mark it left or right", new() { Change = p => p.Id == "L" ? p with { Hand = Hand.Left } : p })),
        new("shelf-through-frame", "a narrow frame", "S3", Framed(898, 11), Frame),
        AdviceCase.One("doors-clear-of-wall", "a narrow filler", "D", Door(10), t => Door(10 + t.Mm("Make the filler ", " wider"))),
        AdviceCase.One("doors-clear-of-wall", "a door beside a casing", "D", Beside(30), t => Beside(30 + t.Mm("Make the filler ", " wider"))),
        AdviceCase.One("doors-clear-of-wall", "a door beside the run round the corner", "D", RoundCorner(0), t => RoundCorner(t.Mm("Make the filler ", " wider"))),
        new("room-doors-open", "a leaf that meets the run round the corner", "B", Leaf(330, DoorSwing.InHungLeft), t =>
        [
            Leaf(330, DoorSwing.InHungLeft) with { Depth = 300 - t.Mm("make that run ", " shallower") },
            Named(t, "on its right", Leaf(330, DoorSwing.InHungRight)),
            Named(t, "out of the room", Leaf(330, DoorSwing.Out)),
            Short(330, t.Mm("let it stop ", " from the wall")),
        ]),
        AdviceCase.One("revision-approved", "a revision that nobody signed", "job", Job(j => j with { Revision = 3, ApprovedRevision = 2 }), t => Says(t, "Have the new revision signed", Job(j => j with { Revision = 3, ApprovedRevision = 3 }))),
        AdviceCase.One("glue-temperature", "a cold shop", "job", Shop(7), t => Shop(t.Says("°F") ? (t.Number("the glue to ", " °F") - 32) / 1.8 : t.Number("the glue to ", " °C"))),
        AdviceCase.One("glue-open-time", "a quick glue", "L/1", Glue(2), t => Glue(t.Number("a glue that stays open ", " minutes"))),
        new("material-in-climate", "board in a damp place", "panel", Damp, t => Climates(t)),
        AdviceCase.One("solid-wood-movement", "a wide member", "F1-N", Nosed(140), t => Nosed(t.Mm("members ", " wide or less"))),
        AdviceCase.One("run-movement", "a long run", "R", Long, t => Long with { Limits = new() { RunMovement = Bookcase.Mm(t.Mm("overlap of ", " at one filler")) } }),
        AdviceCase.One("acclimatising", "fresh stock", "job", Rested(1), t => Rested(1 + (int)t.Number("Have it delivered ", " days"))),
        AdviceCase.One("finish-film", "thick paint", "R", Film(null), t => Film(t.Mm("Give loose shelves ", " of side play"))),
        AdviceCase.One("edging-deducted", "a nosing in front of a full shelf", "F1", Edged(0), t => Edged(t.Mm("Take ", " off the width"))),
        AdviceCase.One("small-overrun", "30 mm over the sheet", "L", new() { Height = 2460 }, t => new() { Height = 2460 - t.Mm("A base ", " higher") }),
        AdviceCase.One("just-over-a-division", "just over a quarter of the sheet", "L", new() { Depth = 305 }, t => new() { Depth = 305 - decimal.Max(0, Less(t)) }),
        AdviceCase.One("long-sheet-grain", "a large sheet", "big", Large(false), t => Says(t, "Ask the dealer", Large(true))),
    ];

    private static Bookcase Job(Func<Job, Job> change) => new() { ChangeJob = change };

    private static Bookcase Shop(double celsius) => Job(j => j with { Shop = j.Shop with { Temperature = celsius } });

    private static Bookcase Glue(double minutes) => Job(j => j with { Shop = j.Shop with { Glue = new() { OpenMinutes = minutes } } }) with { Splices = [Bookcase.TenonSplice("L", 1000)] };

    private static Bookcase Says(Told told, string words, Bookcase mended)
    {
        Assert.True(told.Says(words), told.Advice);
        return mended;
    }

    private static Bookcase Piece(bool turned) => new()
    {
        Pieces = [new() { Id = "L/a", Part = "L", Stock = "S1", FromBoard = false, Length = Bookcase.Mm(2400), Width = Bookcase.Mm(300), X = Length.Zero, Y = Length.Zero, From = Length.Zero, To = Bookcase.Mm(2400), Rotated = turned }],
    };

    private static SheetLayout Sheet(string stock) => new()
    {
        Id = "S1",
        Stock = stock,
        Material = "panel",
        Length = Bookcase.Mm(2440),
        Width = Bookcase.Mm(1220),
        Trim = Bookcase.Mm(5),
        Kerf = Bookcase.Mm(3),
        Cost = 80,
        Bought = true,
        Cuts = [],
    };

    private static Bookcase Needed(DateOnly by) => Job(j => j with { Date = new(2026, 1, 2), StockNeededBy = by }) with { Sheets = [Sheet("full")] };

    private static Bookcase Large(bool across)
    {
        var (length, width) = across ? (1525m, 3050m) : (3050m, 1525m);
        var big = new SheetStock { Id = "big", Material = "panel", Length = Bookcase.Mm(length), Width = Bookcase.Mm(width), GrainAcross = across, Price = 1 };
        return Job(j => j with { Stock = j.Stock with { Sheets = [big] } }) with { Sheets = [Sheet("big")] };
    }

    // The run keeps its width; the wall and the run's place on it change.
    private static Bookcase Wall(decimal width, decimal by = 0) => Job(j => j with { Walls = [j.Walls[0] with { Width = Bookcase.Mm(width) }] }) with { Shift = by };

    private static Bookcase Measured(decimal? thickness) => Job(j => j with
    {
        Stock = j.Stock with { Materials = [.. j.Stock.Materials.Select(m => m.Id == "panel" ? m with { Measured = thickness is { } t ? Bookcase.Mm(t) : null } : m)] },
    });

    // Stiles that leave 820 between them, in front of shelves of 900.
    private static Bookcase Framed(decimal length, int fixedShelves) => new()
    {
        FixedShelves = fixedShelves,
        Change = p => p.Id switch { "S1" => Stile(p, 30), "S2" => Stile(p, 916), "S3" => p with { Length = Bookcase.Mm(length) }, _ => p },
    };

    private static Part Stile(Part part, decimal x) => part with
    {
        Role = PartRole.Stile,
        Length = Bookcase.Mm(2400),
        Width = Bookcase.Mm(50),
        Place = new("A", new(Bookcase.Mm(x), Length.Zero, Bookcase.Mm(300)), Axis.Up, Axis.Right, Axis.In),
    };

    private static IEnumerable<Bookcase> Frame(Told told)
    {
        yield return Framed(told.Mm("Make it ", " long or shorter"), 11);
        var height = told.Mm("so that the opening is ", " high");
        yield return Framed(898, (int)(2400 / (height + 18)) - 1);
    }

    private static Bookcase Door(decimal filler) => Job(j => j with { Runs = [j.Runs[0] with { Left = new() { Kind = EndKind.Wall, Filler = Bookcase.Mm(filler) } }] }) with
    {
        More =
        [
            Bookcase.Upright("D", PartRole.Door, 31.5m, false, new(), 100, 600) with
            {
                Hand = Hand.Left,
                Place = new("A", new(Bookcase.Mm(31.5m), Bookcase.Mm(100), Bookcase.Mm(320)), Axis.Up, Axis.Right, Axis.In),
            },
        ],
    };

    private static Bookcase Named(Told told, string words, Bookcase mended) => Says(told, words, mended);

    // The door of the wall's left end, with a window's casing on the wall that meets it there: that stands out 20 mm.
    private static Bookcase Beside(decimal filler) => Corner(Door(filler), new() { Name = "casing", Kind = FeatureKind.Window, X = Bookcase.Mm(2000), Y = Bookcase.Mm(500), Width = Bookcase.Mm(800), Height = Bookcase.Mm(900), Casing = Bookcase.Mm(70) }, left: true);

    // The other run is 350 deep; this one begins 20 mm clear of it.
    private static Bookcase RoundCorner(decimal more) => Door(0) with
    {
        ChangeJob = j => j with
        {
            Walls = [j.Walls[0] with { Width = Bookcase.Mm(3000) }, j.Walls[0] with { Id = "B", Name = "other wall" }],
            Runs =
            [
                j.Runs[0] with { Left = new() { Kind = EndKind.Corner, Filler = Bookcase.Mm(20 + more), Corner = new() { Run = "Q", Kind = CornerKind.Butt } } },
                j.Runs[0] with { Id = "Q", Name = "other run", Wall = "B", Depth = Bookcase.Mm(350) },
            ],
        },
        Shift = 340 + more,
        More = [.. Door(0).More.Select(d => d with { Place = d.Place with { Origin = d.Place.Origin with { X = d.Place.Origin.X + Bookcase.Mm(340 + more) } } })],
    };

    // A second wall, B, meets wall A; what stands on B is as told.
    private static Bookcase Corner(Bookcase of, WallFeature feature, bool left) => of with
    {
        ChangeJob = j => of.ChangeJob(j) is var job ? job with
        {
            Walls =
            [
                .. job.Walls,
                new()
                {
                    Id = "B",
                    Name = "door wall",
                    Width = Bookcase.Mm(3000),
                    Height = Bookcase.Mm(2600),
                    Survey = new() { Datum = Bookcase.Mm(1000), Features = [feature], LeftEnd = left ? null : new() { Wall = "A" }, RightEnd = left ? new() { Wall = "A" } : null },
                },
            ],
        } : j,
    };

    private static WallFeature RoomDoor(decimal x, DoorSwing swing) => new() { Name = "hall door", Kind = FeatureKind.Door, X = Bookcase.Mm(x), Y = Length.Zero, Width = Bookcase.Mm(800), Height = Bookcase.Mm(2000), Casing = Bookcase.Mm(60), Swing = swing };

    // The run ends 30 mm from the corner, at the left end of the door's wall.
    private static Bookcase Leaf(decimal x, DoorSwing swing) => Corner(new(), RoomDoor(x, swing), left: false);

    private static Bookcase Short(decimal x, decimal less) => Corner(Job(j => j with { Walls = [j.Walls[0] with { Width = Bookcase.Mm(966 + less) }] }), RoomDoor(x, DoorSwing.InHungLeft), left: false);

    private static Bookcase Damp => new() { Kind = MaterialKind.Mdf, Site = new() { Climate = Climate.Damp } };

    private static IEnumerable<Bookcase> Climates(Told told)
    {
        Assert.True(told.Says("heated or not") && told.Says("birch or softwood plywood, or solid wood"), told.Advice);
        yield return Damp with { Site = new() { Climate = Climate.Unheated } };
        yield return Damp with { Kind = MaterialKind.BirchPlywood };
        yield return Damp with { Kind = MaterialKind.SoftwoodPlywood };
        yield return Damp with { Kind = MaterialKind.Hardwood };
    }

    private static Bookcase Nosed(decimal width) => new() { Nosing = (19, width), Site = Seasons };

    private static Bookcase Long => new() { Site = Seasons, Width = 6000, Bays = 6 };

    private static Bookcase Rested(int days) => new() { Site = new() { AcclimatisingDays = days } };

    private static Bookcase Film(decimal? play) => Job(j => play is { } p ? j with { Runs = [j.Runs[0] with { Joinery = j.Runs[0].Joinery with { ShelfPlay = Bookcase.Mm(p) } }] } : j) with
    {
        Limits = new() { FilmThickness = Bookcase.Mm(0.3m) },
    };

    private static Bookcase Edged(decimal less) => new() { Nosing = (19, 38), Depth = 300 - less, CaseDepth = 300 };

    // The advice begins with the length.
    private static decimal Less(Told told) => new Told(told.Finding with { Advice = "Start: " + told.Advice }, told.Units).Mm("Start: ", " less gains");
}
