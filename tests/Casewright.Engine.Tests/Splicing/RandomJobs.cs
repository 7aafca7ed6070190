using CsCheck;
using Casewright.Engine.Tests.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Runs of tall cases of every build, in both unit systems; not all of them can be laid out or spliced.</summary>
internal static class RandomJobs
{
    public static Gen<Job> Any { get; } =
        from units in Gen.Bool
        from bays in Gen.Int[1, 5]
        from perCase in Gen.Int[1, 2]
        from height in Gen.Int[2450, 3300]
        from depth in Gen.Int[180, 480]
        from shelves in Gen.Int[500, 2600].Array[0, 4]
        from loose in Gen.Int[0, 6]
        from back in Gen.Enum<BackKind>()
        from ends in Gen.Int[0, 8]
        from extras in Gen.Int[0, 63]
        from methods in Gen.OneOf(Gen.Const(0), Gen.Int[1, 6])
        select Job(units ? UnitSystem.Inches : UnitSystem.Millimetres, bays, perCase, height, depth, shelves, loose, back, ends, extras, methods);

    private static Job Job(
        UnitSystem units, int bays, int perCase, int height, int depth, int[] shelves, int loose, BackKind back, int ends, int extras, int methods)
    {
        var run = SampleRuns.Plain(units, Size(units, bays * 750), Size(units, height), Size(units, depth)) with
        {
            Division = new() { Bays = bays, BaysPerCase = perCase },
            Left = End(ends % 3),
            Right = End(ends / 3),
            Back = new() { Kind = back, Material = back == BackKind.None ? null : "back", Inset = back == BackKind.Captured ? Size(units, 12) : Length.Zero },
            Base = (extras & 1) == 0
                ? new() { Kind = BaseKind.None }
                : new() { Kind = (extras & 2) == 0 ? BaseKind.Plinth : BaseKind.SidesToFloor, Height = Size(units, 100), Setback = Size(units, 60), ShimRoom = Size(units, 10) },
            Nosing = (extras & 4) == 0 ? null : new() { Shelves = "shelf-nosing", Uprights = "upright-nosing" },
            Tiers = [new() { Interior = new() { FixedAt = [.. shelves.Distinct().Order().Select(s => Size(units, s))], Loose = loose } }],
        };
        var job = SampleRuns.Job(units, run);
        return job with
        {
            Stock = Stock(job.Stock, units, longSheets: (extras & 8) != 0, offcuts: (extras & 16) != 0),
            Shop = job.Shop with
            {
                Saw = job.Shop.Saw with { FirstCut = (extras & 32) == 0 ? FirstCut.Rip : FirstCut.Crosscut },
                Splicing = job.Shop.Splicing with { Methods = Methods(methods) },
            },
        };
    }

    /// <summary>A round length in either unit: whole millimetres, or quarters of an inch.</summary>
    private static Length Size(UnitSystem units, int millimetres) => units == UnitSystem.Inches
        ? Length.FromMillimetres(millimetres).RoundTo(Length.FromInches(0, 1, 4))
        : Length.FromMillimetres(millimetres);

    private static RunEnd End(int kind) => kind switch
    {
        0 => new() { Kind = EndKind.Finished },
        1 => new() { Kind = EndKind.Neighbour },
        _ => new() { Kind = EndKind.Wall, Filler = Length.FromMillimetres(30) },
    };

    private static StockRoom Stock(StockRoom stock, UnitSystem units, bool longSheets, bool offcuts) => stock with
    {
        Materials = [.. stock.Materials.Select(m => m.Id == "back" ? m with { HasGrain = false } : m)],
        Sheets =
        [
            .. stock.Sheets,
            new() { Id = "base", Material = "base", Length = Size(units, 2440), Width = Size(units, 1220), Price = 70 },
            .. longSheets ? [new() { Id = "long", Material = "panel", Length = Size(units, 1525), Width = Size(units, 3050), GrainAcross = true, Price = 170, Limit = 2 }] : Array.Empty<SheetStock>(),
            .. offcuts ? [new() { Id = "rest", Material = "panel", Length = Size(units, 1800), Width = Size(units, 600), Price = 0, OnHand = 1, Limit = 0, IsOffcut = true }] : Array.Empty<SheetStock>(),
        ],
        Boards =
        [
            .. stock.Boards,
            .. new[] { "shelf-nosing", "upright-nosing" }.Select(id => new BoardStock { Id = id, Material = id, Length = Size(units, 2400), Price = 8 }),
        ],
    };

    private static ValueList<ShopMethod> Methods(int which) => which switch
    {
        1 => [Way(SpliceMethod.LooseTenons, 26)],
        2 => [Way(SpliceMethod.Scarf, 40), Way(SpliceMethod.LooseTenons, 26)],
        3 => [Way(SpliceMethod.HalfLap, 28), Way(SpliceMethod.Spline, 24)],
        4 => [Way(SpliceMethod.BackedButt, 12), Way(SpliceMethod.LooseTenons, 26)],
        5 => [Way(SpliceMethod.TenonsAndConnectors, 28)],
        6 => [Way(SpliceMethod.Spline, 24)],
        _ => [Way(SpliceMethod.TenonsAndConnectors, 28), Way(SpliceMethod.LooseTenons, 26)],
    };

    private static ShopMethod Way(SpliceMethod method, double minutes) => new() { Method = method, Minutes = minutes };
}
