using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>
/// A frameless case against examples worked by hand. The two cases of the rabbeted back are examples of trade practice (common
/// practice, no source) that were worked before this code was written; the others are worked in the comments.
/// </summary>
public sealed class FramelessWorkedExampleTests
{
    [Fact]
    public void MetricCaseWithRabbetedBack()
    {
        // W 979, H 1876, t 18, a 6, r 9, play 1, shelf play 2:
        // between panels 979 − 36 + 12 = 955; back 979 − 36 + 18 − 1 = 960 by 1876 − 1 = 1875;
        // clear 979 − 36 = 943; loose shelf 943 − 2 = 941.
        var laid = Laid.Of(UnitSystem.Millimetres, Plain(UnitSystem.Millimetres, Mm(979), Mm(1876), Mm(300)));

        Assert.Equal(Mm(1876), laid["C1-L"].Length);
        Assert.Equal(Mm(955), laid["C1-T"].Length);
        Assert.Equal(Mm(955), laid["C1-B"].Length);
        Assert.Equal(Mm(955), laid["C1-F1"].Length);
        Assert.Equal(Mm(1875), laid["C1-K"].Length);
        Assert.Equal(Mm(960), laid["C1-K"].Width);
        Assert.Equal(Mm(941), laid["C1-S1"].Length);
        Assert.Equal(Mm(943), laid.Casework.Cases[0].ClearBay);

        // Depth 300, back 6: sides 300; between panels 300 − 6 = 294; loose shelf 300 − 3 − 6 − 2 = 289.
        Assert.Equal(Mm(300), laid["C1-L"].Width);
        Assert.Equal(Mm(294), laid["C1-T"].Width);
        Assert.Equal(Mm(294), laid["C1-F1"].Width);
        Assert.Equal(Mm(289), laid["C1-S1"].Width);
    }

    [Fact]
    public void InchCaseWithRabbetedBack()
    {
        // W 32 11/16, t 0.72 measured, a 1/4, r 3/8, play 1/32, shelf play 1/16:
        // clear 32.6875 − 1.44 = 31.2475; between 31.2475 + 0.5 = 31.7475, nearest 1/32 is 31 3/4;
        // back 31.2475 + 0.75 − 0.03125 = 31.96625, down to 31 15/16; loose shelf 31.2475 − 0.0625 = 31.185, down to 31 5/32.
        var run = Plain(UnitSystem.Inches, In(32.6875m), In(74), In(12));
        run = run with { Joinery = run.Joinery with { RabbetDepth = In(0.375m) } };
        var laid = Laid.Of(UnitSystem.Inches, run);

        Assert.Equal(In(31.2475m), laid.Casework.Cases[0].ClearBay);
        Assert.Equal(Length.FromInches(31, 3, 4), laid["C1-T"].Length);
        Assert.Equal(Length.FromInches(31, 15, 16), laid["C1-K"].Width);
        Assert.Equal(Length.FromInches(31, 5, 32), laid["C1-S1"].Length);
        Assert.Equal(In(0.72m), laid["C1-L"].Thickness);

        // H 74: back 74 − 1/32 = 73 31/32. Depth 12, back 1/4: between 11 3/4; loose 12 − 1/8 − 1/4 − 1/16 = 11 9/16.
        Assert.Equal(Length.FromInches(73, 31, 32), laid["C1-K"].Length);
        Assert.Equal(Length.FromInches(11, 3, 4), laid["C1-F1"].Width);
        Assert.Equal(Length.FromInches(11, 9, 16), laid["C1-S1"].Width);
    }

    [Fact]
    public void EveryRoundedDimensionShowsItsExactValue()
    {
        var run = Plain(UnitSystem.Inches, In(32.6875m), In(74), In(12));
        var length = Laid.Of(UnitSystem.Inches, run)["C1-T"].Derivations.Single(d => d.Dimension == "length");

        Assert.Equal("W − 2t + 2a", length.Formula);
        Assert.Equal(In(31.7475m), length.Exact);
        Assert.Equal(In(31.75m), length.Result);
        Assert.Equal(["W", "t", "a"], length.Inputs.Select(i => i.Symbol));
        Assert.Contains("measured", length.Inputs[1].Meaning, StringComparison.Ordinal);
        Assert.Contains("runs[0].joinery.dadoDepth", length.Inputs[2].Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void CapturedBackAndSeveralBays()
    {
        // W 1000, H 2000, t 18, tb 6, a 6, g 6, i 15, play 1, two bays, D 320:
        // back 1000 − 36 + 12 − 1 = 975 by 2000 − 36 + 12 − 1 = 1975; partition 2000 − 36 + 12 = 1976;
        // clear (1000 − 54)/2 = 473; fixed shelf 473 + 12 = 485; shelf depth 320 − 15 − 6 = 299; top and side 320.
        var run = Plain(UnitSystem.Millimetres, Mm(1000), Mm(2000), Mm(320)) with
        {
            Back = new() { Kind = BackKind.Captured, Material = "back", Inset = Mm(15) },
            Division = new() { Bays = 2, BaysPerCase = 2 },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(975), laid["C1-K"].Width);
        Assert.Equal(Mm(1975), laid["C1-K"].Length);
        Assert.Equal(Mm(1976), laid["C1-P1"].Length);
        Assert.Equal(Mm(299), laid["C1-P1"].Width);
        Assert.Equal(Mm(485), laid["C1-F1.2"].Length);
        Assert.Equal(Mm(299), laid["C1-F1.2"].Width);
        Assert.Equal(Mm(988 - 12), laid["C1-T"].Length);
        Assert.Equal(Mm(320), laid["C1-T"].Width);

        // Groove from the front edge of the side: 320 − (15 + 6) = 299, 6.2 wide, 6 deep.
        var groove = Assert.Single(laid["C1-L"].Machining.OfType<Groove>());
        Assert.Equal((Mm(299), Mm(6.2m), Mm(6)), (groove.Y, groove.Width, groove.Depth));
    }

    [Fact]
    public void OverlaidBackTopOverSidesAndNosing()
    {
        // W 900, H 2100, t 18, tb 6, reveal 1, shelf nosing 20, upright nosing 10, D 350:
        // top 900; side 2100 − 18 = 2082 long, 350 − 10 − 6 = 334 wide; back 898 by 2098;
        // fixed shelf 350 − 20 − 6 = 324; loose shelf 350 − 3 − 20 − 6 − 2 = 319; nosing of the fixed shelf 900 − 36 = 864 by 38.
        var run = Plain(UnitSystem.Millimetres, Mm(900), Mm(2100), Mm(350)) with
        {
            Back = new() { Kind = BackKind.Overlaid, Material = "back" },
            Nosing = new() { Shelves = "shelf-nosing", Uprights = "upright-nosing" },
        };
        run = run with { Joinery = run.Joinery with { TopOverSides = true } };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(Mm(900), laid["C1-T"].Length);
        Assert.Equal(Mm(2082), laid["C1-R"].Length);
        Assert.Equal(Mm(334), laid["C1-R"].Width);
        Assert.Equal(Mm(898), laid["C1-K"].Width);
        Assert.Equal(Mm(2098), laid["C1-K"].Length);
        Assert.Equal(Mm(324), laid["C1-F1"].Width);
        Assert.Equal(Mm(319), laid["C1-S1"].Width);
        Assert.Equal(Mm(864), laid["C1-F1n"].Length);
        Assert.Equal(Mm(38), laid["C1-F1n"].Width);
        Assert.Equal(Mm(18), laid["C1-Ln"].Width);
        Assert.Equal("C1-F1n", laid["C1-F1"].Nosing);
    }

    [Fact]
    public void EqualBaysShareWhatFillersAndUprightsLeave()
    {
        // Wall run 3000, fillers 30 and 30: 2940 for three cases of one bay; six uprights: (2940 − 108)/3 = 944 clear; cases 980.
        var run = Plain(UnitSystem.Millimetres, Mm(3000), Mm(2200), Mm(300)) with
        {
            Left = new() { Kind = EndKind.Wall, Filler = Mm(30) },
            Right = new() { Kind = EndKind.Wall, Filler = Mm(30) },
            Division = new() { WidestClear = Mm(944) },
        };
        var laid = Laid.Of(UnitSystem.Millimetres, run);

        Assert.Equal(3, laid.Casework.Cases.Count);
        Assert.All(laid.Casework.Cases, c => Assert.Equal((Mm(980), Mm(944)), (c.Width, c.ClearBay)));
        Assert.Equal([Mm(30), Mm(1010), Mm(1990)], laid.Casework.Cases.Select(c => c.X));

        // Blank = visible filler + 10: 40 wide.
        Assert.Equal(Mm(40), laid["A-XL"].Width);

        // One hair less and a fourth bay is needed: (2940 − 144)/4 = 699.
        var narrower = run with { Division = new() { WidestClear = Mm(943.9m) } };
        Assert.Equal(Mm(699), Laid.Of(UnitSystem.Millimetres, narrower).Casework.Cases[3].ClearBay);
    }

    [Fact]
    public void EqualShelvesAndPinRows()
    {
        // H 2036, t 18: clear 2000; one fixed shelf: opening (2000 − 18)/2 = 991, its upper face 18 + 991 + 18 = 1027.
        // Each opening: first hole 150 up, last at most 150 down: (991 − 300)/32 = 21.6, so 22 holes.
        var laid = Laid.Of(UnitSystem.Millimetres, Plain(UnitSystem.Millimetres, Mm(900), Mm(2036), Mm(300)));

        Assert.Equal(Mm(1027), laid["C1-F1"].Place.Origin.Y);
        var rows = laid["C1-L"].Machining.OfType<PinRow>().ToArray();
        Assert.Equal(4, rows.Length);
        Assert.All(rows, r => Assert.Equal(22, r.Count));
        Assert.Equal([Mm(168), Mm(168), Mm(1177), Mm(1177)], rows.Select(r => r.FirstX));

        // Front row 37 from the front edge, rear row 37 from the back: 294 − 37 = 257.
        Assert.Equal([Mm(37), Mm(257), Mm(37), Mm(257)], rows.Select(r => r.Y));

        // One shelf in each opening, nearest to its middle: underside wanted 18 + (991 − 18)/2 = 504.5, hole 502 wanted:
        // (502 − 168)/32 = 10.4, hole 10 at 488, shelf on the pin's top at 490.5, upper face 508.5.
        Assert.Equal(Mm(508.5m), laid["C1-S1"].Place.Origin.Y);
    }
}
