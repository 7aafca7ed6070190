using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Doors and drawers computed by hand with the formulas of the trade (common practice, no source).</summary>
public sealed class FrontWorkedExampleTests
{
    private static readonly FrontDesign Pair = new() { Kind = FrontKind.Doors, Fit = FrontFit.Overlay, Material = "panel", Leaves = 2 };

    private static readonly FrontDesign ThreeDrawers = new() { Kind = FrontKind.Drawers, Fit = FrontFit.Overlay, Material = "panel", Drawers = 3, BoxMaterial = "panel", BottomMaterial = "back" };

    private static Run Base600(params FrontDesign[] fronts) => Plain(UnitSystem.Millimetres, Mm(600), Mm(720), Mm(580)) with
    {
        Tiers = [new() { Interior = new() { Loose = fronts[0].Kind == FrontKind.Doors ? 1 : 0, Fronts = [.. fronts] } }],
    };

    [Fact]
    public void AnOverlaidPairInMillimetres()
    {
        // W 600, H 720: height 720 − 2 · 1.5 = 717; width (600 − 2 · 1.5 − 3)/2 = 297. The second begins at 1.5 + 297 + 3 = 301.5.
        // They stand 2 in front of the case: 580 + 2 + 18 = 600.
        var laid = Laid.Of(UnitSystem.Millimetres, Base600(Pair));
        var (left, right) = (laid["C1-D1L"], laid["C1-D1R"]);

        Assert.Equal((Mm(717), Mm(297), Mm(18)), (left.Length, left.Width, left.Thickness));
        Assert.Equal((Mm(717), Mm(297)), (right.Length, right.Width));
        Assert.Equal(new Point3(Mm(1.5m), Mm(1.5m), Mm(600)), left.Place.Origin);
        Assert.Equal(Mm(301.5m), right.Place.Origin.X);
        Assert.Equal((Hand.Left, Hand.Right), (left.Hand, right.Hand));
    }

    [Fact]
    public void HingesAndTheirPlates()
    {
        // A door of 717 has two hinges, 100 from its ends: at 100 and 617. Their plates stand at 101.5 and 618.5 of the side, 26 each way.
        // The cup is 22.5 from the hinged edge: 22.5 on the left leaf, 297 − 22.5 = 274.5 on the right one.
        var laid = Laid.Of(UnitSystem.Millimetres, Base600(Pair));

        Assert.Equal([(Mm(100), Mm(22.5m)), (Mm(617), Mm(22.5m))], Cups(laid["C1-D1L"]));
        Assert.Equal([(Mm(100), Mm(274.5m)), (Mm(617), Mm(274.5m))], Cups(laid["C1-D1R"]));
        Assert.Equal([(Mm(75.5m), Mm(127.5m)), (Mm(592.5m), Mm(644.5m))], Zones(laid["C1-L"], "hinge of C1-D1L"));
        Assert.Equal([(Mm(75.5m), Mm(127.5m)), (Mm(592.5m), Mm(644.5m))], Zones(laid["C1-R"], "hinge of C1-D1R"));
    }

    [Fact]
    public void AnInsetPairInMillimetres()
    {
        // Opening 564 × 684: width (564 − 3 · 2.5)/2 = 278.25, down to 278.2; height 684 − 2 · 2.5 = 679, flush at 580.
        // A loose shelf behind it is 18 less deep: 580 − 18 − 3 − 6 − 2 = 551, and the front pin row 37 + 18 = 55 from the edge.
        var laid = Laid.Of(UnitSystem.Millimetres, Base600(Pair with { Fit = FrontFit.Inset }));

        Assert.Equal((Mm(679), Mm(278.2m)), (laid["C1-D1L"].Length, laid["C1-D1L"].Width));
        Assert.Equal(new Point3(Mm(20.5m), Mm(20.5m), Mm(580)), laid["C1-D1L"].Place.Origin);
        Assert.Equal(Mm(551), laid["C1-S1"].Width);
        Assert.Equal(Mm(55), laid["C1-L"].Machining.OfType<PinRow>().Min(r => r.Y));
    }

    [Fact]
    public void AFixedShelfBehindAnInsetDoorStandsBackAndOneAtItsEndDoesNot()
    {
        // D 580, back 6: a shelf is 574 deep, behind a door of 18 it is 556. Two openings behind the door, the third open.
        var run = Plain(UnitSystem.Millimetres, Mm(600), Mm(2000), Mm(580)) with
        {
            Tiers = [new() { Interior = new() { FixedAt = [Mm(400), Mm(800)], Fronts = [Pair with { Fit = FrontFit.Inset, Openings = 2 }] } }],
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(556), Mm(562)), (laid["C1-F1"].Width, laid["C1-F1"].Place.Origin.Z));
        Assert.Equal((Mm(574), Mm(580)), (laid["C1-F2"].Width, laid["C1-F2"].Place.Origin.Z));
        Assert.Equal(Mm(18), laid["C1-L"].Machining.OfType<Dado>().Single(d => d.For == "C1-F1").FromY);
        // Opening from 18 to 782: 764 − 5 = 759.
        Assert.Equal(Mm(759), laid["C1-D1L"].Length);
    }

    [Fact]
    public void DoorsOfTwoBaysMeetOverTheMiddleOfThePartition()
    {
        // W 1000: bays (1000 − 3 · 18)/2 = 473; the partition's middle is at 18 + 473 + 9 = 500. Each field 500: 500 − 1.5 − 1.5 = 497.
        var run = Plain(UnitSystem.Millimetres, Mm(1000), Mm(720), Mm(580)) with
        {
            Division = new() { Bays = 2, BaysPerCase = 2 },
            Tiers = [new() { Interior = new() { Fronts = [Pair with { Leaves = 1 }] } }],
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(497), Mm(1.5m)), (laid["C1-D1.1"].Width, laid["C1-D1.1"].Place.Origin.X));
        Assert.Equal((Mm(497), Mm(501.5m)), (laid["C1-D1.2"].Width, laid["C1-D1.2"].Place.Origin.X));
        // Both are hung left: the second on the partition's right face.
        Assert.All(laid["C1-P1"].Machining.OfType<HardwareZone>(), z => Assert.Equal(Face.Opposite, z.Face));
        Assert.Equal(2, laid["C1-P1"].Machining.OfType<HardwareZone>().Count());
    }

    [Fact]
    public void ThreeDrawersInMillimetres()
    {
        // Field 720 − 3 = 717, less two gaps of 3: 711/3 = 237 each, 597 wide. The opening runs from 18 to 702; the gaps' middles are at
        // 1.5 + 237 + 1.5 = 240 and 480: heights 222, 240, 222 less 30 of headroom make boxes of 192, 210, 192.
        // Box width 564 − 26 = 538. Depth 582 − 6 − 10 = 566: slides of 550. Ends 538 − 36 = 502.
        // Bottom 538 − 36 + 2 · 6 − 1 = 513 by 550 − 36 + 12 − 1 = 525.
        var laid = Laid.Of(UnitSystem.Millimetres, Base600(ThreeDrawers));

        Assert.Equal([(Mm(597), Mm(237)), (Mm(597), Mm(237)), (Mm(597), Mm(237))], new[] { "C1-W1F", "C1-W2F", "C1-W3F" }.Select(id => (laid[id].Length, laid[id].Width)));
        Assert.Equal([Mm(192), Mm(210), Mm(192)], new[] { "C1-W1L", "C1-W2L", "C1-W3R" }.Select(id => laid[id].Width));
        Assert.Equal(Mm(550), laid["C1-W1L"].Length);
        Assert.Equal(Mm(502), laid["C1-W1A"].Length);
        Assert.Equal((Mm(513), Mm(525)), (laid["C1-W1B"].Length, laid["C1-W1B"].Width));
        // 538 from outside to outside, 13 from the side at either hand.
        Assert.Equal(Mm(18 + 13), RoomBox.Of(laid["C1-W1L"]).Low.X);
        Assert.Equal(Mm(600 - 18 - 13), RoomBox.Of(laid["C1-W1R"]).High.X);
    }

    [Fact]
    public void GivenDrawerHeightsAndTheRest()
    {
        // 717 less two gaps is 711; fronts of 280 and 240 leave 191.
        var laid = Laid.Of(UnitSystem.Millimetres, Base600(ThreeDrawers with { Heights = [Mm(280), Mm(240)] }));

        Assert.Equal([Mm(280), Mm(240), Mm(191)], new[] { "C1-W1F", "C1-W2F", "C1-W3F" }.Select(id => laid[id].Width));
    }

    [Fact]
    public void DoorsAndDrawersInInches()
    {
        // W 24, H 30, t 0.72, D 24: overlaid pair 30 − 2/16 = 29 7/8 by (24 − 2/16 − 1/8)/2 = 11 7/8.
        // Inset: 28.56 − 3/16 = 28.3725, down to 28 11/32; (22.56 − 9/32)/2 = 11.139, down to 11 1/8.
        // Drawer box 22.56 − 1 = 21.56, down to 21 17/32; depth 24 1/16 − 1/4 − 3/8 = 23 7/16: slides of 22.
        var run = Plain(UnitSystem.Inches, In(24), In(30), In(24));
        Laid Of(FrontDesign front) => Laid.Of(UnitSystem.Inches, run with { Tiers = [new() { Interior = new() { Fronts = [front] } }] });

        var overlaid = Of(Pair)["C1-D1L"];
        Assert.Equal((In(29.875m), In(11.875m)), (overlaid.Length, overlaid.Width));
        var inset = Of(Pair with { Fit = FrontFit.Inset })["C1-D1L"];
        Assert.Equal((In(28.34375m), In(11.125m)), (inset.Length, inset.Width));
        var drawers = Of(ThreeDrawers with { BoxMaterial = "base" });
        Assert.Equal(In(22), drawers["C1-W1L"].Length);
        Assert.Equal(In(21.53125m), RoomBox.Of(drawers["C1-W1R"]).High.X - RoomBox.Of(drawers["C1-W1L"]).Low.X, (a, b) => (a - b).Abs() <= In(0.03125m));
    }

    [Fact]
    public void ADoorOverAFaceFrameAndOneWithinIt()
    {
        // W 900: opening 900 − 2 · 45 = 810; over it (810 + 2 · 12 − 3)/2 = 415.5. H 2000 less rails of 45 and 60: 1895 + 24 = 1919.
        // Within it (810 − 7.5)/2 = 401.25, down to 401.2; 1895 − 5 = 1890. The door of 18 lies in the frame of 20: no shelf stands back.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(400)) with
        {
            Construction = Construction.FaceFrame,
            FaceFrame = new() { EndStile = "stile", TopRail = "rail", BottomRail = "stile" },
            Tiers = [new() { Interior = new() { Loose = 2, Fronts = [Pair] } }],
        };
        var over = Laid.Of(UnitSystem.Millimetres, run)["C1-D1L"];
        Assert.Equal((Mm(1919), Mm(415.5m)), (over.Length, over.Width));

        var within = Laid.Of(UnitSystem.Millimetres, run with { Tiers = [new() { Interior = new() { Loose = 2, Fronts = [Pair with { Fit = FrontFit.Inset }] } }] });
        Assert.Equal((Mm(1890), Mm(401.2m)), (within["C1-D1L"].Length, within["C1-D1L"].Width));
        Assert.Equal(Mm(400 - 20 - 3 - 6 - 2), within["C1-S1"].Width);
    }

    [Fact]
    public void HardwareIsCounted()
    {
        // One pair of doors: 4 hinges, 2 pulls. Three drawers: 3 pairs of slides of 550, 3 pulls.
        var parts = Laid.Of(UnitSystem.Millimetres, Base600(Pair), Base600(ThreeDrawers) with { Id = "b", Offset = Mm(2000) }).Casework.Parts;
        var count = FrontHardwareCount.Of(parts);

        Assert.Equal((4, 5), (count.Hinges, count.Pulls));
        Assert.Equal([(Mm(550), 3)], count.Slides);
    }

    [Theory]
    [InlineData(720, 2)]
    [InlineData(900, 2)]
    [InlineData(901, 3)]
    [InlineData(1600, 3)]
    [InlineData(2000, 4)]
    [InlineData(2300, 5)]
    public void TallerDoorsHaveMoreHinges(int height, int hinges) => Assert.Equal(hinges, Hinges.Count(Mm(height)));

    private static IEnumerable<(Length, Length)> Cups(Part door) => door.Machining.OfType<Bore>().Where(b => b.For == "hinge").Select(b => (b.X, b.Y));

    private static IEnumerable<(Length, Length)> Zones(Part side, string what) => side.Machining.OfType<HardwareZone>().Where(z => z.For == what).Select(z => (z.FromX, z.ToX));
}
