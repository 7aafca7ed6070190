using Casewright.Engine.Checks.Fitting;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;
using CsCheck;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Corners computed by hand and by plane geometry.</summary>
public sealed class CornerTests
{
    private static readonly FrontDesign Door = new() { Kind = FrontKind.Doors, Fit = FrontFit.Overlay, Material = "panel" };

    private static RunEnd Corner(string run, CornerKind kind, Length filler, double? angle = null) =>
        new() { Kind = EndKind.Corner, Filler = filler, Corner = new() { Run = run, Kind = kind, Angle = angle } };

    /// <summary>Run a, 400 deep, through to the right end of a wall of 3000; run b, 300 deep, along the next wall of 2500.</summary>
    private static Job Two(RunEnd right, RunEnd left, UnitSystem units = UnitSystem.Millimetres, Length? depth = null, Length? next = null)
    {
        var a = Plain(units, Mm(3000), Mm(2000), depth ?? Mm(400)) with { Right = right, Division = new() { Bays = 4 } };
        var b = Plain(units, Mm(2500), Mm(2000), next ?? Mm(300)) with { Id = "b", Name = "b", Wall = "east", Left = left, Division = new() { Bays = 3 } };
        return Job(units, a, b) with
        {
            Walls = [new() { Id = "north", Name = "north wall", Width = Mm(3000), Height = Mm(2600) }, new() { Id = "east", Name = "east wall", Width = Mm(2500), Height = Mm(2600) }],
        };
    }

    private static Job Butt(double? angle) => Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Butt, Mm(50), angle));

    [Theory]
    // Square: begins at 400 + 50; blank 50 + 10.
    [InlineData(null, 450, 60)]
    // 92°: q = 400/cos 2° = 400.24, p = 400.24 − 300·tan 2° = 389.77: begins at 450.24, shows 60.48, blank 70.5.
    [InlineData(92.0, 450.24, 70.5)]
    // 88°: p = 400.24 + 10.48 = 410.72: begins at 460.72, shows 50, blank 60.
    [InlineData(88.0, 460.72, 60)]
    public void AButtCorner(double? angle, double start, double blank)
    {
        var laid = Laid.Of(Butt(angle));
        var first = laid.Casework.Cases.First(c => c.Run == "b");

        Assert.Equal(Mm((decimal)start), first.X);
        Assert.Equal(Mm((decimal)blank), laid["B-XL"].Width);
        // The cases still add up to the wall.
        Assert.Equal(Mm(2500), laid.Casework.Cases.Where(c => c.Run == "b").Max(c => c.X + c.Width));
        Assert.Contains("planed to the front of run a", laid["B-XL"].FitOnSite, StringComparison.Ordinal);
    }

    [Fact]
    public void InInches()
    {
        // D1 16, D2 12, f 2, 91°: q = 16/cos 1° = 16.0024, D2·tan 1° = 0.2095: begins at 18.0024, shows 2.2095; blank + 3/8 = 2.5845, to 1/32: 2 19/32.
        var job = Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Butt, In(2), 91), UnitSystem.Inches, In(16), In(12));
        var laid = Laid.Of(job);

        Assert.Equal(18.0024, laid.Casework.Cases.First(c => c.Run == "b").X.Metres / 0.0254, 0.0005);
        Assert.Equal(In(2.59375m), laid["B-XL"].Width);
    }

    [Fact]
    public void TheSurveyedAngleCountsWhenNoneIsStated()
    {
        var job = Butt(null);
        var survey = new WallSurvey { Datum = Mm(1000), LeftEnd = new() { Wall = "north", Corner = new() { Degrees = 92 } } };
        job = job with { Walls = [job.Walls[0], job.Walls[1] with { Survey = survey }] };

        Assert.Equal(Mm(450.24m), Laid.Of(job).Casework.Cases.First(c => c.Run == "b").X);
    }

    [Fact]
    public void ABlindCorner()
    {
        // The visible front of run a ends at 3000 − 300 − 50 = 2650; its last case begins at 2250 (four of 750): door 2650 − 2250 − 3 = 397,
        // reach 2650 − 2268 = 382. The panel shows 50 and laps 50. Doors stand 20 proud: run b begins at 420 + 50.
        var job = Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Blind, Mm(50)));
        job = job with { Runs = [job.Runs[0] with { Tiers = [new() { Interior = new() { Fronts = [Door] } }] }, job.Runs[1]] };
        var laid = Laid.Of(job);

        Assert.Equal((Mm(397), Mm(2251.5m)), (laid["C4-D1"].Width, laid["C4-D1"].Place.Origin.X));
        Assert.Equal((Mm(100), Mm(2650)), (laid["C4-QR"].Width, laid["C4-QR"].Place.Origin.X));
        Assert.Equal(Mm(470), laid.Casework.Cases.First(c => c.Run == "b").X);
        var reach = laid.Casework.Findings.Single(f => f.Check == "blind-corner-reach");
        Assert.Equal((382, Severity.Pass), (reach.Value, reach.Severity));
    }

    [Fact]
    public void ABlindCornerThatNobodyReachesIntoIsStopped()
    {
        // Twelve cases of 250: the last begins at 2750, beyond the limit of 2650 less ... its door would have no width at all.
        var job = Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Blind, Mm(50)));
        job = job with { Runs = [job.Runs[0] with { Division = new() { Bays = 5 }, Tiers = [new() { Interior = new() { Fronts = [Door] } }] }, job.Runs[1]] };

        // Five of 600: the last begins at 2400 + 18 = 2418, and 2650 − 2418 = 232 is less than 250.
        var reach = Laid.Of(job).Casework.Findings.Single(f => f.Check == "blind-corner-reach");
        Assert.Equal((232, Severity.Stop), (reach.Value, reach.Severity));
    }

    [Theory]
    // The bay of the end case is 714 wide and its shelf 712 long; the opening beside the panel is 382. Tilted it would need 712 cos φ ≤ 382, φ = 58°,
    // and 712 sin φ = 604 of height: too much. On edge it turns round the panel as round a corner from 382 into the 397 that are clear behind it:
    // a rod of (382^⅔ + 397^⅔)^1.5 = 1101 would pass, and 18 of thickness take little of that.
    [InlineData(1, 400, Severity.Pass)]
    // 700 deep with three shelves: openings of (2000 − 5·18)/4 = 477. On edge, 686 high, it does not go in; tilted to 59° it takes 620.
    [InlineData(3, 700, Severity.Stop)]
    public void AShelfIsGotIntoABlindCorner(int fixedShelves, int depth, Severity severity)
    {
        var job = Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Blind, Mm(50)), depth: Mm(depth));
        job = job with { Runs = [job.Runs[0] with { Tiers = [new() { Interior = new() { Fixed = fixedShelves, Loose = 1, Fronts = [Door with { Openings = fixedShelves + 1 }] } }] }, job.Runs[1]] };
        var casework = Laid.Of(job).Casework;
        var findings = new ShelfThroughFrameCheck().Run(new(job, casework, null)).Where(f => f.Subject.StartsWith("C4-", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(findings);
        Assert.All(findings, f => Assert.Equal(severity, f.Severity));
        Assert.All(findings, f => Assert.Equal(382, f.Limit!.Value, 1e-6));
    }

    [Fact]
    public void TurningOnEdgeAgreesWithTheLongestRod()
    {
        // Without thickness the longest rod round a corner, (a^⅔ + b^⅔)^1.5, is known: 8 and 27 give (4 + 9)^1.5 = 46.87.
        Assert.True(ShelfThroughFrameCheck.EntersBlind(46.8, 1, 1e-9, 8, 2, 27));
        Assert.False(ShelfThroughFrameCheck.EntersBlind(46.9, 1, 1e-9, 8, 2, 27));
    }

    [Fact]
    public void ADeadCorner()
    {
        // Run a ends at 3000 − 300 − 50 = 2650, run b begins at 400 + 50 = 450. The post: 50 + 10, and 50 + 18 + 10 behind it.
        var laid = Laid.Of(Two(Corner("b", CornerKind.Dead, Mm(50)), Corner("a", CornerKind.Dead, Mm(50))));

        Assert.Equal(Mm(2650), laid.Casework.Cases.Where(c => c.Run == "a").Max(c => c.X + c.Width));
        Assert.Equal(Mm(450), laid.Casework.Cases.Where(c => c.Run == "b").Min(c => c.X));
        Assert.Equal((Mm(60), Mm(78)), (laid["A-XR"].Width, laid["B-XL"].Width));
        // 0.4 by 0.3 m are lost.
        Assert.All(laid.Casework.Findings.Where(f => f.Check == "dead-corner"), f => Assert.Equal(0.12, f.Value!.Value, 1e-9));
    }

    [Fact]
    public void NoCaseReachesIntoTheOtherRunWhateverTheAngle() => (
        from angle in Gen.Double[80, 100]
        from depth in Gen.Int[250, 650]
        from next in Gen.Int[250, 650]
        from filler in Gen.Int[20, 90]
        select (angle, depth, next, filler)).Sample(x =>
        {
            var laid = Laid.Of(Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Butt, Mm(x.filler), x.angle), depth: Mm(x.depth), next: Mm(x.next)));
            var start = laid.Casework.Cases.First(c => c.Run == "b").X.Metres * 1000;
            // A point s along wall b and z out from it is s·sin θ − z·cos θ out from wall a.
            var theta = x.angle * Math.PI / 180;
            double Clear(double z) => (((start * Math.Sin(theta)) - (z * Math.Cos(theta)) - x.depth) / Math.Sin(theta));
            Assert.Equal(x.filler, Math.Min(Clear(0), Clear(x.next)), 0.05);
            var visible = laid["B-XL"].Derivations.Single(d => d.Dimension == "width").Exact.Metres * 1000;
            Assert.Equal(Clear(x.next) + 10, visible, 0.05);
        });

    public static TheoryData<string, Func<Job>> Impossible => new()
    {
        { "runs[1].left.corner.angle", () => Butt(20) },
        { "runs[1].left.corner.run", () => Two(new() { Kind = EndKind.Wall }, Corner("c", CornerKind.Butt, Mm(50))) },
        { "runs[1].left.corner.run", () => Butt(null) with { Walls = [.. Butt(null).Walls], Runs = [Butt(null).Runs[0] with { Width = Mm(1000) }, Butt(null).Runs[1] with { Wall = "north", Width = null }] } },
        { "runs[1].left.corner.kind", () => Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Dead, Mm(50))) },
        { "runs[1].left.corner", () => Two(new() { Kind = EndKind.Wall }, new() { Kind = EndKind.Corner }) },
        { "runs[0].right.corner", () => Two(new() { Kind = EndKind.Wall, Corner = new() { Run = "b", Kind = CornerKind.Butt } }, new() { Kind = EndKind.Neighbour }) },
        { "runs[1].left.kind", () => Butt(null) with { Runs = [Butt(null).Runs[0], Butt(null).Runs[1] with { Offset = Mm(100), Width = null }] } },
        { "runs[0].right", () => Blind(Door) with { Runs = [Blind(Door).Runs[0] with { Width = Mm(2800) }, Blind(Door).Runs[1]] } },
        { "runs[0].tiers[0].interior.fronts[0].hinged", () => Blind(Door with { Leaves = 2 }) },
        { "runs[0].tiers[0].interior.fronts[0].hinged", () => Blind(Door with { Hinged = HingeSide.Right }) },
        { "runs[0].tiers[0].interior.fronts[0].kind", () => Blind(new() { Kind = FrontKind.Drawers, Fit = FrontFit.Overlay, Material = "panel", BoxMaterial = "panel", BottomMaterial = "back" }) },
    };

    private static Job Blind(FrontDesign front)
    {
        var job = Two(new() { Kind = EndKind.Wall }, Corner("a", CornerKind.Blind, Mm(50)));
        return job with { Runs = [job.Runs[0] with { Tiers = [new() { Interior = new() { Fronts = [front] } }] }, job.Runs[1]] };
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void WhatCannotBeIsNamedAtItsPlace(string path, Func<Job> job) => Laid.ProblemAt(path, job());
}
