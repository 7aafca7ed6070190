using Casewright.Engine.Layout;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Stock;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Impossible dimensions are refused at their place in the job file, with what was found and what would be accepted.</summary>
public sealed class ImpossibleDesignTests
{
    private static readonly Run Good = Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300));

    private static readonly Run Framed = Good with
    {
        Construction = Construction.FaceFrame,
        FaceFrame = new() { EndStile = "stile", TopRail = "rail", BottomRail = "stile" },
    };

    public static TheoryData<string, Func<Run>> Designs => new()
    {
        { "runs[0].wall", () => Good with { Wall = "nowhere" } },
        { "runs[0].material", () => Good with { Material = "no such panel" } },
        { "runs[0].material", () => Good with { Material = "stile" } },
        { "runs[0].offset", () => Good with { Offset = Mm(-1) } },
        { "runs[0].width", () => Good with { Width = Mm(70_000) } },
        { "runs[0].width", () => Good with { Width = Mm(0) } },
        { "runs[0].width", () => Good with { Width = Mm(50), Left = new() { Kind = EndKind.Wall, Filler = Mm(50) } } },
        { "runs[0].depth", () => Good with { Depth = Mm(6) } },
        { "runs[0].depth", () => Good with { Depth = Mm(26), Nosing = new() { Shelves = "shelf-nosing" } } },
        { "runs[0].left.filler", () => Good with { Left = new() { Kind = EndKind.Finished, Filler = Mm(30) } } },
        { "runs[0].left.filler", () => Good with { Left = new() { Kind = EndKind.Wall, Filler = Mm(-30) } } },
        { "runs[0].right.panel", () => Good with { Right = new() { Kind = EndKind.Wall, Filler = Mm(30), Panel = "panel" } } },
        { "runs[0].base.height", () => Good with { Base = new() { Kind = BaseKind.None, Height = Mm(100) } } },
        { "runs[0].base.height", () => Good with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(10), ShimRoom = Mm(10) } } },
        { "runs[0].base.height", () => Good with { Base = new() { Kind = BaseKind.SidesToFloor } } },
        { "runs[0].base.setback", () => Good with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(250) } } },
        { "runs[0].base.longestSection", () => Good with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), LongestSection = Mm(500) } } },
        { "runs[0].head", () => Good with { Head = new() } },
        { "runs[0].head", () => Good with { Head = new() { Height = Mm(2000), Gap = Mm(20) } } },
        { "runs[0].head.height", () => Good with { Head = new() { Height = Mm(4001) } } },
        { "runs[0].head.gap", () => Good with { Head = new() { Gap = Mm(4000) } } },
        { "runs[0].head.crown", () => Good with { Head = new() { Gap = Mm(20), Crown = "crown" } } },
        { "runs[0].head.crownLap", () => Good with { Head = new() { Height = Mm(2000), Crown = "crown", CrownLap = Mm(100) } } },
        { "runs[0].back.material", () => Good with { Back = new() { Kind = BackKind.Captured } } },
        { "runs[0].back.inset", () => Good with { Back = new() { Kind = BackKind.Captured, Material = "back" } } },
        { "runs[0].joinery.dadoDepth", () => Good with { Joinery = Good.Joinery with { DadoDepth = Mm(10) } } },
        { "runs[0].joinery.dadoDepth", () => Good with { Joinery = Good.Joinery with { DadoDepth = Mm(-1) } } },
        { "runs[0].joinery.rabbetDepth", () => Good with { Joinery = Good.Joinery with { RabbetDepth = Mm(13) } } },
        { "runs[0].joinery.rabbetDepth", () => Good with { Joinery = Good.Joinery with { RabbetDepth = Mm(0.5m) } } },
        { "runs[0].joinery.grooveDepth", () => Captured(Mm(10)) },
        { "runs[0].joinery.backReveal", () => Good with { Back = new() { Kind = BackKind.Overlaid, Material = "back" }, Joinery = Good.Joinery with { BackReveal = Mm(18) } } },
        { "runs[0].joinery.roundingStep", () => Good with { Joinery = Good.Joinery with { RoundingStep = Length.Zero } } },
        { "runs[0].joinery.pinDepth", () => Good with { Joinery = Good.Joinery with { PinDepth = Mm(14) } } },
        { "runs[0].joinery.pinPitch", () => Good with { Joinery = Good.Joinery with { PinPitch = Mm(4) } } },
        { "runs[0].joinery.pinInset", () => Good with { Joinery = Good.Joinery with { PinInset = Mm(140) } } },
        { "runs[0].joinery.shelfPlay", () => Good with { Joinery = Good.Joinery with { ShelfPlay = Mm(900) } } },
        { "runs[0].nosing.uprights", () => Good with { Nosing = new() { Uprights = "no such board" } } },
        { "runs[0].nosing.shelves", () => Good with { Nosing = new() { Shelves = "panel" } } },
        { "runs[0].faceFrame", () => Good with { FaceFrame = Framed.FaceFrame } },
        { "runs[0].faceFrame", () => Framed with { FaceFrame = null } },
        { "runs[0].faceFrame.midStile", () => Framed with { Division = new() { Bays = 2, BaysPerCase = 2 } } },
        { "runs[0].faceFrame.topRail", () => Framed with { FaceFrame = Framed.FaceFrame! with { TopRail = "crown" } } },
        { "runs[0].faceFrame.bottomRail", () => Framed with { FaceFrame = Framed.FaceFrame! with { BottomRail = "thin" } } },
        { "runs[0].nosing.uprights", () => Framed with { Nosing = new() { Uprights = "upright-nosing" } } },
        { "runs[0].nailers.height", () => Good with { Nailers = new() { Height = Mm(1000) } } },
        { "runs[0].trimBand", () => Good with { Back = new() { Kind = BackKind.None }, TrimBand = new() { Material = "band" } } },
        { "runs[0].trimBand.material", () => Good with { TrimBand = new() { Material = "stile" } } },
        { "runs[0].division", () => Good with { Division = null } },
        { "runs[0].division", () => Good with { Division = new() } },
        { "runs[0].division", () => Good with { Division = new() { Bays = 1, WidestClear = Mm(900) } } },
        { "runs[0].division", () => Good with { Columns = [new() { Id = "1" }] } },
        { "runs[0].division.bays", () => Good with { Division = new() { Bays = 0 } } },
        { "runs[0].division.bays", () => Good with { Division = new() { Bays = 25 } } },
        { "runs[0].division.widestClear", () => Good with { Division = new() { WidestClear = Length.Zero } } },
        { "runs[0].division.widestClear", () => Good with { Division = new() { WidestClear = Length.FromNanometres(1) } } },
        { "runs[0].division.baysPerCase", () => Good with { Division = new() { Bays = 1, BaysPerCase = 0 } } },
        { "runs[0].columns", () => Columns(new() { Id = "1", Width = Mm(400) }, new() { Id = "2", Width = Mm(400) }) },
        { "runs[0].columns", () => Columns(new() { Id = "1", Width = Mm(880) }, new() { Id = "2" }) },
        { "runs[0].columns[0].width", () => Columns(new() { Id = "1", Width = Mm(36) }, new() { Id = "2" }) },
        { "runs[0].columns[1].bays", () => Columns(new() { Id = "1" }, new() { Id = "2", Bays = 0 }) },
        { "runs[0].columns[0].interiors", () => Columns(new ColumnDesign { Id = "1", Interiors = [new(), new()] }) },
        { "runs[0].tiers", () => Good with { Tiers = [] } },
        { "runs[0].tiers", () => Good with { Tiers = [Tier(900), Tier(1000)] } },
        { "runs[0].tiers", () => Good with { Tiers = [new() { Interior = new() }, new() { Interior = new() }] } },
        { "runs[0].tiers[1].height", () => Good with { Tiers = [Tier(1970), new() { Interior = new() }] } },
        { "runs[0].tiers[0].interior", () => Shelves(new() { Fixed = 1, FixedAt = [Mm(500)] }) },
        { "runs[0].tiers[0].interior.fixed", () => Shelves(new() { Fixed = -1 }) },
        { "runs[0].tiers[0].interior.fixed", () => Shelves(new() { Fixed = 200 }) },
        { "runs[0].tiers[0].interior.loose", () => Shelves(new() { Loose = -1 }) },
        { "runs[0].tiers[0].interior.loose", () => Shelves(new() { Loose = 80 }) },
        { "runs[0].tiers[0].interior.fixedAt[1]", () => Shelves(new() { FixedAt = [Mm(500), Mm(1990)] }) },
        { "runs[0].tiers[0].interior.fixedAt[1]", () => Shelves(new() { FixedAt = [Mm(500), Mm(510)] }) },
        { "runs[0].tiers[0].interior.fixedAt[0]", () => Shelves(new() { FixedAt = [Mm(20)] }) },
        { "runs[0].columns[0].interiors[0].fixedAt[0]", () => Columns(new ColumnDesign { Id = "1", Interiors = [new() { FixedAt = [Mm(3000)] }] }) },
    };

    [Theory]
    [MemberData(nameof(Designs), DisableDiscoveryEnumeration = true)]
    public void IsRefusedAtItsPath(string path, Func<Run> design) => Laid.ProblemAt(path, Job(UnitSystem.Millimetres, design()) with { Stock = Stock });

    [Fact]
    public void RunsThatStandInEachOtherAreRefused()
    {
        var second = Good with { Id = "b", Name = "b", Offset = Mm(899) };
        Laid.ProblemAt("runs[1].offset", Job(UnitSystem.Millimetres, Good, second));
        Laid.Of(UnitSystem.Millimetres, Good, second with { Offset = Mm(900) });
    }

    [Fact]
    public void EveryProblemIsNamedAtOnceAndOnlyOnce()
    {
        var run = Good with { Width = Mm(3000), Division = new() { Bays = 3 }, Tiers = [new() { Interior = new() { FixedAt = [Mm(2500)], Loose = -1 } }] };
        var outcome = LayoutStage.Lay(Job(UnitSystem.Millimetres, run));

        Assert.Equal(
            ["runs[0].tiers[0].interior.fixedAt[0]", "runs[0].tiers[0].interior.loose"],
            outcome.Problems.Select(p => p.Path));
    }

    [Fact]
    public void LengthsInProblemsAreInTheUnitOfTheJob()
    {
        var run = Plain(UnitSystem.Inches, In(36), In(80), In(12)) with { Tiers = [new() { Interior = new() { FixedAt = [In(79.5m)] } }] };
        var problem = Laid.ProblemAt("runs[0].tiers[0].interior.fixedAt[0]", Job(UnitSystem.Inches, run));

        Assert.Equal("79 1/2 in", problem.Found);
    }

    [Fact]
    public void TheGoodDesignsAreAccepted()
    {
        Laid.Of(UnitSystem.Millimetres, Good);
        Laid.Of(UnitSystem.Millimetres, Framed);
        Laid.Of(UnitSystem.Millimetres, Captured(Mm(9)));
        Laid.Of(UnitSystem.Millimetres, Columns(new() { Id = "1", Width = Mm(500) }, new() { Id = "2" }));
        Laid.Of(UnitSystem.Millimetres, Good with { Tiers = [Tier(900), Tier(1100)] });
        Laid.Of(UnitSystem.Millimetres, Good with { Division = new() { Bays = 23 }, Tiers = [new() { Interior = new() }] });
    }

    private static StockRoom Stock { get; } = MetricStock with
    {
        Materials = MetricStock.Materials.Add(new() { Id = "thin", Name = "thin", Kind = MaterialKind.Hardwood, Nominal = Mm(20), BoardWidth = Mm(12) }),
    };

    private static Run Captured(Length groove) => Good with
    {
        Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(15) },
        Joinery = Good.Joinery with { GrooveDepth = groove },
    };

    private static Run Columns(params ColumnDesign[] columns) => Good with { Division = null, Columns = [.. columns] };

    private static Run Shelves(Interior interior) => Good with { Tiers = [new() { Interior = interior }] };

    private static TierDesign Tier(decimal height) => new() { Height = Mm(height), Interior = new() };
}
