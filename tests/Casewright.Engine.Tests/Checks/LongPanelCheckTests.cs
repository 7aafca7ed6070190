using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Fitting;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Splices;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

/// <summary>Panels over several bays, joints tipped up, pressed, pulled and clamped, doors at walls.</summary>
public class LongPanelCheckTests
{
    [Fact]
    public void Two_equal_spans_with_one_loaded_are_the_handbook_case()
    {
        // AISC manual, continuous beam of two equal spans, uniform load on one: reactions 7/16, 5/8, −1/16 of wl, moment over the middle
        // wl²/16, largest 49 wl²/512, sag 0.0092 wl⁴/EI (from memory).
        var beam = new ContinuousBeam([1, 1], [1, 0], 1);
        Assert.Equal(7.0 / 16, beam.Reaction(0), 1e-12);
        Assert.Equal(5.0 / 8, beam.Reaction(1), 1e-12);
        Assert.Equal(-1.0 / 16, beam.Reaction(2), 1e-12);
        Assert.Equal(-1.0 / 16, beam.MomentOver(1), 1e-12);
        Assert.Equal(49.0 / 512, beam.LargestMoment(), 1e-9);
        Assert.Equal(0.0092, beam.LargestSag(0), 5e-5);
    }

    [Fact]
    public void Loads_of_single_spans_add_up_to_the_load_of_all() => Gen.Select(Gen.Double[0.3, 1.5], Gen.Double[0.3, 1.5], Gen.Double[10, 500], Gen.Double[10, 500]).Sample((a, b, p, q) =>
    {
        // Superposition: linear beams, so moments and reactions of the parts add up.
        var (left, right, both) = (new ContinuousBeam([a, b], [p, 0], 1), new ContinuousBeam([a, b], [0, q], 1), new ContinuousBeam([a, b], [p, q], 1));
        Assert.Equal(left.MomentOver(1) + right.MomentOver(1), both.MomentOver(1), 1e-9);
        for (var support = 0; support < 3; support++)
            Assert.Equal(left.Reaction(support) + right.Reaction(support), both.Reaction(support), 1e-9);
        Assert.Equal((p * a) + (q * b), both.Reaction(0) + both.Reaction(1) + both.Reaction(2), 1e-9);
    });

    private static Bookcase LoadedBottom(double load) => new()
    {
        Bays = 2,
        Width = 1854,
        Load = load,
        ChangeJob = job => job,
    };

    [Fact]
    public void One_loaded_bay_of_two_sags_more_than_both_and_the_far_end_lifts()
    {
        // The bottom runs over a partition, two clear spans of 900: 30 kg/m on one of them. By the handbook 0.0092 w L⁴/EI for the load,
        // and 0.0054 for the panel's own weight on both.
        var bookcase = LoadedBottom(30);
        var shelf = ShelfReader.Read(bookcase.Context, bookcase.Context.Part("B")!, 30);
        var stiffness = shelf.Figures.ElasticityAlong * 0.3 * Math.Pow(0.018, 3) / 12;
        var hand = (((0.0092 * 30 * 9.80665) + (0.00542 * 680 * 0.3 * 0.018 * 9.80665)) * Math.Pow(0.9, 4) / stiffness) + (shelf.TotalLoad * 0.81 / (8 * 170e6 * 0.3 * 0.018 * 5 / 6));
        var finding = Checked.By<UnevenLoadCheck>(bookcase, "B");
        Assert.Equal(hand * 1000, finding.Value!.Value, 0.02);
        Assert.True(finding.Value > shelf.Sag * 1000);

        // Far support: own weight 3/8 w₀ L up, load 1/16 w L down.
        Assert.Equal(((0.375 * 680 * 0.3 * 0.018) - (30.0 / 16)) * 9.80665 * 0.9, UnevenLoadCheck.Worst(shelf).LeastReaction, 0.05);
        Assert.Equal(Severity.Caution, Checked.SeverityBy<UnevenLoadCheck>(LoadedBottom(60), "B"));
        Assert.Contains("Fix it down", Checked.By<UnevenLoadCheck>(LoadedBottom(60), "B").Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_tipped_up_bends_its_joints_on_edge()
    {
        // Each of two uprights carries half of the case. Three 6 × 40 tenons at 50, 150 and 250, each pulling 2·40·25·2.3 = 4600 N at most:
        // 4600·(0.05² + 0.15² + 0.25²)/0.25 = 1610 N·m, × 0.9/1.2 for a short time = 1207.5 (hand computation).
        var bookcase = new Bookcase { Splices = [Bookcase.TenonSplice("L", 1000)] };
        var finding = Checked.By<SpliceTiltUpCheck>(bookcase, "L/1");
        Assert.Equal(1207.5, finding.Limit!.Value, 0.5);
        var mass = bookcase.Casework.Parts.Where(p => p.Role != PartRole.AdjustableShelf).Sum(p => 680 * p.Length.Metres * p.Width.Metres * p.Thickness.Metres);
        Assert.Equal(1.5 * mass * 9.80665 / 2 / 2.4 * 1.0 * 1.4 / 2, finding.Value!.Value, 0.01);
        Assert.Equal(Severity.Pass, finding.Severity);
    }

    [Fact]
    public void A_joint_with_one_narrow_tenon_is_cautioned_when_tipped_up()
    {
        var weak = Bookcase.TenonSplice("L", 1200) with { Tenons = [new(Bookcase.Mm(20), Bookcase.Mm(9), Bookcase.Mm(6), Bookcase.Mm(10), Bookcase.Mm(20), Bookcase.Mm(11), Bookcase.Mm(0))] };
        var finding = Checked.By<SpliceTiltUpCheck>(new Bookcase { Splices = [weak] }, "L/1");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("test piece", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void The_butt_of_a_side_is_pressed_far_below_what_it_bears()
    {
        // One side takes half of contents and case. 18 mm birch: 0.4 · 40.15 · 0.6/1.2 · 300 · 18 N (figures of the trade handbook).
        var bookcase = new Bookcase { Splices = [Bookcase.TenonSplice("L", 1000)] };
        var finding = Checked.By<SpliceAxialCheck>(bookcase, "L/1");
        var strength = bookcase.Context.Figures(bookcase.Context.Part("L")!).BendingAlong;
        Assert.Equal(0.4 * strength * 0.6 / 1.2 * 0.3 * 0.018, finding.Limit!.Value, 1);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<SpliceAxialCheck>(bookcase with { Load = null }, "L/1"));
    }

    [Fact]
    public void Clamps_of_a_splice_give_the_usual_pressure()
    {
        // 150 psi · 300 mm · 18 mm = 1.0342 N/mm² · 5400 mm² = 5585 N: two clamps of 4 kN (hand computation).
        var finding = Checked.By<SpliceClampCheck>(new Bookcase { Splices = [Bookcase.TenonSplice("L", 1000)] }, "L/1");
        Assert.Equal(2, finding.Value!.Value);
        Assert.Contains(finding.Inputs, i => i.Name == "force" && i.Value == "5585");
        Assert.Equal(Severity.Caution, Checked.SeverityBy<SpliceClampCheck>(new Bookcase { Depth = 900, Thickness = 25, Splices = [Bookcase.TenonSplice("L", 1000)] }, "L/1"));
    }

    [Theory]
    [InlineData(30, Severity.Caution)]
    [InlineData(38.5, Severity.Pass)]
    [InlineData(-2, Severity.Stop)]
    public void A_door_hinged_at_a_wall_needs_room_for_its_pull(double filler, Severity severity)
    {
        // Filler and the gap of 1.5 mm at the edge of the case: 31.5, 40, under nothing.
        var door = Bookcase.Upright("D", PartRole.Door, 31.5m, false, new(), 100, 600) with
        {
            Hand = Hand.Left,
            Place = new("A", new(Bookcase.Mm(31.5m), Bookcase.Mm(100), Bookcase.Mm(320)), Axis.Up, Axis.Right, Axis.In),
        };
        var bookcase = new Bookcase { ChangeJob = j => j with { Runs = [j.Runs[0] with { Left = new() { Kind = EndKind.Wall, Filler = Bookcase.Mm((decimal)filler) } }] } };
        var context = new Casewright.Engine.Checks.CheckContext(bookcase.Job, bookcase.Casework with { Parts = bookcase.Casework.Parts.Add(door) }, bookcase.Plan);
        Assert.Equal(severity, new FrontsOpenCheck().Run(context).Single().Severity);

        // Hinged at its other edge it turns away from the wall.
        var other = new Casewright.Engine.Checks.CheckContext(bookcase.Job, bookcase.Casework with { Parts = bookcase.Casework.Parts.Add(door with { Hand = Hand.Right }) }, bookcase.Plan);
        Assert.Empty(new FrontsOpenCheck().Run(other));
    }

    [Fact]
    public void A_ladder_pulls_on_one_bracket_and_stays_off_joints()
    {
        // 125 kg at 75°: 125·9.80665/tan 75° = 328.5 N (trade practice says about 330 N). Sides of a 936 case stand 918 apart: over 900.
        Bookcase With(LadderRail ladder) => new() { ChangeJob = j => j with { Runs = [j.Runs[0] with { Ladder = ladder }] } };
        var rail = new LadderRail { Height = Bookcase.Mm(2200) };
        Assert.Equal(328.5, LadderRailCheck.Pull(rail), 0.1);
        Assert.Equal(Severity.Caution, Checked.SeverityBy<LadderRailCheck>(With(rail), "R"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<LadderRailCheck>(With(rail) with { Width = 900 }, "R"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<LadderRailCheck>(With(rail with { Reach = Bookcase.Mm(1900) }), "R"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<LadderRailCheck>(With(rail) with { Splices = [Bookcase.TenonSplice("L", 2160)] }, "R"));

        // A heavy pull high up also goes into the fixings of the case: moments about the front lower edge by hand.
        var steep = With(rail with { Reach = Bookcase.Mm(2200), Mass = 400 });
        var weight = steep.Casework.Parts.Sum(p => 680 * p.Length.Metres * p.Width.Metres * p.Thickness.Metres) * 9.80665;
        Assert.Equal(((400 * 9.80665 * 2.2) - (weight * 0.15)) / 2.4 / 2, AnchorageCheck.ForcePerFixing(steep.Context, steep.Box), 0.5);
    }

    [Fact]
    public void Thin_walls_beside_a_deep_mortise_take_their_share_of_the_joint()
    {
        // 15 mm panel, 12 mm tenon 40 mm deep (30 counted): bond 2.3·30 = 69 N/mm, walls 24·1.5 = 36 N/mm: 0.522 (hand computation).
        var panel = new SplicedPanel(0.3, 0.015, 9e9, 40e6, 24e6, 2.3e6);
        Assert.Equal(36.0 / 69, SpliceStrength.WallShare(panel, new(0.012, 0.12, 0.04, 36e6, 60e6)), 1e-9);
        Assert.Equal(1, SpliceStrength.WallShare(panel with { Thickness = 0.018 }, new(0.006, 0.12, 0.025, 36e6, 60e6)), 1e-12);
    }

    [Fact]
    public void Built_in_ends_are_shown_and_not_counted_on()
    {
        // A fifth of the simple span's bending (wL⁴/384EI against 5wL⁴/384EI).
        var finding = Checked.By<ShelfSagCheck>(new Bookcase(), "F1");
        var shown = double.Parse(finding.Inputs.Single(i => i.Name.Contains("built in", StringComparison.Ordinal)).Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(shown, 0.19 * finding.Value!.Value, 0.2 * finding.Value!.Value);
    }
}
