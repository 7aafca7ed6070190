using Casewright.Engine.Access;
using Casewright.Engine.Verifying.Rules;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>
/// Cases under a ceiling that slopes along the wall, worked by hand. The slopes are 3 in 4 and 5 in 12, so that hypotenuses are whole
/// (3-4-5, 5-12-13) and every figure can be followed in the head; a third slope of no whole figures is checked with a calculator.
/// </summary>
public sealed class SlopedCeilingTests
{
    [Fact]
    public void MetricUprightsTopAndBackUnderASlopeOfThreeInFour()
    {
        // tan θ 3/4, cos θ 4/5, sin θ 3/5. Ceiling 2500 at the wall's left end, 40 left plumb: the top's upper face is at 2460 on the left
        // and 2460 − 750 = 1710 on the right of a case 1000 wide.
        var laid = Laid.Of(Metric(FallsRight));

        // The top, 18 thick, measures 18/(4/5) = 22.5 plumb. Left side: 2460 − 22.5 = 2437.5 outside; over its thickness the slope
        // falls 18·3/4 = 13.5, so 2424 inside. Angle off square: tan⁻¹(13.5/18) = 36.87°.
        Assert.Equal(Mm(2437.5m), laid["C1-L"].Length);
        Assert.Equal(new Bevel("slope", PartEdge.End, Face.Opposite, Mm(13.5m)), Assert.Single(laid["C1-L"].Machining.OfType<Bevel>()));

        // Right side: its long face is inside, at 982: 2460 − 736.5 − 22.5 = 1701; outside 1687.5.
        Assert.Equal(Mm(1701), laid["C1-R"].Length);
        Assert.Equal(new Bevel("slope", PartEdge.End, Face.Reference, Mm(13.5m)), Assert.Single(laid["C1-R"].Machining.OfType<Bevel>()));

        // Top over the sides: 1000/(4/5) = 1250 on either face, 13.5 more over both: 1263.5.
        Assert.Equal(Mm(1263.5m), laid["C1-T"].Length);
        Assert.Equal([(PartEdge.Start, Face.Reference, Mm(13.5m)), (PartEdge.End, Face.Opposite, Mm(13.5m))], laid["C1-T"].Machining.OfType<Bevel>().Select(b => (b.Edge, b.LongFace, b.Setback)));

        // Rabbeted back: 1000 − 36 + 18 − 1 = 981 wide from x = 18 − 9 + 0.5 = 9.5, where the top's upper face is at
        // 2460 − 7.125 = 2452.875; less the play of 1: 2451.875, down to 2451.8. It falls 981·3/4 = 735.75 over its width.
        Assert.Equal(Mm(981), laid["C1-K"].Width);
        Assert.Equal(Mm(2451.8m), laid["C1-K"].Length);
        Assert.Equal(new Clip("slope", PartEdge.End, PartEdge.Opposite, Mm(735.75m), Mm(981)), Assert.Single(laid["C1-K"].Machining.OfType<Clip>()));
        Assert.Equal(Hand.Right, laid["C1-K"].Hand);

        var box = Assert.Single(laid.Casework.Cases);
        Assert.Equal((Mm(2460), Mm(1710)), (box.Height, box.LowHeight));
        Assert.Equal(Mm(2460 - 375), box.HeightAt(Mm(500)));
    }

    [Fact]
    public void LeftHandedUnderTheSameSlopeTheOtherWay()
    {
        // The slope rises from left to right: left and right change places, lengths stay.
        var laid = Laid.Of(Metric(FallsLeft));

        Assert.Equal(Mm(1701), laid["C1-L"].Length);
        Assert.Equal(Face.Reference, Assert.Single(laid["C1-L"].Machining.OfType<Bevel>()).LongFace);
        Assert.Equal(Mm(2437.5m), laid["C1-R"].Length);
        Assert.Equal(Face.Opposite, Assert.Single(laid["C1-R"].Machining.OfType<Bevel>()).LongFace);
        Assert.Equal(Mm(1263.5m), laid["C1-T"].Length);
        Assert.Equal([Face.Opposite, Face.Reference], laid["C1-T"].Machining.OfType<Bevel>().Select(b => b.LongFace));
        Assert.Equal(PartEdge.Reference, Assert.Single(laid["C1-K"].Machining.OfType<Clip>()).Edge);
        Assert.All([laid["C1-K"], laid["C1-T"]], part => Assert.Equal(Hand.Left, part.Hand));
        Assert.DoesNotContain(laid.Casework.Parts, p => p.Name.Contains("mirror", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void TheTopLiesWhereItWasDrawn(bool fallsRight)
    {
        // Corners of the raked top in the room, seen from the front: upper face 2460 and 1710 at the outsides of the case, underside 22.5
        // plumb below it, both ends plumb.
        var laid = Laid.Of(Metric(fallsRight ? FallsRight : FallsLeft));
        var top = laid["C1-T"];
        var corners = PartSolid.Of(top).In(top.Place).Select(p => (p.X, p.Y)).Distinct().Order().ToArray();

        var (left, right) = fallsRight ? (2460m, 1710m) : (1710m, 2460m);
        Assert.Equal([(Mm(0), Mm(left - 22.5m)), (Mm(0), Mm(left)), (Mm(1000), Mm(right - 22.5m)), (Mm(1000), Mm(right))], corners);
        Assert.Equal((Mm(0), Mm(1710 - 22.5m)), (top.LowCorner.X, top.LowCorner.Y));
        Assert.Equal((Mm(1000), Mm(2460)), (top.HighCorner.X, top.HighCorner.Y));
    }

    [Fact]
    public void ShelfThatTheSlopeCutsShort()
    {
        // Underside of the top: 2437.5 − 3/4·x. The upper face of a shelf at 2000 meets it at (2437.5 − 2000)·4/3 = 583.33, its underside
        // at 1982 at 607.33. From the left side, 18 thick: usable 565.33; under face 589.33 and 6 in the dado: 595.3.
        // The bevel: 18/(3/4) = 24 shorter above.
        var laid = Laid.Of(Metric(FallsRight, 1000, 2000));
        var shelf = laid["C1-F2"];

        Assert.Equal(Mm(595.3m), shelf.Length);
        Assert.Equal(Mm(565.333333m), shelf.Derivations.Single(d => d.Dimension == "usable width").Exact.RoundTo(Length.FromNanometres(1)));
        Assert.Equal(new Bevel("C1-T", PartEdge.End, Face.Opposite, Mm(24)), Assert.Single(shelf.Machining.OfType<Bevel>()));
        Assert.Equal(Hand.Right, shelf.Hand);
        Assert.Contains("cut short", shelf.Name, StringComparison.Ordinal);

        // It is housed on the left only; the one at 1000 goes from side to side: 964 + 12 = 976.
        Assert.Equal(["C1-B", "C1-F1", "C1-F2"], laid["C1-L"].Machining.OfType<Dado>().Select(d => d.For));
        Assert.Equal(["C1-B", "C1-F1"], laid["C1-R"].Machining.OfType<Dado>().Select(d => d.For));
        Assert.Equal(Mm(976), laid["C1-F1"].Length);

        // Its screws go through the top from 583.33 to 607.33 along the wall: on the underside from 583.33·5/4 + 13.5 = 742.67 to 772.67.
        var zone = Assert.Single(laid["C1-T"].Machining.OfType<HardwareZone>());
        Assert.Equal((Mm(742.667m), Mm(772.667m)), (Near(zone.FromX), Near(zone.ToX)));

        // The left-handed one is as long and housed on the right.
        var left = Laid.Of(Metric(FallsLeft, 1000, 2000));
        Assert.Equal(Mm(595.3m), left["C1-F2"].Length);
        Assert.Equal(PartEdge.Start, Assert.Single(left["C1-F2"].Machining.OfType<Bevel>()).Edge);
        Assert.Equal(Mm(982 + 6), left["C1-F2"].HighCorner.X);
        Assert.Contains("C1-F2", left["C1-R"].Machining.OfType<Dado>().Select(d => d.For));
        Assert.DoesNotContain("C1-F2", left["C1-L"].Machining.OfType<Dado>().Select(d => d.For));
    }

    [Fact]
    public void ShelfTooShortIsLeftOutAndSaid()
    {
        // At 2350 the usable width is (2437.5 − 2350)·4/3 − 18 = 98.67, under 150: left out.
        var laid = Laid.Of(Metric(FallsRight, 1000, 2350));

        Assert.False(laid.Has("C1-F2"));
        Assert.DoesNotContain("C1-F2", laid["C1-L"].Machining.OfType<Dado>().Select(d => d.For));
        var finding = Assert.Single(laid.Casework.Findings, f => f.Check == "shelf-under-slope");
        Assert.Contains("98.7", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NailerAndFillerAlongTheSlope()
    {
        // In view, 80 high, between the sides: 964/(4/5) = 1205, and the plumb ends lean 80·3/4 = 60: 1265.
        var job = Metric(FallsRight);
        var run = job.Runs[0];
        var joinery = run.Joinery with { ScribeAllowance = Mm(10) };
        var laid = Laid.Of(job with { Runs = [run with { Nailers = new() { Height = Mm(80) }, Joinery = joinery, Head = run.Head with { SlopeFiller = "panel" } }] });
        var nailer = laid["C1-N1"];

        Assert.Equal((Mm(1265), Mm(80)), (nailer.Length, nailer.Width));
        Assert.Equal([(PartEdge.Start, PartEdge.Opposite, Mm(60)), (PartEdge.End, PartEdge.Reference, Mm(60))], nailer.Machining.OfType<Clip>().Select(c => (c.End, c.Edge, c.AlongX)));

        // Plumb it is 80/(4/5) = 100 high: on the left side, inside, from 2424 down to 2324; on the right from 1701 to 1601.
        Assert.Equal((Mm(2324), Mm(2424)), Zone(laid["C1-L"], "C1-N1"));
        Assert.Equal((Mm(1601), Mm(1701)), Zone(laid["C1-R"], "C1-N1"));
        Assert.Equal((Mm(18), Mm(982)), (nailer.LowCorner.X, nailer.HighCorner.X));
        Assert.Equal((Mm(1601), Mm(2424)), (nailer.LowCorner.Y, nailer.HighCorner.Y));

        // The gap of 40 is 40·4/5 = 32 square to the slope, 10 more to scribe: 42. Length 1250 + 42·3/4 = 1281.5.
        var filler = laid["A-XS1"];
        Assert.Equal((Mm(1281.5m), Mm(42)), (filler.Length, filler.Width));
        Assert.Equal((Mm(0), Mm(1000)), (filler.LowCorner.X, filler.HighCorner.X));
        Assert.Equal(Mm(1710), filler.LowCorner.Y);
    }

    [Fact]
    public void InchCaseUnderAFiveInTwelve()
    {
        // 5 in 12: tan θ 5/12, cos θ 12/13, 22.62°. Ceiling 96 at the left end, 1 left plumb: 95 there, 95 − 15 = 80 at 36 in.
        // t 0.72: plumb 0.72·13/12 = 0.78; over the thickness the slope falls 0.72·5/12 = 0.3.
        var run = Plain(UnitSystem.Inches, In(36), In(110), In(12)) with { Head = new() { Height = In(110), SlopeGap = In(1) } };
        var job = Job(UnitSystem.Inches, run);
        var wall = job.Walls[0] with { CeilingSlopes = [new() { FromX = In(0), FromHeight = In(96), ToX = In(120), ToHeight = In(46) }] };
        var laid = Laid.Of(job with { Walls = [wall] });

        // Left side 95 − 0.78 = 94.22, to 1/32: 94 7/32 (94.21875). Right side inside, at 35.28: 95 − 14.7 − 0.78 = 79.52 → 79 17/32 (79.53125).
        Assert.Equal(Length.FromInches(94, 7, 32), laid["C1-L"].Length);
        Assert.Equal(Length.FromInches(79, 17, 32), laid["C1-R"].Length);
        Assert.Equal(In(0.3m), Assert.Single(laid["C1-L"].Machining.OfType<Bevel>()).Setback);

        // Top 36·13/12 = 39, and 0.3: 39.3 → 39 5/16 (39.3125).
        Assert.Equal(Length.FromInches(39, 5, 16), laid["C1-T"].Length);

        // Back 36 − 1.44 + 0.72 − 1/32 = 35.24875 → 35 7/32 wide; its clip 35.21875·5/12 = 14.674479 (nearest nm).
        Assert.Equal(Length.FromInches(35, 7, 32), laid["C1-K"].Width);
        Assert.Equal(14.674479m, decimal.Round(Assert.Single(laid["C1-K"].Machining.OfType<Clip>()).AlongX.Inches, 6));
    }

    [Fact]
    public void ASlopeOfNoWholeFigures()
    {
        // 731 in 1000: θ = 36.166°; by calculator 1/cos θ = √(1 + 0.731²) = √1.534361 = 1.2386933.
        var laid = Laid.Of(Metric([new() { FromX = Mm(0), FromHeight = Mm(2500), ToX = Mm(1000), ToHeight = Mm(1769) }]));

        // Plumb thickness 18·1.2386933 = 22.296: left side 2460 − 22.296 = 2437.704 → 2437.7. Top 1238.693 + 13.158 = 1251.851 → 1251.9.
        Assert.Equal(Mm(2437.7m), laid["C1-L"].Length);
        Assert.Equal(Mm(1251.9m), laid["C1-T"].Length);
        Assert.Equal(Mm(13.158m), Assert.Single(laid["C1-L"].Machining.OfType<Bevel>()).Setback);
    }

    [Fact]
    public void OnlyWhatTheSlopeCutsIsRaked()
    {
        // Cases of 1000 side by side, 1800 high, the slope 3 in 4 from 2500 at the left: with 40 of room it comes down to 1800 at
        // (2460 − 1800)·4/3 = 880. The first case would lose the break inside it; a run that begins there has one raked case only.
        var run = Metric(FallsRight).Runs[0];
        var job = Metric(FallsRight) with
        {
            Runs = [run with { Width = Mm(1880), Head = new() { Height = Mm(1800), SlopeGap = Mm(40) }, Division = null, Columns = [new() { Id = "a", Width = Mm(880) }, new() { Id = "b", Width = Mm(1000) }] }],
        };
        var laid = Laid.Of(job);

        Assert.Null(laid.Casework.Cases[0].Rake);
        Assert.Empty(laid["C1-L"].Machining.OfType<Bevel>());
        Assert.NotNull(laid.Casework.Cases[1].Rake);
        Assert.Equal(Mm(1800), laid.Casework.Cases[1].Height);
        Assert.Equal(Mm(1050), laid.Casework.Cases[1].LowHeight);
    }

    [Fact]
    public void ACaseAcrossTheBreakIsLoweredOrRefused()
    {
        // One case of 1000 under a level top of 1800: at x = 0 the slope has 2460, 660 above the level 1800: far too much to lose, and it says where to part.
        var run = Metric(FallsRight).Runs[0] with { Head = new() { Height = Mm(1800), SlopeGap = Mm(40) } };
        var problem = Laid.ProblemAt("runs[0].division", Metric(FallsRight) with { Runs = [run] });
        Assert.Contains("880", problem.Accepted, StringComparison.Ordinal);

        // With a head of 2400 the break is at (2460 − 2400)·4/3 = 80: the top is lowered by 60 and that is a finding.
        var lowered = Laid.Of(Metric(FallsRight) with { Runs = [run with { Head = new() { Height = Mm(2400), SlopeGap = Mm(40) } }] });
        Assert.Equal(Mm(2400), lowered.Casework.Cases[0].Height);
        Assert.Equal(60, Assert.Single(lowered.Casework.Findings, f => f.Check == "rake-lowered").Value);
    }

    [Fact]
    public void AReadingLowerThanTheSlopeLowersTheTop()
    {
        // Read 2490 at the left end, 10 below the stated line: all of the case stays 10 lower.
        var job = Metric(FallsRight);
        var wall = job.Walls[0] with { Survey = new() { Datum = Mm(1000), Ceiling = [new() { At = Mm(0), Back = Mm(1490) }, new() { At = Mm(1200), Back = Mm(600) }] } };
        var laid = Laid.Of(job with { Walls = [wall] });

        Assert.Equal(Mm(2450), laid.Casework.Cases[0].Height);
    }

    [Fact]
    public void WhatCannotBeBuiltUnderASlopeIsSaidAtItsPlace()
    {
        // Steeper than 45°: 3100 in 3000. Level: 10 in 3000. One place.
        Assert.Contains("45", Laid.ProblemAt("walls[0].ceilingSlopes[0].toHeight", Metric([Line(0, 3500, 3000, 400)])).Accepted, StringComparison.Ordinal);
        Laid.ProblemAt("walls[0].ceilingSlopes[0].toHeight", Metric([Line(0, 2500, 3000, 2490)]));
        Laid.ProblemAt("walls[0].ceilingSlopes[0].toX", Metric([Line(500, 2500, 500, 1000)]));

        // No height left: 800 at the left less 750 and 40 is 10.
        Assert.Contains("no height", Laid.ProblemAt("runs[0].division", Metric([Line(0, 800, 1000, 50)])).Message, StringComparison.Ordinal);

        // A shelf at 1695 would end on the top of the right side, whose inside is 1701 high.
        Laid.ProblemAt("runs[0].tiers[0].interior.fixedAt[0]", Metric(FallsRight, 1695));

        // No room named; a crown; a counter; a reading far below the line.
        var job = Metric(FallsRight);
        var run = job.Runs[0];
        Laid.ProblemAt("runs[0].head.slopeGap", job with { Runs = [run with { Head = new() { Height = Mm(3000) } }] });
        Laid.ProblemAt("runs[0].head.crown", job with { Runs = [run with { Head = run.Head with { Crown = "crown" } }] });
        Laid.ProblemAt("runs[0].tiers[0].height", job with { Runs = [run with { Tiers = [run.Tiers[0] with { Height = Mm(2000) }, run.Tiers[0]] }] });
        var wall = job.Walls[0] with { Survey = new() { Datum = Mm(1000), Ceiling = [new() { At = Mm(0), Back = Mm(1400) }] } };
        Laid.ProblemAt("walls[0].survey.ceiling[0]", job with { Walls = [wall] });
    }

    [Fact]
    public void StandingUpIsJudgedWhereTheCaseComesNearestToTheCeiling()
    {
        // 300 deep. High end: √(2460² + 300²) = 2478.2 under 2500. Low end: √(1710² + 300²) = 1736.1 under 1750. 10 of play:
        // 11.8 and 3.9 to spare, so the low end decides.
        var job = Metric(FallsRight);
        var way = Assert.Single(AccessStage.Study(job, Laid.Of(job).Casework).Single().Standing);

        Assert.Equal(1.710, way.CaseHeight, 9);
        Assert.Equal(1.750, way.Have, 9);
        Assert.Equal(1.7461, way.Need, 4);
        Assert.True(way.Passes);
    }

    [Fact]
    public void FillersAndEndPanelsFollowTheSlope()
    {
        var run = Metric(FallsRight).Runs[0];
        var job = Metric(FallsRight) with
        {
            Runs = [run with { Offset = Mm(100), Left = new() { Kind = EndKind.Wall, Filler = Mm(30) }, Right = new() { Kind = EndKind.Finished, Panel = "panel" } }],
        };
        var laid = Laid.Of(job);

        // The panel is 18 thick and ends at 1100: it is longest inside, at 1082, at the top's line 2460 − 811.5 = 1648.5.
        Assert.Equal(Mm(1648.5m), laid["A-ER"].Length);
        Assert.Equal(new Bevel("slope", PartEdge.End, Face.Opposite, Mm(13.5m)), Assert.Single(laid["A-ER"].Machining.OfType<Bevel>()));

        // The filler rises away from the case: clipped on the side of the case.
        var clip = Assert.Single(laid["A-XL"].Machining.OfType<Clip>());
        Assert.Equal((PartEdge.Reference, laid["A-XL"].Width), (clip.Edge, clip.AlongY));
    }

    [Fact]
    public void TheVerifierSeesWhatIsWrongUnderTheSlope()
    {
        var job = Metric(FallsRight, 1000, 2000);
        var casework = Laid.Of(job).Casework;
        Assert.Empty(Check(job, casework));

        // The bevel left off, or on the wrong face; a side longer; the back not clipped; the top level; all of it 60 higher.
        Assert.NotEmpty(Check(job, With(casework, "C1-L", p => p with { Machining = [.. p.Machining.Where(m => m is not Bevel)], Length = p.Length + Mm(1) })));
        Assert.NotEmpty(Check(job, With(casework, "C1-R", p => p with { Length = p.Length + Mm(14) })));
        Assert.NotEmpty(Check(job, With(casework, "C1-R", p => p with { Machining = [.. p.Machining.Select(m => m is Bevel b ? b with { LongFace = Face.Opposite } : m)] })));
        Assert.NotEmpty(Check(job, With(casework, "C1-F2", p => p with { Machining = [] })));
        Assert.NotEmpty(Check(job, With(casework, "C1-K", p => p with { Machining = [] })));
        Assert.NotEmpty(Check(job, With(casework, "C1-T", p => p with { Place = p.Place with { Tilt = null } })));
        var high = casework.Parts.Aggregate(casework, (all, part) => With(all, part.Id, p => p with { Place = p.Place with { Origin = p.Place.Origin with { Y = p.Place.Origin.Y + Mm(1) } } }));
        Assert.NotEmpty(Check(job, high));
    }

    private static readonly CeilingSlope[] FallsRight = [Line(0, 2500, 2000, 1000)];

    private static readonly CeilingSlope[] FallsLeft = [Line(0, 1750, 1000, 2500)];

    private static CeilingSlope Line(decimal fromX, decimal fromHeight, decimal toX, decimal toHeight) =>
        new() { FromX = Mm(fromX), FromHeight = Mm(fromHeight), ToX = Mm(toX), ToHeight = Mm(toHeight) };

    /// <summary>A case 1000 wide and 300 deep at the left end of the wall, 40 of room left under the slope; fixed shelves at these heights.</summary>
    private static Job Metric(CeilingSlope[] slopes, params decimal[] shelves)
    {
        var run = Plain(UnitSystem.Millimetres, Mm(1000), Mm(3000), Mm(300)) with
        {
            Head = new() { Height = Mm(3000), SlopeGap = Mm(40) },
            Tiers = [new() { Interior = new() { FixedAt = [.. shelves.Select(Mm)], LoadPerMetre = 30 } }],
        };
        var job = Job(UnitSystem.Millimetres, run);
        return job with { Walls = [job.Walls[0] with { CeilingSlopes = [.. slopes] }] };
    }

    private static Length Near(Length length) => length.RoundTo(Length.FromNanometres(1000));

    private static (Length From, Length To) Zone(Part part, string nailer)
    {
        var zone = part.Machining.OfType<HardwareZone>().Single(z => z.For == nailer);
        return (zone.FromX, zone.ToX);
    }

    private static Casework With(Casework casework, string id, Func<Part, Part> change) =>
        casework with { Parts = [.. casework.Parts.Select(p => p.Id == id ? change(p) : p)] };

    private static IEnumerable<Model.Plans.Problem> Check(Job job, Casework casework) =>
        new RakedPartsFit().Check(new(job, casework, NoPlan));

    internal static CutPlan NoPlan { get; } = new()
    {
        Pieces = [],
        Splices = [],
        Sheets = [],
        Boards = [],
        Bounds = new() { Cost = 0, LowerBound = 0, Sheets = 0, SheetsLowerBound = 0, Proven = true },
        Materials = [],
    };
}
