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
