using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using CsCheck;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Diagonal corners by hand: face = √2·(L − D) between the fronts (common practice, no source; plane geometry).</summary>
public sealed class DiagonalCornerTests
{
    /// <summary>Run a along a wall of 3000 carries the case at its right end; run b along the next wall of 2500 begins beside it.</summary>
    private static Job Two(
        double? angle = null, int shelves = 2, string? door = null, UnitSystem units = UnitSystem.Millimetres, Length? leg = null, Length? depth = null, Length? next = null, Length? filler = null)
    {
        var carrier = new CornerDesign { Run = "b", Kind = CornerKind.Diagonal, Leg = leg ?? Mm(800), Shelves = shelves, Door = door, Angle = angle };
        var foot = new BaseDesign { Kind = BaseKind.Plinth, Height = Mm(100), Setback = Mm(50), ShimRoom = Mm(10) };
        var a = Plain(units, Mm(3000), Mm(2000), depth ?? Mm(400)) with
        {
            Right = new() { Kind = EndKind.Corner, Corner = carrier },
            Division = new() { Bays = 3 },
            Base = foot,
            Back = new() { Kind = BackKind.Overlaid, Material = "back" },
        };
        var b = Plain(units, Mm(2500), Mm(2000), next ?? Mm(400)) with
        {
            Id = "b",
            Name = "b",
            Wall = "east",
            Left = new() { Kind = EndKind.Corner, Filler = filler ?? Mm(20), Corner = new() { Run = "a", Kind = CornerKind.Diagonal } },
            Division = new() { Bays = 2 },
            Base = foot,
        };
        return Job(units, a, b) with
        {
            Walls = [new() { Id = "north", Name = "north wall", Width = Mm(3000), Height = Mm(2600) }, new() { Id = "east", Name = "east wall", Width = Mm(2500), Height = Mm(2600) }],
        };
    }

    [Fact]
    public void SquareAndOpen()
    {
        // L 800, both runs 400 deep: M = 800 − 400 + 400 = 800. Run a ends at 3000 − 800 = 2200; run b begins at 800 + 20.
        var laid = Laid.Of(Two());
        var box = laid.Casework.Cases.Single(c => c.Id == "C4");
        Assert.Equal((Mm(2200), Mm(800), Mm(800)), (box.X, box.Width, box.Depth));
        Assert.Equal(Mm(2200), laid.Casework.Cases.Where(c => c.Run == "a" && c.Id != "C4").Max(c => c.X + c.Width));
        Assert.Equal(Mm(820), laid.Casework.Cases.Where(c => c.Run == "b").Min(c => c.X));

        // Sides 400 − 6 of planted back; panels 800 − 18 + 6 − 6 = 782 square, clipped 800 − 400 − 18 + 2·6 = 394 each way.
        Assert.All(new[] { "C4-L", "C4-R" }, id => Assert.Equal((Mm(1900), Mm(394)), (laid[id].Length, laid[id].Width)));
        Assert.All(
            new[] { "C4-B", "C4-F1", "C4-F2", "C4-T" },
            id => Assert.Equal((Mm(782), Mm(782), new Clip("diagonal front", PartEdge.Start, PartEdge.Reference, Mm(394), Mm(394))), (laid[id].Length, laid[id].Width, laid[id].Machining.Single())));

        // Reveal 1: back along the wall 800 − 1, the other 800 − 1 − 6; 1900 − 2 high. Two shelves in 1900 − 4·18 = 1828: openings of 609 1/3.
        Assert.Equal((Mm(799), Mm(793), Mm(1898)), (laid["C4-K1"].Width, laid["C4-K2"].Width, laid["C4-K1"].Length));
        Assert.Equal((Mm(776), Mm(758)), (laid["C4-Y1.1"].Length, laid["C4-Y1.2"].Length));
        Assert.Equal(745.333, laid["C4-F1"].Place.Origin.Y.Metres * 1000, 0.001);

        // Front √2·(800 − 400 − 18) = 540.23.
        var front = laid.Casework.Findings.Single(f => f.Check == "diagonal-corner");
        Assert.Equal((Severity.Pass, 540.23), (front.Severity, Math.Round(front.Value!.Value, 2)));
    }

    [Fact]
    public void TheBaseAndItsToeFaceTurnTwice()
    {
        // Toe 50 back: o + 50·(2√2 − 2) = 540.23 + 41.42 = 581.65, to 581.7; rail behind it, 68 back: 540.23 + 56.33 = 596.56, down to 596.5.
        // Toe face of run a: from 0 to 2200, 18 + 50·(√2 − 1) = 38.71 further, and 10 of scribe.
        var laid = Laid.Of(Two());
        Assert.Equal((Mm(581.7m), Mm(596.5m)), (laid["A-TRD"].Length, laid["A-GR5"].Length));
        var toes = laid.Casework.Parts.Where(p => p.Run == "a" && p.Role == PartRole.ToeFace && p.Place.Eighths == 0).ToList();
        Assert.Equal(2248.71, toes.Max(t => t.HighCorner.X).Metres * 1000, 0.2);
        Assert.Equal((Mm(800), Mm(782)), (laid["A-GR1"].Length, laid["A-GR2"].Length));

        // It lies at 45 degrees between the two toe lines: from 50 behind the front of run a to 50 behind that of run b.
        var toe = laid["A-TRD"];
        Assert.Equal((350.0, 2238.71), (toe.Place.Origin.Z.Metres * 1000, Math.Round(toe.Place.Origin.X.Metres * 1000, 2)));
        var end = toe.Place.At(toe.Length, Length.Zero, Length.Zero);
        Assert.Equal(2650, end.X.Metres * 1000, 0.1);
    }

    [Theory]
    // Closed by 2°: the case stands off 800·tan 2° = 27.94, so that its far end clears wall b, and b begins at q = 800/cos 2° = 800.49, p = q + 400·tan 2° = 814.46, and 20.
    [InlineData(88, 2172.06, 834.46)]
    // Open by 2°: it stands in the corner; p = 800.49 − 13.97: b begins at 800.49 + 20, its filler shows 33.97.
    [InlineData(92, 2200, 820.49)]
    public void TheErrorOfTheCornerIsTakenUp(double angle, double end, double start)
    {
        var laid = Laid.Of(Two(angle));
        Assert.Equal(end, laid.Casework.Cases.Where(c => c.Run == "a" && c.Id != "C4").Max(c => c.X + c.Width).Metres * 1000, 0.011);
        Assert.Equal(start, laid.Casework.Cases.Where(c => c.Run == "b").Min(c => c.X).Metres * 1000, 0.011);
    }

    [Fact]
    public void ADoorIsInsetBetweenTheArrises()
    {
        // 540.23 − 2·2.5 = 535.23, down to 535.2; 1900 − 36 − 5 = 1859 high. Shelves stand back 18 + 2.5 square to it, 28.99 along the walls: clipped 422.99, to 423.
        var laid = Laid.Of(Two(door: "panel"));
        var door = laid["C4-D1"];
        Assert.Equal((Mm(535.2m), Mm(1859), 1), (door.Width, door.Length, door.Place.Eighths));
        Assert.Equal(Mm(423), laid["C4-F1"].Machining.OfType<Clip>().Single().AlongX);
        Assert.Equal(Mm(394), laid["C4-B"].Machining.OfType<Clip>().Single().AlongX);

        // Its corners lie on the line from arris to arris, (2218, 400) to (2600, 782): z − x stays −1818, in front.
        foreach (var y in new[] { Length.Zero, door.Width })
        {
            var corner = door.Place.At(Length.Zero, y, Length.Zero);
            Assert.Equal(-1818, (corner.Z - corner.X).Metres * 1000, 0.001);
            Assert.InRange(corner.X.Metres * 1000, 2218, 2600);
        }

        // Four hinges on a door of 1859, on the left side.
        Assert.Equal(4, door.Machining.OfType<Bore>().Count());
        Assert.Equal(4, laid["C4-L"].Machining.OfType<HardwareZone>().Count());
    }

    [Fact]
    public void InInchesAtTheLeftEnd()
    {
        // Run b carries it at its left end: L 30, D1 12, D2 14 (run a): M = 30 − 14 + 12 = 28; o = √2·(30 − 14 − 0.72) = 21.609. Panels 30 − 0.72 + 1/4 − 1/4 = 29.28, to 29 9/32.
        var job = Two(units: UnitSystem.Inches, depth: In(14), next: In(12), filler: Length.Zero);
        job = job with
        {
            Runs =
            [
                job.Runs[0] with { Right = new() { Kind = EndKind.Corner, Filler = In(0.75m), Corner = new() { Run = "b", Kind = CornerKind.Diagonal } } },
                job.Runs[1] with
                {
                    Left = new() { Kind = EndKind.Corner, Corner = new() { Run = "a", Kind = CornerKind.Diagonal, Leg = In(30), Shelves = 1 } }, Back = new() { Kind = BackKind.Overlaid, Material = "back" },
                },
            ],
        };
        var laid = Laid.Of(job);
        var box = laid.Casework.Cases.Single(c => c.Depth == In(28));
        Assert.Equal((Length.Zero, In(30)), (box.X, box.Width));
        Assert.Equal(In(30), laid.Casework.Cases.Where(c => c.Run == "b" && c != box).Min(c => c.X));
        Assert.Equal(Mm(3000) - In(28.75m), laid.Casework.Cases.Where(c => c.Run == "a").Max(c => c.X + c.Width));
        Assert.Equal(Length.FromInches(29, 9, 32), laid[box.Id + "-B"].Length);
        Assert.Equal(PartEdge.End, laid[box.Id + "-B"].Machining.OfType<Clip>().Single().End);
        Assert.Equal(21.609, laid.Casework.Findings.Single(f => f.Check == "diagonal-corner").Value!.Value / 25.4, 0.001);
    }

    [Fact]
    public void NothingOfItReachesIntoAWallOrIntoTheRunsWhateverTheAngle() => (
        from angle in Gen.Double[84, 96]
        from depth in Gen.Int[280, 450]
        from next in Gen.Int[280, 450]
        from more in Gen.Int[330, 600]
        select (angle, depth, next, more)).Sample(x =>
        {
            var laid = Laid.Of(Two(x.angle, door: "panel", leg: Mm(x.next + x.more), depth: Mm(x.depth), next: Mm(x.next)));
            var theta = x.angle * Math.PI / 180;
            foreach (var part in laid.Casework.Parts.Where(p => p.Case == "C4"))
            {
                foreach (var corner in PartSolid.Of(part).In(part.Place))
                {
                    // u from the corner along wall north, v out from it; a point lies before wall east if u·sin θ + v·(−cos θ) ≥ 0 … its distance from that wall.
                    var (u, v) = (3000 - (corner.X.Metres * 1000), corner.Z.Metres * 1000);
                    Assert.True(v >= -0.06 && (u * Math.Sin(theta)) - (v * Math.Cos(theta)) >= -0.06, $"{part.Id} at {u:0.0}, {v:0.0}");

                    // Along wall east it ends before run b's first case at either face of it.
                    var along = (u * Math.Cos(theta)) + (v * Math.Sin(theta));
                    Assert.True(along <= (laid.Casework.Cases.Where(c => c.Run == "b").Min(c => c.X).Metres * 1000) + 0.06, $"{part.Id} {along:0.0}");
                }
            }
        }, iter: 100);

    public static TheoryData<string, Func<Job>> Impossible => new()
    {
        { "runs[0].right.corner.leg", () => Two(leg: Mm(560)) },
        { "runs[1].left.corner.leg", () => With(j => j.Runs[1] with { Left = j.Runs[1].Left with { Corner = j.Runs[1].Left.Corner! with { Leg = Mm(800) } } }) },
        { "runs[0].right.corner.kind", () => With(j => j.Runs[1] with { Left = new() { Kind = EndKind.Wall } }) },
        { "runs[0].base.kind", () => Two() with { Runs = [Two().Runs[0] with { Base = new() { Kind = BaseKind.SidesToFloor, Height = Mm(100) } }, Two().Runs[1]] } },
        { "runs[0].right.filler", () => Two() with { Runs = [Two().Runs[0] with { Right = Two().Runs[0].Right with { Filler = Mm(20) } }, Two().Runs[1]] } },
    };

    private static Job With(Func<Job, Run> second)
    {
        var job = Two();
        return job with { Runs = [job.Runs[0], second(job)] };
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void WhatCannotBeIsNamedAtItsPlace(string path, Func<Job> job) => Laid.ProblemAt(path, job());
}
