using Casewright.Engine.Checks.Mechanics;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Casewright.Engine.Tests.Checks.Mechanics;

public class MechanicsTests
{
    [Theory]
    [InlineData(4.5, 25, 0.197, 0.131, 551)]
    [InlineData(6, 12, 0.298, 0.119, 274)]
    [InlineData(6, 25, 0.287, 0.127, 570)]
    [InlineData(9, 25, 0.467, 0.100, 646)]
    public void The_bond_rule_of_splices_lies_within_3_percent_of_published_finite_element_runs(double spline, double embedment, double share, double contact, double published)
    {
        // 18 mm panel, bond 2.3 N/mm²: moment per mm from another author's shares, and from our rule.
        var z = 9 - (contact * 18);
        Assert.Equal(published, 2.3 / (((1 - share) / (2 * embedment * z)) + (share / (spline * embedment))), published * 0.01);
        var ours = SpliceStrength.ClosedBond(new(0.3, 0.018, 8500e6, 40e6, 24e6, 2.3e6), new(spline / 1000, 0.3, embedment / 1000, 36e6, 60e6));
        Assert.InRange(ours / published, 0.968, 1.01);
    }

    [Theory]
    [InlineData(4.5, 80)]
    [InlineData(6, 59)]
    [InlineData(9, 32)]
    public void The_turn_of_a_spline_joint_is_that_of_published_finite_element_runs(double spline, double published) =>
        Assert.Equal(published, SpliceStiffness.SplineLength(0.018, spline / 1000) * 1000, 0.5);

    [Fact]
    public void The_cracked_section_of_a_back_plate_balances() => Gen.Select(Gen.Double[9, 30], Gen.Double[6, 30], Gen.Double[0.5, 2]).Sample(
        (t, plate, ratio) =>
        {
            // First moments of area on both sides of the axis are equal.
            var x = SpliceStrength.PlateAxis(t, plate, ratio);
            Assert.Equal(ratio * plate * (t + (plate / 2) - x), x * x / 2, 1e-6);
        },
        iter: 100);

    [Fact]
    public void A_plate_as_thick_as_the_panel_restores_it_and_a_thinner_one_in_compression_does_not()
    {
        Assert.Equal(1, SpliceStrength.PlateOnPulledFace(18, 18, 1));
        Assert.Equal(4.0 / 9, SpliceStrength.PlateOnCompressedFace(18, 12), 1e-12);
    }

    [Fact]
    public void More_tenons_wider_deeper_never_hold_less() => Gen.Select(Gen.Double[2, 9], Gen.Double[20, 250], Gen.Double[5, 40], Gen.Bool).Sample(
        (thickness, width, embedment, closed) =>
        {
            var panel = new SplicedPanel(0.3, 0.018, 8500e6, 40.2e6, 24e6, 2.3e6);
            double Moment(double t, double w, double e) => SpliceStrength.Tenons(panel, new(t / 1000, w / 1000, e / 1000, 36e6, 60e6), closed);
            var moment = Moment(thickness, width, embedment);
            Assert.True(Moment(thickness, width + 5, embedment) > moment);
            Assert.True(Moment(thickness, width, embedment + 1) >= moment);
            Assert.True(Moment(thickness + 0.5, width, embedment) >= moment);
            Assert.InRange(moment, 0, panel.Plain);
        },
        iter: 300);

    [Fact]
    public void A_closed_butt_is_never_weaker_than_an_open_one_for_thin_tenons()
    {
        var panel = new SplicedPanel(0.3, 0.018, 8500e6, 40.2e6, 24e6, 2.3e6);
        var tenons = new TenonSet(0.006, 0.12, 0.025, 36e6, 60e6);
        Assert.True(SpliceStrength.Tenons(panel, tenons, closed: true) > SpliceStrength.Tenons(panel, tenons, closed: false));
        Assert.True(SpliceStrength.WallsHold(panel, tenons));
        Assert.False(SpliceStrength.WallsHold(panel with { TensileStrength = 5e6 }, tenons));
    }

    [Fact]
    public void In_plane_tenons_pull_in_proportion_to_their_distance()
    {
        // One tenon pulls 4600 N (2·40·25·2.3). At 60, 150 and 240 mm from the lower edge: 4.6 kN·(0.06² + 0.15² + 0.24²)/0.24 = 1604 N·m, by hand.
        var panel = new SplicedPanel(0.3, 0.018, 8500e6, 40.2e6, 24e6, 2.3e6);
        var one = new TenonSet(0.006, 0.04, 0.025, 36e6, 60e6);
        Assert.Equal(4600 * (0.0036 + 0.0225 + 0.0576) / 0.24, SpliceStrength.InPlane(panel, one, [0.06, 0.15, 0.24]), 1e-6);
    }

    [Fact]
    public void Euler_is_the_lowest_root_of_the_difference_equation()
    {
        // −EI w″ = P w with w = 0 at both ends, 400 steps.
        const int N = 399;
        var step = 1.2 / (N + 1);
        var matrix = Matrix<double>.Build.Dense(N, N, (i, j) => i == j ? 2 : Math.Abs(i - j) == 1 ? -1 : 0);
        var section = new RectangularSection(0.3, 0.018);
        var lowest = matrix.Evd(Symmetricity.Symmetric).EigenValues.Min(e => e.Real) * 8500e6 * section.SecondMoment / (step * step);
        Assert.Equal(1, Buckling.Euler(8500e6, section, 1.2) / lowest, 1e-4);
    }

    [Fact]
    public void A_plate_with_one_edge_held_is_Timoshenkos()
    {
        // Isotropic, ν = 0.3: k = 0.425 + (b/a)² in σ = k π²E/(12(1 − ν²)) (t/b)² (Timoshenko and Gere, from memory). A wide panel bends
        // as a plate, E/(1 − ν²); ours is for strips of wood, where ν is small, so the plate's modulus is put in.
        const double E = 10e9;
        const double Nu = 0.3;
        var section = new RectangularSection(0.3, 0.01);
        foreach (var length in (double[])[0.6, 1.2, 2.4])
        {
            var ratio = section.Width / length;
            var published = (0.425 + (ratio * ratio)) * Math.PI * Math.PI * E / (12 * (1 - (Nu * Nu))) * Math.Pow(section.Depth / section.Width, 2) * section.Area;
            var ours = Buckling.OneEdgeHeld(E / (1 - (Nu * Nu)), E / (2 * (1 + Nu)), section, length);
            Assert.Equal(1, ours / published, 0.005);
        }
    }

    [Fact]
    public void A_pin_is_in_balance_at_its_crushing_load() => Gen.Select(Gen.Double[4, 8], Gen.Double[6, 15], Gen.Double[1, 8]).Sample(
        (diameter, depth, arm) =>
        {
            // Bearing up over the outer stretch a, down over the rest: R = f d (2a − l), and moments about the mouth vanish.
            var load = PinBearing.Load(1e6, diameter / 1000, depth / 1000, arm / 1000);
            var perLength = 1e6 * diameter / 1000;
            var a = ((load / perLength) + (depth / 1000)) / 2;
            Assert.InRange(a, depth / 2000, depth / 1000);
            var moments = perLength * ((a * a / 2) - (((depth / 1000 * depth / 1000) - (a * a)) / 2));
            Assert.Equal(-load * arm / 1000, moments, 1e-9);
        },
        iter: 100);

    [Fact]
    public void Torsion_of_a_square_is_the_handbook_figure() => Assert.Equal(0.1406, new RectangularSection(1, 1).TorsionConstant, 0.001);

    [Fact]
    public void The_minimax_line_is_best_among_all_lines_tried() => Gen.Select(Gen.Double[0, 3], Gen.Double[-0.01, 0.01]).Array[3, 8].Sample(
        readings =>
        {
            var line = MinimaxLine.Through(readings);
            var worst = readings.Max(r => Math.Abs(r.Item2 - (line.Slope * r.Item1) - line.Intercept));
            Assert.Equal(line.Deviation, worst, 1e-12);
            for (var slope = -0.05; slope <= 0.05; slope += 0.0005)
            {
                var off = readings.Select(r => r.Item2 - (slope * r.Item1)).ToList();
                Assert.True((off.Max() - off.Min()) / 2 >= line.Deviation - 1e-12);
            }
        },
        iter: 60);

    [Fact]
    public void A_back_sways_less_than_a_frame_and_a_portal_is_the_handbook_case()
    {
        // Portal with stiff rails: P h³/(12 ΣEI); ten times as high drifts a thousand times as far.
        Assert.Equal(1000, Racking.FrameDrift(10, 10, 500) / Racking.FrameDrift(10, 1, 500), 1e-9);
        Assert.Equal(10 * 8 / (12.0 * 500), Racking.FrameDrift(10, 2, 500), 1e-12);
        Assert.Equal(10 * 2 / (620e6 * 0.006 * 0.9), Racking.BackDrift(10, 2, 0.9, 620e6, 0.006), 1e-15);
    }

    [Fact]
    public void Lifting_needs_more_people_for_more_mass()
    {
        Assert.Equal(1, LiftingEquation.People(20, 20));
        Assert.Equal(2, LiftingEquation.People(26, 20));
        Assert.Equal(3, LiftingEquation.People(30, 20));
        Assert.Null(LiftingEquation.People(31, 20));
        Assert.Equal(0, LiftingEquation.ReachMultiplier(64));
        Assert.Equal(0, LiftingEquation.HeightMultiplier(176));
        Assert.Equal(0, LiftingEquation.TravelMultiplier(176));
        Assert.Equal(0, LiftingEquation.TurnMultiplier(136));
    }

    [Fact]
    public void Clamp_time_follows_the_temperature()
    {
        // Common practice, no source: 27 °C × 0.7, 20 × 1, 15 × 1.5, 10 × 2.2.
        Assert.Equal([0.7, 1, 1.5, 2.2], ((double[])[27, 20, 15, 10]).Select(Gluing.ClampTimeFactor));
        Assert.Equal(1.25, Gluing.ClampTimeFactor(17.5), 1e-12);
    }

    [Fact]
    public void A_ladder_pulls_on_its_rail_as_moments_say() =>

        // 125 kg at 75°: reach/height = cot 75° = 0.268; about 330 N (common practice, no source).
        Assert.Equal(330, TipOver.LadderPull(125 * 9.81, 1 / Math.Tan(75 * Math.PI / 180), 1), 2.0);
}
