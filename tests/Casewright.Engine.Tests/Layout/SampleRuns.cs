using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Plain jobs that tests change one thing of.</summary>
internal static class SampleRuns
{
    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static Length In(decimal inches) => Length.FromInches(inches);

    /// <summary>One single-bay case of the given outer size between two neighbours, on the floor.</summary>
    public static Run Plain(UnitSystem units, Length width, Length height, Length depth) => new()
    {
        Id = "a",
        Name = "a",
        Wall = "north",
        Width = width,
        Construction = Construction.Frameless,
        Material = "panel",
        Depth = depth,
        Left = new() { Kind = EndKind.Neighbour },
        Right = new() { Kind = EndKind.Neighbour },
        Base = new() { Kind = BaseKind.None },
        Head = new() { Height = height },
        Back = new() { Kind = BackKind.Rabbeted, Material = "back" },
        Joinery = Joinery.For(units),
        Division = new() { Bays = 1 },
        Tiers = [new() { Interior = new() { Fixed = 1, Loose = 2, LoadPerMetre = 30 } }],
    };

    public static Job Job(UnitSystem units, params Run[] runs) => new()
    {
        Name = "sample",
        Units = units,
        Currency = "EUR",
        Walls = [new() { Id = "north", Name = "north wall", Width = Mm(60_000), Height = Mm(4_000) }],
        Runs = [.. runs],
        Stock = units == UnitSystem.Inches ? InchStock : MetricStock,
        Shop = new() { Saw = new() { Kerf = Mm(3), EdgeTrim = Mm(5) }, Splicing = SpliceRules.For(units), HourlyRate = 50 },
    };

    public static StockRoom MetricStock { get; } = new()
    {
        Materials =
        [
            Sheet("panel", Mm(18), null),
            Sheet("base", Mm(21), null),
            Sheet("back", Mm(6), null),
            Board("shelf-nosing", Mm(20), Mm(38)),
            Board("upright-nosing", Mm(10), Mm(20)),
            Board("stile", Mm(20), Mm(45)),
            Board("mid-stile", Mm(20), Mm(40)),
            Board("rail", Mm(20), Mm(60)),
            Board("band", Mm(8), Mm(60)),
            Board("crown", Mm(19), Mm(90)),
        ],
        Sheets =
        [
            new() { Id = "p1", Material = "panel", Length = Mm(2440), Width = Mm(1220), Price = 80 },
            new() { Id = "b1", Material = "back", Length = Mm(2440), Width = Mm(1220), Price = 30 },
        ],
        Boards = [new() { Id = "c1", Material = "crown", Length = Mm(4000), Price = 20 }],
    };

    /// <summary>Plywood sold as 3/4 in and measured at 0.72 in, back 1/4 in.</summary>
    public static StockRoom InchStock { get; } = new()
    {
        Materials =
        [
            Sheet("panel", In(0.75m), In(0.72m)),
            Sheet("base", In(0.75m), In(0.72m)),
            Sheet("back", In(0.25m), null),
            Board("shelf-nosing", In(0.75m), In(1.5m)),
            Board("upright-nosing", In(0.375m), In(0.75m)),
            Board("stile", In(0.75m), In(1.75m)),
            Board("mid-stile", In(0.75m), In(1.5m)),
            Board("rail", In(0.75m), In(2.5m)),
            Board("band", In(0.3125m), In(2.5m)),
            Board("crown", In(0.75m), In(3.5m)),
        ],
        Sheets =
        [
            new() { Id = "p1", Material = "panel", Length = In(96), Width = In(48), Price = 80 },
            new() { Id = "b1", Material = "back", Length = In(96), Width = In(48), Price = 30 },
        ],
        Boards = [new() { Id = "c1", Material = "crown", Length = In(192), Price = 20 }],
    };

    private static Material Sheet(string id, Length nominal, Length? measured) => new()
    {
        Id = id,
        Name = id,
        Kind = MaterialKind.BirchPlywood,
        Nominal = nominal,
        Measured = measured,
        HasGrain = true,
    };

    private static Material Board(string id, Length thickness, Length width) => new()
    {
        Id = id,
        Name = id,
        Kind = MaterialKind.Hardwood,
        Nominal = thickness,
        BoardWidth = width,
        HasGrain = true,
    };
}
