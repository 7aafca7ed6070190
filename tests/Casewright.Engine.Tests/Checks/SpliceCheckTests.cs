using Casewright.Engine.Checks.Splices;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

public class SpliceCheckTests
{
    private static Bookcase Spliced(Splice splice) => new() { Splices = [splice] };

    private static Bookcase ShelfSplicedAt(decimal position) => Spliced(Bookcase.TenonSplice("F1", position));

    private static Bookcase SideSplicedAt(decimal position) => Spliced(Bookcase.TenonSplice("L", position));

    [Fact]
    public void A_tenon_splice_at_midspan_fails_under_ordinary_books()
    {
        // Birch 18 mm has a rolling-shear bond of 2.3 N/mm²: three 6 × 40 tenons hold 67.7 N·m characteristic, 33.9 permanent, 16.9 with
        // the glue's own creep; books of 25 lb/ft (37.2 kg/m) bend 36.95 N·m (hand computation wL²/8), × 1.5 with the shelf's weight.
        var bookcase = ShelfSplicedAt(456) with { Load = 364.9 / 9.80665 };
        var finding = Checked.By<SpliceStrengthCheck>(bookcase, "F1/1");
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(33.87 / 2, finding.Limit!.Value, 0.02);
        Assert.Equal(1.5 * (36.95 + (680 * 9.80665 * 0.3 * 0.018 * 0.81 / 8)), finding.Value!.Value, 0.05);
        Assert.Contains("test piece", finding.Advice, StringComparison.Ordinal);
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceMidspanCheck>(bookcase, "F1/1"));
    }

    [Fact]
    public void A_glue_that_does_not_creep_counts_twice()
    {
        var bookcase = ShelfSplicedAt(456) with { ChangeJob = j => j with { Shop = j.Shop with { Glue = new GlueFacts { Creeps = false } } } };
        Assert.Equal(33.87, Checked.By<SpliceStrengthCheck>(bookcase, "F1/1").Limit!.Value, 0.03);
    }

    [Theory]
    [InlineData(SpliceMethod.Scarf, 144, 0.75)]
    [InlineData(SpliceMethod.Scarf, 90, 0.50)]
    [InlineData(SpliceMethod.HalfLap, 90, 0.20)]
    [InlineData(SpliceMethod.BackedButt, 0, 1.0)]
    public void Other_methods_keep_their_share_of_the_panel(SpliceMethod method, int consumes, double share)
    {
        var splice = Bookcase.TenonSplice("F1", 456) with { Method = method, Consumes = Bookcase.Mm(consumes), Tenons = [] };
        var context = Spliced(splice).Context;
        var estimate = SpliceEstimate.Of(context, new(splice, context.Part("F1")!));
        Assert.Equal(share, estimate!.Share, 1e-9);
    }

    [Fact]
    public void A_spline_keeps_an_eighth_of_the_panel()
    {
        // 6 mm spline 12 mm deep in 18 mm birch: 0.125 (section model with f_m 40.2 N/mm²).
        var splice = Bookcase.TenonSplice("F1", 456) with { Method = SpliceMethod.Spline, Tenons = [] };
        var context = Spliced(splice).Context;
        Assert.Equal(0.125, SpliceEstimate.Of(context, new(splice, context.Part("F1")!))!.Share, 0.001);
    }

    [Fact]
    public void A_joint_over_a_support_passes_where_midspan_stops()
    {
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceMidspanCheck>(ShelfSplicedAt(3), "F1/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceMidspanCheck>(ShelfSplicedAt(6 + 299), "F1/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceMidspanCheck>(ShelfSplicedAt(6 + 301), "F1/1"));
    }

    [Fact]
    public void A_joint_in_a_side_carries_the_pins_off_centre()
    {
        // Shelf reaction (30 kg/m + 680·0.295·0.018)·9.80665·0.898/2 on pins 19 mm off the middle (9 + 10), × 1.5.
        var finding = Checked.By<SpliceStrengthCheck>(SideSplicedAt(1000), "L/1");
        Assert.Equal(1.5 * 0.019 * (30 + (680 * 0.295 * 0.018)) * 9.80665 * 0.898 / 2, finding.Value!.Value, 0.01);
        Assert.Equal(Severity.Pass, finding.Severity);
    }

    [Fact]
    public void A_long_spliced_side_is_carried_on_edge()
    {
        // 2.6 m of 300 × 18 mm birch carried flat: 30.43 N·m at the middle (hand computation), × 1.5 for the jolt; three 6 × 40 tenons
        // hold 67.75·0.9/1.2 = 50.8 N·m for a short time.
        var bookcase = Spliced(Bookcase.TenonSplice("L", 1300)) with { Height = 2600, Ceiling = 2900 };
        var context = bookcase.Context;
        var spliced = new SplicedPart(bookcase.Splices[0], context.Part("L")!);
        Assert.Equal(30.43, SpliceHandlingCheck.Demand(context, spliced), 0.01);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceHandlingCheck>(bookcase, "L/1"));
        var longer = bookcase with { Height = 3000, Splices = [Bookcase.TenonSplice("L", 1500)] };
        var finding = Checked.By<SpliceHandlingCheck>(longer, "L/1");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(50.8, finding.Limit!.Value, 0.05);
        Assert.Contains("on edge", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Joints_keep_clear_of_dados_holes_fixings_and_cut_outs()
    {
        // The dado of the fixed shelf lies at 1182 to 1200; half the mortise and 5 mm is 31 mm (common practice, no source).
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceDadoCheck>(SideSplicedAt(1152), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceDadoCheck>(SideSplicedAt(1151), "L/1"));

        // The pin row runs from 170 to 778; 25 mm is kept.
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SplicePinCheck>(SideSplicedAt(802), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SplicePinCheck>(SideSplicedAt(803), "L/1"));

        Bookcase With(Machining machining) => SideSplicedAt(1000) with { Change = p => p.Id == "L" ? p with { Machining = [machining] } : p };
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceHardwareCheck>(With(new HardwareZone("nailer", Face.Reference, Bookcase.Mm(1049), Bookcase.Mm(1100))), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceHardwareCheck>(With(new HardwareZone("nailer", Face.Reference, Bookcase.Mm(1050), Bookcase.Mm(1100))), "L/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceCutOutCheck>(With(new CutOut("outlet", Bookcase.Mm(950), Bookcase.Mm(50), Bookcase.Mm(80), Bookcase.Mm(60))), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceCutOutCheck>(With(new CutOut("outlet", Bookcase.Mm(800), Bookcase.Mm(50), Bookcase.Mm(80), Bookcase.Mm(60))), "L/1"));
    }

    [Fact]
    public void The_advised_move_clears_the_dado()
    {
        var finding = Checked.By<SpliceDadoCheck>(SideSplicedAt(1170), "L/1");
        Assert.Equal("Move the joint 19 mm down or 61 mm up.", finding.Advice);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceDadoCheck>(SideSplicedAt(1170 - 19), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceDadoCheck>(SideSplicedAt(1170 + 61), "L/1"));
    }

    [Fact]
    public void Connectors_stay_out_of_faces_that_show()
    {
        var hidden = Bookcase.TenonSplice("L", 1000) with { Method = SpliceMethod.TenonsAndConnectors, AccessFace = Face.Opposite, Connectors = [new(Bookcase.Mm(100))] };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceFaceCheck>(Spliced(hidden), "L/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceFaceCheck>(Spliced(hidden with { AccessFace = Face.Reference }), "L/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<SpliceFaceCheck>(Spliced(hidden with { AccessFace = null }), "L/1"));
    }

    [Fact]
    public void Tenons_keep_off_the_edges_and_leave_walls()
    {
        var good = Bookcase.TenonSplice("L", 1000);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<TenonPlaceCheck>(Spliced(good), "L/1"));
        var near = good with { Tenons = [good.Tenons[0] with { Offset = Bookcase.Mm(39) }, good.Tenons[2]] };
        Assert.Equal(Severity.Caution, Checked.SeverityBy<TenonPlaceCheck>(Spliced(near), "L/1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<TenonWallCheck>(Spliced(good), "L/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<TenonWallCheck>(Spliced(Bookcase.TenonSplice("L", 1000, tenonThickness: 8)), "L/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<TenonWallCheck>(Spliced(Bookcase.TenonSplice("L", 1000, thickness: 12, tenonThickness: 4)) with { Thickness = 12 }, "L/1"));
    }

    [Fact]
    public void Stubs_under_a_foot_or_an_eighth_are_pointed_out()
    {
        // An eighth of 2400 is 300, the shop's shortest too (common practice, no source).
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceStubCheck>(SideSplicedAt(300), "L"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<SpliceStubCheck>(SideSplicedAt(299), "L"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<SpliceStubCheck>(SideSplicedAt(2101), "L"));
    }

    [Fact]
    public void Joints_along_a_run_keep_one_line()
    {
        var same = new Bookcase { Splices = [Bookcase.TenonSplice("L", 1000), Bookcase.TenonSplice("R", 1000)] };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SightLineCheck>(same, "R"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<SightLineCheck>(same with { Splices = [Bookcase.TenonSplice("L", 1000), Bookcase.TenonSplice("R", 1010)] }, "R"));
    }

    [Fact]
    public void The_joint_of_a_back_lies_on_the_middle_of_a_shelf()
    {
        // The fixed shelf spans 1182 to 1200; 8 mm bearing each side (common practice, no source) leaves 1190 to 1192.
        Bookcase At(decimal position, string? on) => Spliced(Bookcase.TenonSplice("BK", position) with { Method = SpliceMethod.CoveredButt, Tenons = [], CoveredBy = on });
        Assert.Equal(Severity.Pass, Checked.SeverityBy<BackJointCheck>(At(1191, "F1"), "BK/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<BackJointCheck>(At(1189, "F1"), "BK/1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<BackJointCheck>(At(1191, null), "BK/1"));
        Assert.Empty(Checked.By<SpliceStrengthCheck>(At(1191, "F1")));
    }

    [Fact]
    public void A_joint_softens_its_shelf_as_the_spring_says()
    {
        // Tenons 3 × 40 of 300 wide, a third thick: 59.2·300/120 = 148 mm of extra panel; at midspan + 2.4·148/900 = 39.5 %.
        var plain = Checked.By<Casewright.Engine.Checks.Shelves.ShelfSagCheck>(ShelfSplicedAt(456), "F1").Value!.Value;
        Assert.Equal(plain * 1.395, Checked.By<SpliceSagCheck>(ShelfSplicedAt(456), "F1/1").Value!.Value, plain * 0.002);
    }

    [Fact]
    public void More_load_never_passes_what_less_failed_and_the_middle_is_never_better_than_the_end() =>
        Gen.Select(Gen.Int[10, 60], Gen.Int[20, 440]).Sample(
            (load, position) =>
            {
                Finding At(double kg, decimal x) => Checked.By<SpliceStrengthCheck>(ShelfSplicedAt(x) with { Load = kg, LooseShelves = 0 }, "F1/1");
                if (At(load, position).Severity != Severity.Pass)
                {
                    Assert.NotEqual(Severity.Pass, At(load + 1, position).Severity);
                    Assert.NotEqual(Severity.Pass, At(load, position + 10).Severity);
                }
            },
            iter: 100);
}
