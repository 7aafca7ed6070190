using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>
/// Base moulds, light rails and crowns with their returns, by hand: blank = length + projection for each outer mitre + 50 of waste, and a
/// mitre of 45 degrees is shorter by the thickness behind (common practice, no source; geometry of the mitre).
/// </summary>
public sealed class MouldingTests
{
    private static Run Based(Length setback) => Plain(UnitSystem.Millimetres, Mm(3000), Mm(2200), Mm(300)) with
    {
        Left = new() { Kind = EndKind.Finished },
        Right = new() { Kind = EndKind.Wall, Filler = Mm(30) },
        Division = new() { Bays = 3 },
        Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), ShimRoom = Mm(10), Setback = setback, Mould = "crown" },
    };

    private static Length Named(Part part, string dimension) => part.Derivations.Single(d => d.Dimension == dimension).Result;

    private static (Length Blank, Length Long, Length Short) Points(Part part) => (part.Length, Named(part, "long point"), Named(part, "short point"));

    [Fact]
    public void ABaseMouldTurnsTheFinishedEnd()
    {
        // Board 90 by 19. Front from the finished end to the wall, 3000: 3019 to the long point, 3000 to the short, blank 3069; return 300 + 19.
        var laid = Laid.Of(UnitSystem.Millimetres, Based(Length.Zero));

        Assert.Equal((Mm(3069), Mm(3019), Mm(3000)), Points(laid["A-O1"]));
        Assert.Equal((Mm(369), Mm(319), Mm(300)), Points(laid["A-OL"]));
        Assert.False(laid.Has("A-OR"));

        // 10 of the 90 are scribed off: the upper edge lies at 80, the blank from −10.
        Assert.Equal((Mm(-10), Mm(80)), (RoomBox.Of(laid["A-O1"]).Low.Y, RoomBox.Of(laid["A-O1"]).High.Y));
        Assert.Equal((Mm(-19), Mm(319)), (RoomBox.Of(laid["A-O1"]).Low.X, RoomBox.Of(laid["A-O1"]).High.Z));
        Assert.Contains("3019 mm to the long point, 3000 mm to the short one", laid["A-O1"].FitOnSite, StringComparison.Ordinal);
    }

    [Fact]
    public void SetBackItLiesInTheToeSpace()
    {
        // From 60 in: 2940, long point 2959; return 300 − 60 + 19 = 259.
        var laid = Laid.Of(UnitSystem.Millimetres, Based(Mm(60)));
        Assert.Equal((Mm(3009), Mm(2959), Mm(2940)), Points(laid["A-O1"]));
        Assert.Equal((Mm(309), Mm(259), Mm(240)), Points(laid["A-OL"]));

        // A panel of 18 runs to the floor: the mould ends square against its inside, 3000 − 18 + 50; without setback it runs round the panel.
        var panel = new RunEnd { Kind = EndKind.Finished, Panel = "panel" };
        var closed = Laid.Of(UnitSystem.Millimetres, Based(Mm(60)) with { Left = panel });
        Assert.Equal(Mm(3032), closed["A-O1"].Length);
        Assert.False(closed.Has("A-OL"));
        Assert.Equal(Mm(3069), Laid.Of(UnitSystem.Millimetres, Based(Length.Zero) with { Left = panel })["A-O1"].Length);
    }

    [Fact]
    public void AKneeSpaceInterruptsIt()
    {
        // Columns 800, knee 1000, the rest 3000 − 30 − 1800 = 1170: mould round the first stretch 800 + 2·19, round the second 1170 + 30 + 19 to the wall.
        var run = Based(Length.Zero) with
        {
            Head = new() { Height = Mm(730) },
            Division = null,
            Columns = [new() { Id = "l", Width = Mm(800) }, new() { Id = "k", Width = Mm(1000), Open = true }, new() { Id = "r" }],
            Tiers = [new() { Counter = new() { Use = CounterUse.Desk, Material = "panel" }, Interior = new() }],
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(838), Mm(800)), (Named(laid["A-O1"], "long point"), Named(laid["A-O1"], "short point")));
        Assert.Equal(Mm(1219), Named(laid["A-O2"], "long point"));
        Assert.All(new[] { "A-OL", "A-OR", "A-OL2" }, id => Assert.Equal(Mm(319), Named(laid[id], "long point")));
        Assert.False(laid.Has("A-OR2"));
    }

    [Fact]
    public void ALightRailIsFlushUnderAHungRun()
    {
        // Rail 60 by 20, flush: 900 to the long points and 860 to the short ones; returns 300 and 280. From 1440 up to 1500.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2200), Mm(300)) with
        {
            Left = new() { Kind = EndKind.Finished },
            Right = new() { Kind = EndKind.Finished },
            Base = new() { Kind = BaseKind.Hung, Height = Mm(1500), LightRail = "rail" },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(950), Mm(900), Mm(860)), Points(laid["A-J1"]));
        Assert.All(new[] { "A-JL", "A-JR" }, id => Assert.Equal((Mm(350), Mm(300), Mm(280)), Points(laid[id])));
        var box = RoomBox.Of(laid["A-J1"]);
        Assert.Equal((Mm(1440), Mm(1500), Mm(280), Mm(300)), (box.Low.Y, box.High.Y, box.Low.Z, box.High.Z));
    }

    [Fact]
    public void ABridgeWithALightRailClearsTheCasing()
    {
        // Casing 2000 + 12 + rail 60: 2072 at least.
        Run Bridge(decimal height) => Plain(UnitSystem.Millimetres, Mm(900), Mm(2400), Mm(300)) with
        {
            Base = new() { Kind = BaseKind.Hung, Height = Mm(height), LightRail = "rail" },
            Bridge = new() { Casing = Mm(2000), Cleat = Mm(40) },
            Tiers = [new() { Interior = new() }],
        };

        Assert.Contains("2072", Laid.ProblemAt("runs[0].base.height", Job(UnitSystem.Millimetres, Bridge(2071))).Accepted, StringComparison.Ordinal);
        Assert.True(Laid.Of(UnitSystem.Millimetres, Bridge(2072)).Has("A-J1"));
    }

    [Fact]
    public void InInches()
    {
        // Board 3 1/2 by 3/4 round both ends of 36 by 12: 37 1/2 and 36, blank 39 1/2; returns 12 3/4 and 12. Upper edge 3 1/2 − 3/8.
        var run = Plain(UnitSystem.Inches, In(36), In(80), In(12)) with
        {
            Left = new() { Kind = EndKind.Finished },
            Right = new() { Kind = EndKind.Finished },
            Base = new() { Kind = BaseKind.Plinth, Height = In(4), ShimRoom = In(0.375m), Mould = "crown" },
            Head = new() { Height = In(80), Crown = "crown" },
        };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal((In(39.5m), In(37.5m), In(36)), Points(laid["A-O1"]));
        Assert.All(new[] { "A-OL", "A-OR", "A-HL" }, id => Assert.Equal((In(14.75m), In(12.75m), In(12)), Points(laid[id])));
        Assert.Equal(In(3.125m), RoomBox.Of(laid["A-O1"]).High.Y);
    }

    public static TheoryData<string, Func<Run>> Impossible => new()
    {
        { "runs[0].base.mould", () => Based(Length.Zero) with { Base = new() { Kind = BaseKind.None, Mould = "crown" } } },
        { "runs[0].base.mould", () => Based(Length.Zero) with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(70), Mould = "crown" } } },
        { "runs[0].base.setback", () => Based(Length.Zero) with { Base = new() { Kind = BaseKind.SidesToFloor, Height = Mm(100), Setback = Mm(50), Mould = "crown" } } },
        { "runs[0].base.lightRail", () => Based(Length.Zero) with { Base = new() { Kind = BaseKind.None, LightRail = "rail" } } },
        { "runs[0].base.mould", () => Based(Length.Zero) with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Mould = "panel" } } },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void WhatCannotBeIsNamedAtItsPlace(string path, Func<Run> run) => Laid.ProblemAt(path, Job(UnitSystem.Millimetres, run()));
}
