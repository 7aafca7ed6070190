using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Sides lipped at a finished end, worked by hand (that an edge takes its thickness off the panel is common practice, no source).</summary>
public sealed class LippedEndTests
{
    private static Run Lipped(LippingDesign lipping) => Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300)) with
    {
        Left = new() { Kind = EndKind.Finished, Lipping = lipping },
        Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(20) },
    };

    [Fact]
    public void FrontAndRear()
    {
        // D 300, front lip 10, rear lip 20 of which 10 stand behind the wall line to be planed: 300 − 10 − 20 + 10 = 280, from 290 back to 10.
        var laid = Laid.Of(UnitSystem.Millimetres, Lipped(new() { Front = "upright-nosing", Rear = "stile" }));
        var (side, front, rear) = (RoomBox.Of(laid["C1-L"]), RoomBox.Of(laid["C1-Ln"]), RoomBox.Of(laid["C1-Lr"]));

        Assert.Equal(Mm(280), laid["C1-L"].Width);
        Assert.Equal((Mm(10), Mm(290)), (side.Low.Z, side.High.Z));
        Assert.Equal((Mm(290), Mm(300)), (front.Low.Z, front.High.Z));
        Assert.Equal((Mm(-10), Mm(10)), (rear.Low.Z, rear.High.Z));
        Assert.All(new[] { "C1-Ln", "C1-Lr" }, id => Assert.Equal((Mm(2000), Mm(18)), (laid[id].Length, laid[id].Width)));
        Assert.Equal("10 mm left on behind, planed to the wall", laid["C1-Lr"].FitOnSite);
        Assert.Equal(Mm(300), laid["C1-R"].Width);
        Assert.Equal((Exposure.Shows, Exposure.Shows), (laid["C1-L"].ReferenceFace, laid["C1-L"].OppositeFace));
    }

    [Fact]
    public void WorkOnTheSideStaysWhereItIsInTheRoom()
    {
        // On the bare right side the groove is 300 − 26 = 274 from the front edge and the pin rows 37 and 274 − 37 = 237; the lipped side begins 10 further in.
        var laid = Laid.Of(UnitSystem.Millimetres, Lipped(new() { Front = "upright-nosing", Rear = "stile" }));

        Assert.Equal(Mm(264), Assert.Single(laid["C1-L"].Machining.OfType<Groove>()).Y);
        Assert.Equal([Mm(27), Mm(227)], laid["C1-L"].Machining.OfType<PinRow>().Select(r => r.Y).Distinct().Order());
        Assert.Equal([Mm(37), Mm(237)], laid["C1-R"].Machining.OfType<PinRow>().Select(r => r.Y).Distinct().Order());
        var dado = laid["C1-L"].Machining.OfType<Dado>().Single(d => d.For == "C1-B");
        Assert.Equal((Mm(0), Mm(280)), (dado.FromY, dado.ToY));

        // The bottom, 300 deep, loses 6 by 10 to either lip at its left corners.
        Assert.Equal(
            [new("lipping of the side", Mm(0), Mm(0), Mm(6), Mm(10)), new("lipping of the side", Mm(0), Mm(290), Mm(6), Mm(10))],
            laid["C1-B"].Machining.OfType<Notch>());
    }

    [Fact]
    public void PlyLipsAndToeNotches()
    {
        // A strip of the 6 mm sheet: the side is 294, the toe notch 60 − 6 = 54 deep, and the lip begins above the toe space.
        var run = Lipped(new() { Front = "back" }) with { Base = new() { Kind = BaseKind.SidesToFloor, Height = Mm(100), Setback = Mm(60) } };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal((Mm(294), Mm(2000)), (laid["C1-L"].Width, laid["C1-L"].Length));
        Assert.Equal(new("toe space", Mm(0), Mm(0), Mm(100), Mm(54)), Assert.Single(laid["C1-L"].Machining.OfType<Notch>()));
        Assert.Equal((Mm(1900), Mm(6)), (laid["C1-Ln"].Length, laid["C1-Ln"].Thickness));
        Assert.Equal(new("toe space", Mm(0), Mm(0), Mm(100), Mm(60)), Assert.Single(laid["C1-R"].Machining.OfType<Notch>()));
    }

    [Fact]
    public void InInches()
    {
        // 12 − 3/8 − 3/4 + 3/8 of scribe stock = 11 1/4; the lip ends 3/8 behind the wall line.
        var run = Plain(UnitSystem.Inches, In(36), In(80), In(12)) with
        {
            Right = new() { Kind = EndKind.Finished, Lipping = new() { Front = "upright-nosing", Rear = "stile" } },
            Back = new() { Kind = BackKind.Captured, Material = "back", Inset = In(0.75m) },
        };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal((In(11.25m), In(12)), (laid["C1-R"].Width, laid["C1-L"].Width));
        Assert.Equal(In(-0.375m), RoomBox.Of(laid["C1-Rr"]).Low.Z);
        Assert.Equal((In(80), In(0.72m)), (laid["C1-Rn"].Length, laid["C1-Rn"].Width));
    }

    public static TheoryData<string, Func<Run>> Impossible => new()
    {
        { "runs[0].left.lipping", () => Lipped(new() { Front = "stile" }) with { Left = new() { Kind = EndKind.Wall, Filler = Mm(30), Lipping = new() { Front = "stile" } } } },
        { "runs[0].left.lipping.rear", () => Lipped(new() { Rear = "upright-nosing" }) },
        { "runs[0].left.lipping.rear", () => Lipped(new() { Rear = "stile" }) with { Back = new() { Kind = BackKind.Rabbeted, Material = "back" } } },
        { "runs[0].left.lipping.rear", () => Lipped(new() { Rear = "stile" }) with { Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(12) } } },
        { "runs[0].left.lipping.front", () => Lipped(new() { Front = "stile" }) with { Nosing = new() { Uprights = "upright-nosing" } } },
        { "runs[0].left.lipping.front", () => Lipped(new() { Front = "absent" }) },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void WhatCannotBeIsNamedAtItsPlace(string path, Func<Run> run) => Laid.ProblemAt(path, Job(UnitSystem.Millimetres, run()));
}
