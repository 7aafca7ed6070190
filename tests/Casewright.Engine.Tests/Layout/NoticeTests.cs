using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>What the layout notices, at figures on both sides of each limit (common practice, no source, worked in the comments).</summary>
public sealed class NoticeTests
{
    private static readonly Run Good = Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300)) with { Tiers = [new() { Interior = new() { Fixed = 1 } }] };

    [Theory]
    [InlineData(30, Severity.Pass)]
    [InlineData(0, Severity.Caution)]
    public void FillerAtAWall(int filler, Severity expected) =>
        Assert.Equal(expected, Find("filler-at-wall", Good with { Left = new() { Kind = EndKind.Wall, Filler = Mm(filler) } }).Severity);

    [Theory]
    [InlineData(75, Severity.Pass)]
    [InlineData(74, Severity.Caution)]
    public void HeightOfNailers(int height, Severity expected) =>
        Assert.Equal(expected, Find("nailers", Good with { Nailers = new() { Height = Mm(height) } }).Severity);

    [Fact]
    public void TallCasesWithoutNailersAreNamed()
    {
        Assert.Equal(Severity.Caution, Find("nailers", Good).Severity);
        Assert.DoesNotContain(All(Job(UnitSystem.Millimetres, Good with { Head = new() { Height = Mm(1100) } })), f => f.Check == "nailers");
    }

    [Fact]
    public void BacksThatMeetOnAThinPartition()
    {
        // Bearing 18/2 − 1/2 = 8.5 of at least 8; with a panel of 16 it is 7.5.
        var run = Good with { Width = Mm(1500), Division = new() { Bays = 2, BaysPerCase = 2 }, Joinery = Good.Joinery with { DadoDepth = Mm(5) } };
        Assert.Equal(Severity.Pass, Find("back-bearing", run).Severity);

        var thin = MetricStock with { Materials = [.. MetricStock.Materials.Select(m => m.Id == "panel" ? m with { Measured = Mm(16) } : m)] };
        var finding = Assert.Single(All(Job(UnitSystem.Millimetres, run) with { Stock = thin }), f => f.Check == "back-bearing");
        Assert.Equal((Severity.Stop, 7.5), (finding.Severity, finding.Value));
    }

    [Fact]
    public void RoundingThatAddsUp()
    {
        // 20 cases of 900.04: each bottom 876.04 is cut 876.0, 0.8 narrower in all, more than one step of 0.1; with a filler whose
        // scribe stock is 10 it passes.
        var run = Good with { Width = Mm(18_000.8m), Division = new() { Bays = 20 } };
        Assert.Equal((Severity.Caution, 0.8), (Find("rounding-adds-up", run).Severity, Find("rounding-adds-up", run).Value));
        var filled = run with { Width = Mm(18_030.8m), Left = new() { Kind = EndKind.Wall, Filler = Mm(30) } };
        Assert.Equal(Severity.Pass, Find("rounding-adds-up", filled).Severity);
    }

    [Fact]
    public void CrownThatStopsShortOfTheCeiling()
    {
        // Gap 100, crown 90, lap 0: 10 stay open. Gap 90: none.
        Assert.Equal((Severity.Caution, 10.0), (Find("crown-at-ceiling", Crowned(100)).Severity, Find("crown-at-ceiling", Crowned(100)).Value));
        Assert.Equal(Severity.Pass, Find("crown-at-ceiling", Crowned(90)).Severity);
    }

    [Fact]
    public void TrimBandWithoutAJoint()
    {
        var run = Good with { TrimBand = new() { Material = "band" } };
        Assert.Equal(Severity.Caution, Find("trim-band", run).Severity);
        Assert.DoesNotContain(All(Job(UnitSystem.Millimetres, run with { Head = new() { Height = Mm(2700) } })), f => f.Check == "trim-band");
    }

    private static Run Crowned(int gap) => Good with { Head = new() { Gap = Mm(gap), Crown = "crown" } };

    private static Finding Find(string check, Run run) => Assert.Single(All(Job(UnitSystem.Millimetres, run)), f => f.Check == check);

    private static IEnumerable<Finding> All(Job job) => Laid.Of(job).Casework.Findings;
}
