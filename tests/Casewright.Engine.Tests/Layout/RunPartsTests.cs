using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Bases, ends, crowns, backs in several panels and trim bands, worked by hand from the trade's rules (common practice, no source).</summary>
public sealed class RunPartsTests
{
    private static Run WallToWall => Plain(UnitSystem.Millimetres, Mm(3000), Mm(2200), Mm(300)) with
    {
        Left = new() { Kind = EndKind.Wall, Filler = Mm(30) },
        Right = new() { Kind = EndKind.Wall, Filler = Mm(30) },
        Division = new() { Bays = 3 },
        Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), ShimRoom = Mm(10), Setback = Mm(60) },
    };

    [Fact]
    public void LadderBaseMeetsUnderUprights()
    {
        // Cases from 30 to 1010, 1990 and 2970. The toe face runs 10 into the scribe at either wall: −10 to 3010, 3020 long, so two
        // sections; they meet under the sides at 1010 or 1990: 1020 and 2000 either way. Rails: 30 to 1990 = 1960 and 1990 to 2970 = 980;
        // 100 − 10 = 90 high. Rungs 300 − 60 − 3·18 = 186 long.
        var laid = Laid.Of(UnitSystem.Millimetres, WallToWall);

        Assert.Equal([Mm(2000), Mm(1020)], new[] { "A-T1", "A-T2" }.Select(id => laid[id].Length));
        Assert.Equal(Mm(110), laid["A-T1"].Width);
        Assert.Equal([Mm(1960), Mm(1960), Mm(980)], new[] { "A-G1F", "A-G1R", "A-G2F" }.Select(id => laid[id].Length));
        Assert.Equal(Mm(90), laid["A-G1F"].Width);
        Assert.Equal(Mm(186), laid["A-G1.1"].Length);

        // First section: rungs at its ends, 39 and 1981, under the sides that meet at 1010, and one between, 971/2 = 485.5 apart.
        var middles = laid.Casework.Parts.Where(p => p.Id.StartsWith("A-G1.", StringComparison.Ordinal)).Select(p => p.Place.Origin.X + Mm(9));
        Assert.Equal([Mm(39), Mm(524.5m), Mm(1010), Mm(1495.5m), Mm(1981)], middles);
        Assert.Equal(Mm(100), laid.Casework.Cases[0].Y);
    }

    [Fact]
    public void RungsAreNeverFurtherApartThanTwoFeet()
    {
        // 24 in in a job in inches: 4 ft of clear bay gets one rung more, not two.
        var run = Plain(UnitSystem.Inches, In(49.44m), In(80), In(12)) with { Base = new() { Kind = BaseKind.Plinth, Height = In(4), Setback = In(2) } };
        var rungs = Laid.Of(UnitSystem.Inches, run).Casework.Parts.Where(p => p.Role == PartRole.BaseRung).ToArray();

        // From middle to middle of the end rungs 49.44 − 0.72 = 48.72, in three: 16.24 apart.
        Assert.Equal(4, rungs.Length);
        Assert.Equal(In(16.24m), rungs[1].Place.Origin.X - rungs[0].Place.Origin.X);
    }

    [Fact]
    public void ToeSpaceTurnsTheCornerAtAFinishedEnd()
    {
        // 2000 wide, both ends finished: toe face 2000 − 2·60 = 1880; rails behind the returns 1880 − 2·18 = 1844;
        // returns 300 − 60 − 18 + 10 scribe = 232.
        var run = Plain(UnitSystem.Millimetres, Mm(2000), Mm(2200), Mm(300)) with
        {
            Left = new() { Kind = EndKind.Finished },
            Right = new() { Kind = EndKind.Finished },
            Division = new() { Bays = 2 },
            Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(60) },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(1880), laid["A-T1"].Length);
        Assert.Equal(Mm(1844), laid["A-G1F"].Length);
        Assert.Equal([Mm(232), Mm(232)], new[] { "A-TL", "A-TR" }.Select(id => laid[id].Length));
        Assert.Equal(Exposure.Shows, laid["C1-L"].OppositeFace);
        Assert.Equal(Exposure.Hidden, laid["C1-R"].OppositeFace);
        Assert.Equal(Exposure.Shows, laid["C2-R"].OppositeFace);
    }

    [Fact]
    public void EndPanelHidesTheSideAndRunsToTheFloor()
    {
        // Panel 18 takes its thickness from the run: 2000 − 18 = 1982 for the cases; 300 + 10 wide, 2200 high.
        var run = Plain(UnitSystem.Millimetres, Mm(2000), Mm(2200), Mm(300)) with
        {
            Left = new() { Kind = EndKind.Finished, Panel = "panel" },
            Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(60) },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(1982), laid.Casework.Cases[0].Width);
        Assert.Equal((Mm(2200), Mm(310)), (laid["A-EL"].Length, laid["A-EL"].Width));
        Assert.Equal(Exposure.Shows, laid["A-EL"].ReferenceFace);
        Assert.Equal(Exposure.Hidden, laid["C1-L"].OppositeFace);
        Assert.False(laid.Has("A-TL"));
    }

    [Fact]
    public void SidesToTheFloorAreNotched()
    {
        // Side 2200 from the floor, notch 100 high and 60 − 10 = 50 into the panel behind its 10 nosing; nosing from 100 up, 2100;
        // toe face between the sides 900 − 36 = 864 by 100 + 10.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2200), Mm(300)) with
        {
            Base = new() { Kind = BaseKind.SidesToFloor, Height = Mm(100), Setback = Mm(60) },
            Nosing = new() { Uprights = "upright-nosing" },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(2200), laid["C1-L"].Length);
        Assert.Equal(new("toe space", Length.Zero, Length.Zero, Mm(100), Mm(50)), Assert.Single(laid["C1-L"].Machining.OfType<Notch>()));
        Assert.Equal(Mm(2100), laid["C1-Ln"].Length);
        Assert.Equal((Mm(864), Mm(110)), (laid["C1-Z"].Length, laid["C1-Z"].Width));
        Assert.Equal(Length.Zero, laid.Casework.Cases[0].Y);
        Assert.Equal(Mm(2200), laid.Casework.Cases[0].Height);
        Assert.Equal(Mm(100), laid["C1-L"].Machining.OfType<Dado>().Single(d => d.For == "C1-B").X);
    }

    [Fact]
    public void CrownAddsItsProjectionAtEachOuterMitre()
    {
        // Finished left, wall right, 3000 long, crown 19: 3000 + 19 + 50 = 3069; return 300 + 19 + 50 = 369.
        var run = WallToWall with { Left = new() { Kind = EndKind.Finished }, Head = new() { Height = Mm(2200), Crown = "crown" } };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(3069), laid["A-H1"].Length);
        Assert.Equal(Mm(369), laid["A-HL"].Length);
        Assert.False(laid.Has("A-HR"));
        Assert.False(laid.Has("A-H2"));
    }

    [Fact]
    public void LongCrownsAreJoinedOverTheJointsBetweenCases()
    {
        // 6000 between neighbours in three cases of 2000; boards 4000: the first length ends over the joint at 2000, as 4000 + 50 of
        // waste is more than a board; so does the next.
        var run = Plain(UnitSystem.Millimetres, Mm(6000), Mm(2200), Mm(300)) with
        {
            Division = new() { Bays = 9, BaysPerCase = 3 },
            Head = new() { Height = Mm(2200), Crown = "crown" },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal([Mm(2050), Mm(2050), Mm(2050)], new[] { "A-H1", "A-H2", "A-H3" }.Select(id => laid[id].Length));
    }

    [Fact]
    public void BackWiderThanAnySheetMeetsOnThePartition()
    {
        // W 1500, two bays of (1500 − 54)/2 = 723; back 1500 − 36 + 12 − 1 = 1475, sheets give 1220 − 10 = 1210:
        // two panels of 723 + 9 + 6 − 1 = 737. With 1200 of case the back is 1175 and stays whole.
        var run = Plain(UnitSystem.Millimetres, Mm(1500), Mm(2200), Mm(300)) with
        {
            Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(15) },
            Division = new() { Bays = 2, BaysPerCase = 2 },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal([Mm(737), Mm(737)], new[] { "C1-K1", "C1-K2" }.Select(id => laid[id].Width));
        Assert.Equal("C1-K2", Assert.Single(laid["C1-R"].Machining.OfType<Groove>()).For);
        Assert.Equal(laid["C1-P1"].Place.Origin.X + Mm(9), laid["C1-K2"].Place.Origin.X);
        Assert.Equal(Mm(1175), Laid.Of(UnitSystem.Millimetres, run with { Width = Mm(1200) })["C1-K"].Width);
    }

    [Fact]
    public void TrimBandLiesAsHighAsTheSheetReaches()
    {
        // H 2700: back 2699 from 0.5 up; a sheet gives 2430, and 300 must be left above: at most 0.5 + 2699 − 300 = 2399.5,
        // in steps of 5: 2395. The band of 60 lies from 2365 to 2425. A shelf from 2382 to 2400 pushes it down to 2382 − 30 = 2352: 2350.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2700), Mm(300)) with
        {
            TrimBand = new() { Material = "band" },
            Tiers = [new() { Interior = new() }],
        };
        var band = Laid.Of(UnitSystem.Millimetres, run)["C1-M"];
        Assert.Equal((Mm(864), Mm(2365)), (band.Length, band.Place.Origin.Y));

        var shelved = Laid.Of(UnitSystem.Millimetres, run with { Tiers = [new() { Interior = new() { FixedAt = [Mm(2400)] } }] });
        Assert.Equal(Mm(2320), shelved["C1-M"].Place.Origin.Y);

        // Uprights joined at 2400 would meet the backs' joint at 2395: the band keeps 30 clear and lies with its middle at 2370. At 2100 it is clear already.
        var near = Laid.Of(UnitSystem.Millimetres, run with { Splices = new() { Height = Mm(2400) } });
        Assert.Equal(Mm(2340), near["C1-M"].Place.Origin.Y);
        var far = Laid.Of(UnitSystem.Millimetres, run with { Splices = new() { Height = Mm(2100) } });
        Assert.Equal(Mm(2365), far["C1-M"].Place.Origin.Y);
    }

    [Fact]
    public void StackedCasesAreNumberedFromTheFloorUp()
    {
        var run = WallToWall with
        {
            Tiers = [new() { Height = Mm(800), Interior = new() { Fixed = 1 } }, new() { Interior = new() { Loose = 2 } }],
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(["C1.1", "C1.2", "C2.1", "C2.2", "C3.1", "C3.2"], laid.Casework.Cases.Select(c => c.Id));

        // Base 100 + 800 = 900, the rest 2200 − 900 = 1300.
        Assert.Equal((Mm(900), Mm(1300)), (laid["C2.2-L"].Place.Origin.Y, laid["C2.2-L"].Length));

        // A top under another case is hidden, and so is one above eye height.
        Assert.Equal(Exposure.Hidden, laid["C1.1-T"].ReferenceFace);
        Assert.Equal(Exposure.Hidden, laid["C1.2-T"].ReferenceFace);
        Assert.Equal(Exposure.Shows, Laid.Of(UnitSystem.Millimetres, run with { Head = new() { Height = Mm(1750) } })["C1.2-T"].ReferenceFace);
    }

    [Fact]
    public void ColumnsKeepTheirWidthsAndShareTheRest()
    {
        // 2940 between fillers: one column of 600, the others share 2340 for three bays and five uprights: (2340 − 90)/3 = 750;
        // columns 750 + 36 = 786 and 1500 + 54 = 1554.
        var run = WallToWall with
        {
            Division = null,
            Columns = [new() { Id = "l" }, new() { Id = "m", Width = Mm(600) }, new() { Id = "r", Bays = 2 }],
        };
        var cases = Laid.Of(UnitSystem.Millimetres, run).Casework.Cases;

        Assert.Equal([Mm(786), Mm(600), Mm(1554)], cases.Select(c => c.Width));
        Assert.Equal([Mm(750), Mm(564), Mm(750)], cases.Select(c => c.ClearBay));
    }

    [Fact]
    public void SharedPartitionsTakeShallowPinHoles()
    {
        // t 18: two holes of 10 would meet, so (18 − 2)/2 = 8 deep on both faces of the partition; 10 in the sides.
        var run = Plain(UnitSystem.Millimetres, Mm(1000), Mm(2000), Mm(300)) with { Division = new() { Bays = 2, BaysPerCase = 2 } };
        var laid = Laid.Of(UnitSystem.Millimetres, run);
        Assert.All(laid["C1-P1"].Machining.OfType<PinRow>(), r => Assert.Equal(Mm(8), r.Depth));
        Assert.All(laid["C1-L"].Machining.OfType<PinRow>(), r => Assert.Equal(Mm(10), r.Depth));

        // t 16: (16 − 2)/2 = 7 is too shallow for a pin; the rows of the right face stand 16 further in, still at the same heights.
        var thin = MetricStock with { Materials = [.. MetricStock.Materials.Select(m => m.Id == "panel" ? m with { Measured = Mm(16) } : m)] };
        var rows = Laid.Of(Job(UnitSystem.Millimetres, run with { Joinery = run.Joinery with { DadoDepth = Mm(5) } }) with { Stock = thin })["C1-P1"].Machining.OfType<PinRow>().ToArray();
        var left = rows.Where(r => r.Face == Face.Reference).ToArray();
        var right = rows.Where(r => r.Face == Face.Opposite).ToArray();
        Assert.Equal([Mm(37), Mm(257)], left.Take(2).Select(r => r.Y));
        Assert.Equal([Mm(53), Mm(241)], right.Take(2).Select(r => r.Y));
        Assert.Equal(left.Select(r => r.FirstX), right.Select(r => r.FirstX));
        Assert.All(rows, r => Assert.Equal(Mm(10), r.Depth));
    }

    [Fact]
    public void NailersGoBehindACapturedBackWithRoom()
    {
        // Inset 20 takes a nailer of 18 against the back: from 2 to 20 off the wall, 900 − 36 = 864 long, under the top. With 12 of
        // inset it goes in front of the back, from 18 on.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(1100), Mm(300)) with
        {
            Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(20) },
            Nailers = new() { Height = Mm(80) },
            Tiers = [new() { Interior = new() }],
        };
        var behind = Laid.Of(UnitSystem.Millimetres, run)["C1-N1"];
        var front = Laid.Of(UnitSystem.Millimetres, run with { Back = run.Back with { Inset = Mm(12) } })["C1-N1"];

        Assert.Equal(Mm(864), behind.Length);
        Assert.Equal((Mm(2), Mm(20)), (RoomBox.Of(behind).Low.Z, RoomBox.Of(behind).High.Z));
        Assert.Equal(Mm(1082), RoomBox.Of(behind).High.Y);
        Assert.Equal(Exposure.Hidden, behind.ReferenceFace);
        Assert.Equal((Mm(18), Mm(36)), (RoomBox.Of(front).Low.Z, RoomBox.Of(front).High.Z));
        Assert.Equal(Exposure.Shows, front.ReferenceFace);
    }
}
