using Casewright.Engine.Layout.Counters;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Counters, seats, desks over knee spaces, tiers of their own depth and bridges, computed by hand (common practice, no source).</summary>
public sealed class CounterAndBridgeTests
{
    private static readonly CounterDesign Seat = new() { Use = CounterUse.Seat, Material = "panel", Layers = 2, Overhang = Mm(20), Edge = "shelf-nosing", Cushion = Mm(60) };

    private static Run Bench(Length width) => Plain(UnitSystem.Millimetres, width, Mm(390), Mm(460)) with
    {
        Division = new() { WidestClear = Mm(800) },
        Tiers = [new() { Counter = Seat, Interior = new() }],
    };

    [Fact]
    public void ASeatInMillimetres()
    {
        // Top at 390: two layers of 18 leave cases of 354. Depth 460 + 20 − 20 of edge, and 10 left on for the wall: 470.
        var laid = Laid.Of(UnitSystem.Millimetres, Bench(Mm(1600)));

        Assert.Equal(Mm(354), laid.Casework.Cases[0].Height);
        Assert.Equal((Mm(1600), Mm(470), Mm(18)), (laid["A-U1A"].Length, laid["A-U1A"].Width, laid["A-U1A"].Thickness));
        Assert.Equal((Mm(390), Mm(372)), (RoomBox.Of(laid["A-U1A"]).High.Y, RoomBox.Of(laid["A-U1B"]).High.Y));
        Assert.Equal((Mm(36), Mm(480)), (laid["A-U1n"].Width, RoomBox.Of(laid["A-U1n"]).High.Z));
        // One sits at 390 + 60 = 450, and 480 deep.
        Assert.Equal((450, Severity.Pass), Finding(laid, "seat-height"));
        Assert.Equal((480, Severity.Pass), Finding(laid, "seat-depth"));
        // Two bays of (1600 − 4 · 18)/2 = 764, doubled: 900 is the limit. One layer would have 600.
        Assert.Equal((764, Severity.Pass), Finding(laid, "counter-supports"));
        var single = Laid.Of(UnitSystem.Millimetres, Bench(Mm(1600)) with { Tiers = [new() { Counter = Seat with { Layers = 1 }, Interior = new() }] });
        Assert.Equal((764, Severity.Stop), Finding(single, "counter-supports"));
    }

    [Fact]
    public void ALongSeatHasItsJointsOverUprightsAndApart()
    {
        // 4000 of width, sheets of 2440 − 10: five bays of (4000 − 10 · 18)/5 = 764, cases 800. The upper layer reaches 2400, where cases 3 and 4
        // meet; the lower one may join at 1600 or 2400 and stays 300 away: 1600, and 4000 − 1600 = 2400 is short enough.
        var laid = Laid.Of(UnitSystem.Millimetres, Bench(Mm(4000)));

        Assert.Equal((Mm(2400), Mm(1600)), (laid["A-U1A.1"].Length, laid["A-U1A.2"].Length));
        Assert.Equal((Mm(1600), Mm(2400)), (laid["A-U1B.1"].Length, laid["A-U1B.2"].Length));
    }

    [Fact]
    public void JointsKeepApartFromThoseOfTheOtherLayer()
    {
        Length[] supports = [Mm(700), Mm(1400), Mm(2100), Mm(2800)];
        Assert.Equal([Mm(0), Mm(2100), Mm(3500)], CounterJoints.Find(Mm(0), Mm(3500), Mm(2430), supports, [], Mm(0)));
        Assert.Equal([Mm(0), Mm(1400), Mm(3500)], CounterJoints.Find(Mm(0), Mm(3500), Mm(2430), supports, [Mm(2100)], Mm(300)));
        Assert.Null(CounterJoints.Find(Mm(0), Mm(3500), Mm(600), supports, [], Mm(0)));
    }

    [Fact]
    public void ADeskInInches()
    {
        // Top at 28 3/4, one layer of 0.72: cases 28.03 high. A knee space of 22 between two pedestals: its cleats are 2 1/2 high,
        // the wall cleat 22 long, the side cleats 24 − 3 · 0.72 = 21.84, down to 21 13/16.
        var run = Plain(UnitSystem.Inches, In(54), In(28.75m), In(24)) with
        {
            Division = null,
            Columns = [new() { Id = "l", Width = In(16) }, new() { Id = "k", Open = true }, new() { Id = "r", Width = In(16) }],
            Tiers = [new() { Counter = new() { Use = CounterUse.Desk, Material = "panel", Apron = In(3) }, Interior = new() }],
        };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal(In(28.03m), laid.Casework.Cases[0].Height);
        Assert.Equal((In(22), In(2.5m)), (laid["C2-Y"].Length, laid["C2-Y"].Width));
        Assert.Equal(In(21.8125m), laid["C2-YL"].Length);
        Assert.Equal(In(3), laid["C2-A"].Width);
        Assert.False(laid.Has("C2-L"));
        // The pedestals show their sides to the knees.
        Assert.Equal((Exposure.Hidden, Exposure.Shows), (laid["C1-L"].OppositeFace, laid["C1-R"].OppositeFace));
        Assert.Equal((Exposure.Shows, Exposure.Hidden), (laid["C3-L"].OppositeFace, laid["C3-R"].OppositeFace));
    }

    [Fact]
    public void TheBaseStopsAtAKneeSpace()
    {
        var run = Plain(UnitSystem.Millimetres, Mm(2000), Mm(740), Mm(600)) with
        {
            Division = null,
            Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(50), ShimRoom = Mm(10) },
            Columns = [new() { Id = "l", Width = Mm(600) }, new() { Id = "k", Width = Mm(800), Open = true }, new() { Id = "r", Width = Mm(600) }],
            Tiers = [new() { Counter = new() { Use = CounterUse.Desk, Material = "panel", Layers = 2, Apron = Mm(60) }, Interior = new() }],
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        // Toe faces run from 0 to 600 − 50 and from 1400 + 50 to 2000, and turn in beside the knees.
        Assert.Equal((Mm(550), Mm(550)), (laid["A-T1"].Length, laid["A-T2"].Length));
        Assert.Equal((Mm(0), Mm(1450)), (RoomBox.Of(laid["A-T1"]).Low.X, RoomBox.Of(laid["A-T2"]).Low.X));
        Assert.True(laid.Has("A-TR") && laid.Has("A-TL2"));
    }

    [Fact]
    public void ADeepBaseUnderShallowShelves()
    {
        // Base tier 500 deep and 700 high with a counter of 18, upper tier 300 deep: 2400 − 718 = 1682 high, from 718.
        var run = Plain(UnitSystem.Millimetres, Mm(1000), Mm(2400), Mm(300)) with
        {
            Tiers = [new() { Height = Mm(700), Depth = Mm(500), Counter = new() { Use = CounterUse.Counter, Material = "panel" }, Interior = new() }, new() { Interior = new() }],
            Left = new() { Kind = EndKind.Wall, Filler = Mm(30) },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(718), Mm(1682)), (laid.Casework.Cases[1].Y, laid.Casework.Cases[1].Height));
        Assert.Equal((Mm(500), Mm(300)), (laid["C1.1-L"].Width, laid["C1.2-L"].Width));
        Assert.Equal((Mm(500), Mm(300)), (RoomBox.Of(laid["A-XL1"]).High.Z, RoomBox.Of(laid["A-XL2"]).High.Z));
        Assert.Equal((Mm(700), Mm(1682)), (laid["A-XL1"].Length, laid["A-XL2"].Length));
    }

    private static Job WithBridge(Length foot, BridgeDesign bridge)
    {
        var plain = Plain(UnitSystem.Millimetres, Mm(900), Mm(2400), Mm(300));
        return Job(
            UnitSystem.Millimetres,
            plain with { Left = new() { Kind = EndKind.Wall, Filler = Mm(30) }, Right = new() { Kind = EndKind.Finished } },
            plain with { Id = "b", Name = "b", Offset = Mm(900), Base = new() { Kind = BaseKind.Hung, Height = foot }, Bridge = bridge, Tiers = [new() { Interior = new() }] },
            plain with { Id = "c", Name = "c", Offset = Mm(1800), Left = new() { Kind = EndKind.Finished } });
    }

    [Fact]
    public void ABridgeOverADoor()
    {
        // Casing to 2050, cleat 40: the bridge begins at 2050 + 12 + 40 = 2102 and is 2400 − 2102 = 298 high.
        var laid = Laid.Of(WithBridge(Mm(2102), new() { Casing = Mm(2050), Cleat = Mm(40) }));

        Assert.Equal((Mm(2102), Mm(298)), (laid.Casework.Cases[1].Y, laid.Casework.Cases[1].Height));
        Assert.Equal((Mm(2062), Mm(2102)), (RoomBox.Of(laid["B-Y"]).Low.Y, RoomBox.Of(laid["B-Y"]).High.Y));
        // Screwed through both neighbours 75 from its lower and upper edge: at 2177 and 2325, 15 each way.
        foreach (var side in new[] { laid["C1-R"], laid["C3-L"] })
            Assert.Equal([(Mm(2162), Mm(2192)), (Mm(2310), Mm(2340))], side.Machining.OfType<HardwareZone>().Where(z => z.For == "screws to run b").Select(z => (z.FromX, z.ToX)));
    }

    public static TheoryData<string, Func<Job>> Impossible => new()
    {
        { "runs[1].base.height", () => WithBridge(Mm(2101), new() { Casing = Mm(2050), Cleat = Mm(40) }) },
        { "runs[1].bridge.casing", () => WithBridge(Mm(2102), new()) },
        { "runs[0].base.kind", () => Job(UnitSystem.Millimetres, Plain(UnitSystem.Millimetres, Mm(900), Mm(2400), Mm(300)) with { Bridge = new() { Casing = Mm(2000) } }) },
        { "runs[0].tiers[0].counter.material", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)) with { Tiers = [new() { Counter = Seat with { Material = "slate" }, Interior = new() }] }) },
        { "runs[0].tiers[0].counter.layers", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)) with { Tiers = [new() { Counter = Seat with { Layers = 3 }, Interior = new() }] }) },
        { "runs[0].tiers[0].counter.edge", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)) with { Tiers = [new() { Counter = Seat with { Edge = "upright-nosing" }, Interior = new() }] }) },
        { "runs[0].tiers[0].counter", () => Job(UnitSystem.Millimetres, Bench(Mm(5200)) with { Division = null, Columns = [new() { Id = "a", Width = Mm(2600) }, new() { Id = "b" }] }) },
        { "runs[0].columns[0].open", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)) with { Division = null, Columns = [new() { Id = "a", Width = Mm(600), Open = true }, new() { Id = "b" }], Tiers = [new() { Interior = new() }] }) },
        { "runs[0].columns[0].open", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)) with { Left = new() { Kind = EndKind.Finished }, Division = null, Columns = [new() { Id = "a", Width = Mm(600), Open = true }, new() { Id = "b" }] }) },
        { "runs[1].offset", () => Job(UnitSystem.Millimetres, Bench(Mm(1600)), Bench(Mm(1600)) with { Id = "b", Base = new() { Kind = BaseKind.Hung, Height = Mm(300) }, Tiers = [new() { Interior = new() }] }) },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void WhatCannotBeIsNamedAtItsPlace(string path, Func<Job> job) => Laid.ProblemAt(path, job());

    private static (double, Severity) Finding(Laid laid, string check)
    {
        var finding = laid.Casework.Findings.Single(f => f.Check == check);
        return (finding.Value!.Value, finding.Severity);
    }
}
