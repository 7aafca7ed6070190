using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Outlets and registers of the survey as cut-outs in the part that they hit, computed by hand.</summary>
public sealed class CutOutTests
{
    private static Job With(params WallFeature[] features)
    {
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300)) with { Base = new() { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(50), ShimRoom = Mm(10) } };
        var job = Job(UnitSystem.Millimetres, run);
        return job with { Walls = [job.Walls[0] with { Survey = new() { Datum = Mm(1000), Features = [.. features] } }] };
    }

    private static WallFeature Outlet(decimal x, decimal y) => new() { Name = "socket", Kind = FeatureKind.Outlet, X = Mm(x), Y = Mm(y), Width = Mm(146), Height = Mm(86) };

    [Fact]
    public void AnOutletIsCutOutOfTheBack()
    {
        // The back is rabbeted: 9 into the sides less half its play of 1, so it begins at 18 − 9 + 0.5 = 9.5 and, over the base, at 100.5.
        // A socket at 300 and 400, 146 by 86, with 3 of play: x (from the foot) 400 − 3 − 100.5 = 296.5, y 300 − 3 − 9.5 = 287.5, 92 by 152.
        var cut = Assert.Single(Laid.Of(With(Outlet(300, 400)))["C1-K"].Machining.OfType<CutOut>());

        Assert.Equal(("socket", Mm(296.5m), Mm(287.5m), Mm(92), Mm(152)), (cut.For, cut.X, cut.Y, cut.LengthX, cut.LengthY));
    }

    [Fact]
    public void ARegisterIsCutOutOfTheToeFace()
    {
        // The toe face runs from 0 along the run, its upper edge at 100: a register from 200, 20 to 80 high, is 17 from the upper edge.
        var register = new WallFeature { Name = "register", Kind = FeatureKind.Register, X = Mm(200), Y = Mm(20), Width = Mm(250), Height = Mm(60) };
        var cut = Assert.Single(Laid.Of(With(register))["A-T1"].Machining.OfType<CutOut>());

        Assert.Equal((Mm(197), Mm(17), Mm(256), Mm(66)), (cut.X, cut.Y, cut.LengthX, cut.LengthY));
    }

    [Fact]
    public void WhatIsMovedOrLiesAcrossAnEdgeIsNotCut()
    {
        Assert.Empty(Laid.Of(With(Outlet(300, 400) with { Moves = true }))["C1-K"].Machining.OfType<CutOut>());
        // Across the side of the case: no cut-out of the back helps, the finding of the survey tells.
        Assert.Empty(Laid.Of(With(Outlet(840, 400)))["C1-K"].Machining.OfType<CutOut>());
    }
}
