using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Findings;
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
    public void TheRailsBehindTheToeFaceAreCutToo()
    {
        // Rails from 10 to 100 along the run from 0: the register from 17 to 83 is 17 from their upper edges.
        var register = new WallFeature { Name = "register", Kind = FeatureKind.Register, X = Mm(200), Y = Mm(20), Width = Mm(250), Height = Mm(60) };
        var laid = Laid.Of(With(register));

        Assert.All(new[] { "A-G1F", "A-G1R" }, id => Assert.Equal((Mm(197), Mm(17)), Assert.Single(laid[id].Machining.OfType<CutOut>().Select(c => (c.X, c.Y)))));
    }

    /// <summary>A run 300 deep along a wall of 3000, fillers of 30; the wall at its left is 2000 wide, the one at its right 1500.</summary>
    private static Job Between(WallFeature? left = null, WallFeature? right = null, UnitSystem units = UnitSystem.Millimetres)
    {
        var filler = new RunEnd { Kind = EndKind.Wall, Filler = units == UnitSystem.Inches ? In(1.5m) : Mm(30) };
        var (wide, high, deep) = units == UnitSystem.Inches ? (In(120), In(80), In(12)) : (Mm(3000), Mm(2000), Mm(300));
        var run = Plain(units, wide, high, deep) with { Left = filler, Right = filler, Division = new() { Bays = 3 } };
        WallSurvey Of(WallFeature? feature) => new() { Datum = Mm(1000), Features = feature is null ? [] : [feature] };
        return Job(units, run) with
        {
            Walls =
            [
                new() { Id = "north", Name = "north", Width = wide, Height = Mm(2600), Survey = new() { Datum = Mm(1000), LeftEnd = new() { Wall = "west" }, RightEnd = new() { Wall = "east" } } },
                new() { Id = "west", Name = "west", Width = Mm(2000), Height = Mm(2600), Survey = Of(left) },
                new() { Id = "east", Name = "east", Width = Mm(1500), Height = Mm(2600), Survey = Of(right) },
            ],
        };
    }

    [Fact]
    public void AnOutletOnTheWallAtTheEndIsCutOutOfTheSide()
    {
        // West wall: its right end is the corner. A socket from 1780 to 1860 there is 140 to 220 out from the north wall; with 3 of play 137 to 223,
        // so 300 − 223 = 77 from the front edge; up from 400 − 3 = 397, 92 by 86.
        var job = Between(left: Outlet(1780, 400) with { Width = Mm(80) });
        var laid = Laid.Of(job);
        var cut = Assert.Single(laid["C1-L"].Machining.OfType<CutOut>());

        Assert.Equal((Mm(397), Mm(77), Mm(92), Mm(86)), (cut.X, cut.Y, cut.LengthX, cut.LengthY));
        Assert.Empty(laid["C3-R"].Machining.OfType<CutOut>());
        var finding = Assert.Single(FindingsOf(job, laid));
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Contains("C1-L is cut out", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void InInchesOnTheRight()
    {
        // East wall: its left end is the corner. From 3 to 6 in out, with 3 mm of play: 12 in − 6 in − 3 mm from the front edge.
        var outlet = new WallFeature { Name = "socket", Kind = FeatureKind.Outlet, X = In(3), Y = In(16), Width = In(3), Height = In(4.5m) };
        var cut = Assert.Single(Laid.Of(Between(right: outlet, units: UnitSystem.Inches))["C3-R"].Machining.OfType<CutOut>());

        Assert.Equal((In(16) - Mm(3), In(12) - In(6) - Mm(3), In(4.5m) + Mm(6), In(3) + Mm(6)), (cut.X, cut.Y, cut.LengthX, cut.LengthY));
    }

    [Fact]
    public void WhereAShelfMeetsItNothingIsCutAndTheCautionStays()
    {
        // The middle shelf of 2000 lies near 1000; an outlet at its height cannot be had by cutting the side, nor by cutting the back.
        var job = Between(left: Outlet(1780, 970) with { Width = Mm(80) });
        var laid = Laid.Of(job);
        Assert.Empty(laid["C1-L"].Machining.OfType<CutOut>());
        Assert.Equal(Severity.Caution, Assert.Single(FindingsOf(job, laid)).Severity);

        var behind = With(Outlet(300, 1040));
        Assert.Empty(Laid.Of(behind)["C1-K"].Machining.OfType<CutOut>());
        Assert.Equal(Severity.Caution, Assert.Single(FindingsOf(behind, Laid.Of(behind))).Severity);
    }

    [Fact]
    public void AnOutletThatIsCutOutPasses()
    {
        var job = With(Outlet(300, 400));
        Assert.Equal(Severity.Pass, Assert.Single(FindingsOf(job, Laid.Of(job))).Severity);
        var across = With(Outlet(840, 400));
        Assert.Equal(Severity.Caution, Assert.Single(FindingsOf(across, Laid.Of(across))).Severity);
    }

    private static List<Finding> FindingsOf(Job job, Laid laid) => [.. SurveyStage.Read(job, laid.Casework).Findings.Where(f => f.Check == "survey-openings")];

    [Fact]
    public void WhatIsMovedOrLiesAcrossAnEdgeIsNotCut()
    {
        Assert.Empty(Laid.Of(With(Outlet(300, 400) with { Moves = true }))["C1-K"].Machining.OfType<CutOut>());
        // Across the side of the case: no cut-out of the back helps, the finding of the survey tells.
        Assert.Empty(Laid.Of(With(Outlet(840, 400)))["C1-K"].Machining.OfType<CutOut>());
    }
}
