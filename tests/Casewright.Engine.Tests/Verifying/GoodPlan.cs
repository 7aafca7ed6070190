using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>
/// One case of two bays, 900 wide and 2700 high, out of 2440 mm sheets, laid out, spliced and cut by hand.
/// </summary>
/// <remarks>
/// <para>Uprights: 2700 long, 300 wide, joined at 1945, which is 35 below the fixed shelf at 1980 to 1998 and 145 above the pin hole at
/// 1800. Sawn: 1945 + 3 squaring = 1948, and 755 + 3 + 10 at the head = 768.</para>
/// <para>Sheet S1, usable 2430 × 1210: four strips of 300 take 4 · 300 + 3 · 3 = 1209. A strip holds 1948 + 3 + 435 = 2386. Sheet S2: a strip
/// of 300 holds 3 · 768 + 2 · 3 = 2310, a strip of 295 two loose shelves.</para>
/// <para>Back: 2698 long, joined 1988 from its foot (1 above the floor), that is at 1989, the middle of the fixed shelf.</para>
/// <para>Labour: (28 + 26 + 28) min at 45 an hour = 61.50.</para>
/// </remarks>
internal static class GoodPlan
{
    public static Job GoodJob { get; } = new()
    {
        Name = "Hall case",
        Units = UnitSystem.Millimetres,
        Currency = "EUR",
        Walls = [new() { Id = "hall", Name = "hall", Width = Mm(1000), Height = Mm(2750) }],
        Runs = [Run()],
        Stock = new()
        {
            Materials =
            [
                new() { Id = "ply18", Name = "birch 18", Kind = MaterialKind.BirchPlywood, Nominal = Mm(18), Measured = Mm(18), HasGrain = true },
                new() { Id = "ply6", Name = "back 6", Kind = MaterialKind.BirchPlywood, Nominal = Mm(6), Measured = Mm(6) },
                new() { Id = "nosing", Name = "nosing 10 × 40", Kind = MaterialKind.Hardwood, Nominal = Mm(10), BoardWidth = Mm(40) },
            ],
            Sheets =
            [
                new() { Id = "ply18-8", Material = "ply18", Length = Mm(2440), Width = Mm(1220), Price = 60 },
                new() { Id = "ply6-8", Material = "ply6", Length = Mm(2440), Width = Mm(1220), Price = 25, OnHand = 1 },
            ],
            Boards = [new() { Id = "nosing-24", Material = "nosing", Length = Mm(2400), Price = 9, Limit = 2 }],
        },
        Shop = new()
        {
            Saw = new() { Kerf = Mm(3), EdgeTrim = Mm(5), BoardEndTrim = Mm(10) },
            Splicing = SpliceRules.For(UnitSystem.Millimetres),
            HourlyRate = 45,
        },
    };

    public static Casework GoodCasework { get; } = new(
        [new() { Id = "C1", Run = "R1", Wall = "hall", Column = 0, Tier = 0, X = Mm(0), Y = Mm(0), Width = Mm(900), Height = Mm(2700), Depth = Mm(306), Bays = 2, ClearBay = Mm(423) }],
        Parts().ToValueList(),
        []);

    public static CutPlan GoodCut { get; } = Cut();

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    private static Run Run() => new()
    {
        Id = "R1",
        Name = "hall",
        Wall = "hall",
        Construction = Construction.Frameless,
        Material = "ply18",
        Depth = Mm(306),
        Left = new() { Kind = EndKind.Neighbour },
        Right = new() { Kind = EndKind.Neighbour },
        Base = new() { Kind = BaseKind.None },
        Head = new() { Height = Mm(2700) },
        Back = new() { Kind = BackKind.Overlaid, Material = "ply6" },
        Joinery = Joinery.For(UnitSystem.Millimetres),
        Tiers = [new() { Interior = new() { FixedAt = [Mm(1998)], Loose = 2 } }],
    };

    private static IEnumerable<Part> Parts()
    {
        yield return Upright("C1-L", PartRole.Side, Hand.Left, 18, Axis.Left, Exposure.Hidden);
        yield return Upright("C1-P", PartRole.Partition, Hand.None, 441, Axis.Right, Exposure.Shows);
        yield return Upright("C1-R", PartRole.Side, Hand.Right, 882, Axis.Right, Exposure.Hidden);
        yield return Level("C1-B", PartRole.Bottom, 876, 300, 12, 18);
        yield return Level("C1-T", PartRole.Top, 876, 300, 12, 2700);
        yield return Level("C1-F1", PartRole.FixedShelf, 435, 300, 12, 1998);
        yield return Level("C1-F2", PartRole.FixedShelf, 435, 300, 453, 1998);
        for (var i = 0; i < 4; i++)
            yield return Level($"C1-S{i + 1}", PartRole.AdjustableShelf, 421, 295, i % 2 == 0 ? 19 : 460, i < 2 ? 700 : 1300);
        yield return Part("C1-K", PartRole.Back, "ply6", 2698, 898, 6, new("hall", At(1, 1, 6), Axis.Up, Axis.Right, Axis.In)) with
        {
            Grain = Grain.AlongLength,
            ReferenceFace = Exposure.Shows,
        };
        for (var i = 0; i < 6; i++)
        {
            yield return Part($"C1-N{i + 1}", PartRole.Nosing, "nosing", i < 2 ? 423 : 421, 40, 10, new("hall", At(19, 660, 316), Axis.Right, Axis.Up, Axis.In)) with
            {
                Grain = Grain.AlongLength,
            };
        }
    }

    private static Part Upright(string id, PartRole role, Hand hand, decimal x, Axis into, Exposure outside) =>
        Part(id, role, "ply18", 2700, 300, 18, new("hall", At(x, 0, 306), Axis.Up, Axis.In, into)) with
        {
            Hand = hand,
            ReferenceFace = Exposure.Shows,
            OppositeFace = outside,
            Machining =
            [
                new Dado("C1-B", Face.Reference, Mm(0), Mm(18), Mm(6), Mm(0), Mm(300)),
                new Dado("C1-F1", Face.Reference, Mm(1980), Mm(18), Mm(6), Mm(0), Mm(300)),
                new Dado("C1-T", Face.Reference, Mm(2682), Mm(18), Mm(6), Mm(0), Mm(300)),
                new PinRow("shelves", Face.Reference, Mm(37), Mm(168), Mm(32), 52, Mm(5), Mm(8)),
                new PinRow("shelves", Face.Reference, Mm(263), Mm(168), Mm(32), 52, Mm(5), Mm(8)),
                new PinRow("shelves", Face.Reference, Mm(37), Mm(2148), Mm(32), 13, Mm(5), Mm(8)),
                new PinRow("shelves", Face.Reference, Mm(263), Mm(2148), Mm(32), 13, Mm(5), Mm(8)),
            ],
        };

    private static Part Level(string id, PartRole role, decimal length, decimal width, decimal x, decimal top) =>
        Part(id, role, "ply18", length, width, 18, new("hall", At(x, top, 306), Axis.Right, Axis.In, Axis.Down));

    private static Part Part(string id, PartRole role, string material, decimal length, decimal width, decimal thickness, Placement place) => new()
    {
        Id = id,
        Name = id,
        Case = "C1",
        Run = "R1",
        Role = role,
        Material = material,
        Length = Mm(length),
        Width = Mm(width),
        Thickness = Mm(thickness),
        Grain = Grain.AlongLength,
        Place = place,
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Hidden,
        ReferenceFaceName = "one",
        OppositeFaceName = "other",
    };

    private static Point3 At(decimal x, decimal y, decimal z) => new(Mm(x), Mm(y), Mm(z));

    private static CutPlan Cut()
    {
        var first = new SheetHand("S1", "ply18-8", "ply18", 60, bought: true).TrimEdges().Strips(
            (300, [Foot("C1-L"), Whole("C1-F1")]),
            (300, [Foot("C1-P"), Whole("C1-F2")]),
            (300, [Foot("C1-R"), Whole("C1-S1")]),
            (300, [Whole("C1-B"), Whole("C1-T"), Whole("C1-S2")]));
        var second = new SheetHand("S2", "ply18-8", "ply18", 60, bought: true).TrimEdges().Strips(
            (300, [Head("C1-L"), Head("C1-P"), Head("C1-R")]),
            (295, [Whole("C1-S3"), Whole("C1-S4")]));
        var third = new SheetHand("S3", "ply6-8", "ply6", 25, bought: true).TrimEdges().Strips((898, [Stretch("C1-K", "a", 0, 1988, 0, 0)]));
        var fourth = new SheetHand("S4", "ply6-8", "ply6", 0, bought: false).TrimEdges().Strips((898, [Stretch("C1-K", "b", 1988, 2698, 0, 0)]));
        SheetHand[] sheets = [first, second, third, fourth];
        var (boards, boardPieces) = Boards();
        return new()
        {
            Pieces = sheets.SelectMany(sheet => sheet.Pieces).Concat(boardPieces).ToValueList(),
            Splices = Splices(),
            Sheets = sheets.Select(sheet => sheet.Layout).ToValueList(),
            Boards = boards,
            Bounds = new() { Cost = 224.5m, LowerBound = 215.5m, Sheets = 4, SheetsLowerBound = 4, Proven = false },
            Materials =
            [
                new("ply18", new() { Cost = 181.5m, LowerBound = 181.5m, Sheets = 2, SheetsLowerBound = 2, Proven = true }),
                new("ply6", new() { Cost = 25m, LowerBound = 25m, Sheets = 2, SheetsLowerBound = 2, Proven = true }),
                new("nosing", new() { Cost = 18m, LowerBound = 9m, Sheets = 2, SheetsLowerBound = 1, Proven = false }),
            ],
        };
    }

    private static ValueList<Splice> Splices() =>
    [
        Joint("C1-L", "A", [45, 130, 252], [88, 190]),
        Joint("C1-P", "B", [45, 115, 250], []),
        Joint("C1-R", "C", [45, 150, 240], [97, 196]),
        new()
        {
            Id = "C1-K/1",
            Part = "C1-K",
            Position = Mm(1988),
            Method = SpliceMethod.CoveredButt,
            Consumes = Mm(0),
            Holding = HoldingMethod.Carried,
            PairLetter = "D",
            MarkOffset = Mm(300),
            CoveredBy = "C1-F1",
        },
    ];

    private static Splice Joint(string part, string letter, decimal[] tenons, decimal[] connectors) => new()
    {
        Id = part + "/1",
        Part = part,
        Position = Mm(1945),
        Method = connectors.Length > 0 ? SpliceMethod.TenonsAndConnectors : SpliceMethod.LooseTenons,
        Consumes = Mm(6),
        AccessFace = connectors.Length > 0 ? Face.Opposite : null,
        Tenons = tenons.Select((offset, i) => new Tenon(Mm(offset), Mm(9), Mm(6), Mm(22), Mm(44), Mm(23), i == 0 ? Mm(0) : Mm(1))).ToValueList(),
        Connectors = connectors.Select(offset => new DrawConnector(Mm(offset))).ToValueList(),
        Holding = connectors.Length > 0 ? HoldingMethod.DrawConnectors : HoldingMethod.EndClamps,
        PairLetter = letter,
        KeyClass = "K" + letter,
        KeyMismatch = Mm(1),
        MarkOffset = Mm(220),
        SightLine = Mm(1945),
    };

    /// <summary>Board B1: 10 trimmed, then 423, 423, 421, 421 and 421 with saw cuts of 3 between; B2: one of 421.</summary>
    private static (ValueList<BoardLayout> Boards, IEnumerable<Piece> Pieces) Boards()
    {
        var long1 = Board("B1", ["C1-N1", "C1-N2", "C1-N3", "C1-N4", "C1-N5"], left: 2400 - 10 - 10 - 423 - 423 - 421 - 421 - 421 - (5 * 3));
        var long2 = Board("B2", ["C1-N6"], left: 2400 - 10 - 10 - 421 - 3);
        return ([long1.Board, long2.Board], [.. long1.Pieces, .. long2.Pieces]);
    }

    private static (BoardLayout Board, List<Piece> Pieces) Board(string id, string[] parts, decimal left)
    {
        var cuts = new List<Length> { Mm(7) };
        var pieces = new List<Piece>();
        var x = Mm(10);
        foreach (var part in parts)
        {
            pieces.Add(Whole(part) with { Stock = id, FromBoard = true, X = x });
            x += pieces[^1].Length;
            cuts.Add(x);
            x += Mm(3);
        }

        var board = new BoardLayout
        {
            Id = id,
            Stock = "nosing-24",
            Material = "nosing",
            Length = Mm(2400),
            Trim = Mm(10),
            Kerf = Mm(3),
            Cost = 9,
            Bought = true,
            Cuts = cuts.ToValueList(),
            Left = Mm(left),
        };
        return (board, pieces);
    }

    private static Piece Foot(string part) => Stretch(part, "a", 0, 1945, 0, 3);

    private static Piece Head(string part) => Stretch(part, "b", 1945, 2700, 3, 10);

    private static Piece Whole(string id)
    {
        var part = GoodCasework.Parts.First(part => part.Id == id);
        return Stretch(id, "a", 0, part.Length.Millimetres, 0, 0);
    }

    private static Piece Stretch(string id, string name, decimal from, decimal to, decimal start, decimal end) => new()
    {
        Id = $"{id}/{name}",
        Part = id,
        Stock = "",
        FromBoard = false,
        Length = Mm(to - from + start + end),
        Width = GoodCasework.Parts.First(part => part.Id == id).Width,
        X = Mm(0),
        Y = Mm(0),
        From = Mm(from),
        To = Mm(to),
        AllowanceStart = Mm(start),
        AllowanceEnd = Mm(end),
    };
}
