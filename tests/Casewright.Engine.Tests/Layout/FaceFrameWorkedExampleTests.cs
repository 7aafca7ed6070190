using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>A face-frame case against examples worked by hand from the trade's rules (common practice, no source).</summary>
public sealed class FaceFrameWorkedExampleTests
{
    private static Run Framed(UnitSystem units, Length width, Length height, Length depth, Length overlap) => Plain(units, width, height, depth) with
    {
        Construction = Construction.FaceFrame,
        FaceFrame = new() { EndStile = "stile", MidStile = "mid-stile", TopRail = "rail", BottomRail = "stile", FinishedOverlap = overlap },
        Right = new() { Kind = EndKind.Finished },
    };

    [Fact]
    public void MetricFrame()
    {
        // W 979, H 1876, D 300, frame 20 thick, stiles 45, top rail 60, bottom rail 45, one finished end lapped by 6:
        // stile 1876; rails 979 + 6 − 90 = 895; side depth 300 − 20 = 280; fixed shelf 280 − 6 = 274;
        // bottom panel dadoed at 45 − 18 = 27 from the foot; clear height 1876 − 27 − 36 = 1813; back 1876 − 27 − 1 = 1848.
        var laid = Laid.Of(UnitSystem.Millimetres, Framed(UnitSystem.Millimetres, Mm(979), Mm(1876), Mm(300), Mm(6)));

        Assert.Equal(Mm(1876), laid["C1-VL"].Length);
        Assert.Equal(Mm(45), laid["C1-VR"].Width);
        Assert.NotNull(laid["C1-VR"].FitOnSite);
        Assert.Null(laid["C1-VL"].FitOnSite);
        Assert.Equal(Mm(895), laid["C1-HT"].Length);
        Assert.Equal(Mm(895), laid["C1-HB"].Length);
        Assert.Equal(Mm(60), laid["C1-HT"].Width);
        Assert.Equal(Mm(280), laid["C1-L"].Width);
        Assert.Equal(Mm(274), laid["C1-F1"].Width);
        Assert.Equal(Mm(1848), laid["C1-K"].Length);
        var dado = laid["C1-L"].Machining.OfType<Dado>().Single(d => d.For == "C1-B");
        Assert.Equal((Mm(27), Mm(18), Mm(6)), (dado.X, dado.Width, dado.Depth));

        // The top edge of the bottom rail is flush with the bottom's upper face.
        var rail = laid["C1-HB"];
        Assert.Equal(laid["C1-B"].Place.Origin.Y, rail.Place.HighCorner(rail.Length, rail.Width, rail.Thickness).Y);
    }

    [Fact]
    public void OneFrameOverThreeCases()
    {
        // Three of 1000, 1900 high, joint stiles 60 over their joints, right end finished and lapped by 6: rails 3000 + 6 − 2·45 = 2916 right through, joint
        // stiles 1900 − 60 − 45 = 1795 from 970 and 1970. Openings: 45 to 970, 1030 to 1970, 2030 to 2961.
        var run = Framed(UnitSystem.Millimetres, Mm(3000), Mm(1900), Mm(300), Mm(6)) with { Division = new() { Bays = 3 } };
        run = run with { FaceFrame = run.FaceFrame! with { JointStile = "rail" } };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.All(new[] { "A-VT", "A-VB" }, id => Assert.Equal((Mm(2916), Mm(45)), (laid[id].Length, laid[id].Place.Origin.X)));
        Assert.Equal([Mm(970), Mm(1970)], new[] { "A-VJ1", "A-VJ2" }.Select(id => laid[id].Place.Origin.X));
        Assert.All(new[] { "A-VJ1", "A-VJ2" }, id => Assert.Equal((Mm(1795), Mm(45)), (laid[id].Length, laid[id].Place.Origin.Y)));
        Assert.All(new[] { "A-VL", "A-VR" }, id => Assert.Equal(Mm(1900), laid[id].Length));
        Assert.Equal(Mm(2961), laid["A-VR"].Place.Origin.X);
        Assert.All(laid.Casework.Parts.Where(p => p.Role is PartRole.Stile or PartRole.Rail), p => Assert.Equal("a", p.Case));
        Assert.False(laid.Has("C1-VL"));
    }

    [Fact]
    public void OneFrameInInchesWithDoors()
    {
        // Two of 36, 80 high, joint stile 2 1/2, top rail 2 1/2, bottom rail 1 3/4: rails 72 − 3 1/2 = 68 1/2, joint stile 75 3/4. Inset doors 3/32 all
        // round: openings 36 − 1 3/4 − 1 1/4 = 33 wide, 32 13/16.
        var run = Framed(UnitSystem.Inches, In(72), In(80), In(12), Length.Zero) with { Division = new() { Bays = 2 } };
        run = run with
        {
            FaceFrame = run.FaceFrame! with { JointStile = "rail" },
            Tiers = [new() { Interior = new() { Fronts = [new() { Kind = FrontKind.Doors, Fit = FrontFit.Inset, Material = "panel" }] } }],
        };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal((In(68.5m), In(75.75m)), (laid["A-VT"].Length, laid["A-VJ1"].Length));
        Assert.All(new[] { "C1-D1", "C2-D1" }, id => Assert.Equal(In(32.8125m), laid[id].Width));
        Assert.Equal(In(37.25m) + In(0.09375m), laid["C2-D1"].Place.Origin.X);
    }

    [Fact]
    public void DrawersBehindAFrameArePackedOut()
    {
        // W 600, stiles 45 over sides of 18: 27 to pack on either side. Opening 510, box 510 − 26 = 484, from 45 + 13 = 58.
        // Depth 500: frame 20, overlay front on buffers of 2; behind it 502 − 6 = 496, less 10: slides of 450.
        var run = Framed(UnitSystem.Millimetres, Mm(600), Mm(800), Mm(500), Length.Zero) with { Right = new() { Kind = EndKind.Neighbour } };
        run = run with
        {
            FaceFrame = run.FaceFrame! with { SlidePacker = "packer" },
            Tiers = [new() { Interior = new() { Fronts = [new() { Kind = FrontKind.Drawers, Fit = FrontFit.Overlay, Material = "panel", Drawers = 2, BoxMaterial = "panel", BottomMaterial = "back" }] } }],
        };
        var laid = Laid.Of(Packed(run, 30));

        Assert.Equal((Mm(448), Mm(58)), (laid["C1-W1A"].Length, RoomBox.Of(laid["C1-W1L"]).Low.X));
        Assert.All(new[] { "C1-W1PL", "C1-W1PR", "C1-W2PL" }, id => Assert.Equal((Mm(450), Mm(60), Mm(27)), (laid[id].Length, laid[id].Width, laid[id].Thickness)));
        Assert.Equal((Mm(18), Mm(45)), (RoomBox.Of(laid["C1-W1PL"]).Low.X, RoomBox.Of(laid["C1-W1PL"]).High.X));
        Assert.Equal((Mm(555), Mm(582), Mm(480)), (RoomBox.Of(laid["C1-W1PR"]).Low.X, RoomBox.Of(laid["C1-W1PR"]).High.X, RoomBox.Of(laid["C1-W1PR"]).High.Z));

        // The slide of 45 lies on the middle of the packer of 60: the box from 45 + 15 = 60 up, the packer from 52.5.
        Assert.Equal((Mm(60), Mm(52.5m)), (RoomBox.Of(laid["C1-W1L"]).Low.Y, RoomBox.Of(laid["C1-W1PL"]).Low.Y));
        Assert.Equal("planed from 30 mm to 27 mm, flush with the frame", laid["C1-W1PL"].FitOnSite);

        // Under the top rail of 60 the upper drawer has less than under the top of 18.
        Assert.True(RoomBox.Of(laid["C1-W2L"]).High.Y <= Mm(740));

        Laid.ProblemAt("runs[0].faceFrame.slidePacker", Packed(run, 26));
        Laid.ProblemAt("runs[0].faceFrame.slidePacker", Packed(run with { FaceFrame = run.FaceFrame! with { SlidePacker = null } }, 30));
        Laid.ProblemAt("runs[0].faceFrame.jointStile", Packed(run with { FaceFrame = run.FaceFrame! with { JointStile = "upright-nosing" } }, 30));
    }

    [Fact]
    public void DrawersBehindAFrameInInches()
    {
        // W 24, stiles 1 3/4 over 0.72: 1.03 to pack. Opening 20 1/2, box 19 1/2, front and back of it 19 1/2 − 1.44 = 18.06, down to 18 1/32.
        var run = Framed(UnitSystem.Inches, In(24), In(32), In(20), Length.Zero) with { Right = new() { Kind = EndKind.Neighbour } };
        run = run with
        {
            FaceFrame = run.FaceFrame! with { SlidePacker = "packer" },
            Tiers = [new() { Interior = new() { Fronts = [new() { Kind = FrontKind.Drawers, Fit = FrontFit.Inset, Material = "panel", Drawers = 3, BoxMaterial = "panel", BottomMaterial = "back" }] } }],
        };
        var job = Job(UnitSystem.Inches, run);
        job = job with { Stock = job.Stock with { Materials = [.. job.Stock.Materials, job.Stock.Materials[^1] with { Id = "packer", Nominal = In(1.125m), BoardWidth = In(2.5m) }] } };
        var laid = Laid.Of(job);

        Assert.Equal(In(1.03m), laid["C1-W2PL"].Thickness);
        Assert.Equal(In(18.03125m), laid["C1-W2A"].Length);
    }

    private static Casewright.Model.Jobs.Job Packed(Run run, decimal thickness)
    {
        var job = Job(UnitSystem.Millimetres, run);
        return job with { Stock = job.Stock with { Materials = [.. job.Stock.Materials, job.Stock.Materials[^1] with { Id = "packer", Nominal = Mm(thickness), BoardWidth = Mm(60) }] } };
    }

    [Fact]
    public void InchFrameWithTwoBays()
    {
        // W 48, H 84, D 12 3/4, t 0.72, frame 3/4 thick, stiles 1 3/4, top rail 2 1/2, bottom rail 1 3/4, mid stile 1 1/2, no overlap:
        // rails 48 − 3 1/2 = 44 1/2; mid stile 84 − 2 1/2 − 1 3/4 = 79 3/4; clear (48 − 2.16)/2 = 22.92;
        // fixed shelf 22.92 + 0.5 = 23.42, nearest 1/32 is 23 13/32 (23.40625); partition 84 − 1.44 − (1.75 − 0.72) + 0.5 = 82.03,
        // nearest 1/32 is 82 1/32; side depth 12.
        var run = Framed(UnitSystem.Inches, In(48), In(84), In(12.75m), Length.Zero) with { Division = new() { Bays = 2, BaysPerCase = 2 } };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal(Length.FromInches(44, 1, 2), laid["C1-HT"].Length);
        Assert.Equal(Length.FromInches(79, 3, 4), laid["C1-V1"].Length);
        Assert.Equal(In(22.92m), laid.Casework.Cases[0].ClearBay);
        Assert.Equal(Length.FromInches(23, 13, 32), laid["C1-F1.1"].Length);
        Assert.Equal(Length.FromInches(82, 1, 32), laid["C1-P1"].Length);
        Assert.Equal(In(12), laid["C1-L"].Width);

        // The mid stile stands over the middle of the partition: 0.72 + 22.92 + 0.36 = 24, its left edge at 23 1/4.
        Assert.Equal(In(23.25m), laid["C1-V1"].Place.Origin.X);
    }
}
