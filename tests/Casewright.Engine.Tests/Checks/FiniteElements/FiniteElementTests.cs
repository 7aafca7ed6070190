using Casewright.Engine.Checks.Mechanics;

namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>
/// Our formulas against solid finite elements of our own models. Tolerances are what the formulas claim: 1 to 3 % for plain panels,
/// the strip model × 1.06 within 6 %, the bond rule of splices within 5 %, the joint's spring within 10 %.
/// </summary>
public class FiniteElementTests
{
    private static readonly Orthotropic Birch = new(9700, 7700, 600, 0.08, 0.30, 0.30, 650, 190, 190);
    private static readonly Orthotropic Ply = new(8500, 5500, 500, 0.08, 0.30, 0.30, 620, 200, 150);
    private static readonly Orthotropic Poplar = new(10900, 900, 900, 0.35, 0.35, 0.40, 750, 700, 200);
    private static readonly Orthotropic Maple = new(12600, 1000, 1000, 0.35, 0.35, 0.40, 800, 800, 250);

    [Fact]
    public void Our_model_repeats_the_published_run_of_a_nosed_shelf()
    {
        Assert.SkipWhen(Calculix.Absent, Calculix.WhyAbsent);

        // Another author's deck: 900 × 300 × 18, strip 19 × 38, 2.4 kPa: 1.690 mm in front, 4.469 mm behind, 3.085 between.
        var (back, front, middle) = new ShelfModel([900], 300, 18, 0.0024, Ply) { Strip = (19, 38, Maple) }.Solve();
        Assert.Equal(1.690, front, 0.01 * 1.690);
        Assert.Equal(4.469, back, 0.01 * 4.469);
        Assert.Equal(3.085, middle[0], 0.01 * 3.085);
    }

    [Theory]
    [InlineData(1100, 260, 24, 22, 50)]
    [InlineData(760, 340, 16, 25, 34)]
    public void A_nosed_shelf_sags_as_the_strip_model_says(double span, double depth, double thickness, double stripWidth, double stripHeight)
    {
        Assert.SkipWhen(Calculix.Absent, Calculix.WhyAbsent);
        const double Pressure = 0.0015;
        var model = new ShelfModel([span], depth, thickness, Pressure, Birch) { Strip = (stripWidth, stripHeight, Poplar) };
        var panel = new ShelfPanel(span / 1000, depth / 1000, thickness / 1000, 9700e6, 650e6);
        var strip = EdgeStrip.TopFlush(stripWidth / 1000, stripHeight / 1000, 10900e6, 750e6, thickness / 1000);
        var (back, front, _) = model.Solve();
        var ours = NosedShelf.BackFree(panel, strip, Pressure * 1e6);
        Assert.InRange(NosedShelf.ModelAllowance * ours.Back * 1000 / back, 0.94, 1.06);
        Assert.InRange(NosedShelf.ModelAllowance * ours.Front * 1000 / front, 0.94, 1.06);
        var carried = (model with { BackOnCleat = true }).Solve();
        Assert.InRange(NosedShelf.ModelAllowance * NosedShelf.BackOnCleat(panel, strip, Pressure * 1e6) * 1000 / carried.Front, 0.94, 1.06);
    }

    [Fact]
    public void A_shelf_over_two_unequal_bays_sags_as_the_continuous_beam_says()
    {
        Assert.SkipWhen(Calculix.Absent, Calculix.WhyAbsent);
        const double Pressure = 0.002;
        var (_, _, middle) = new ShelfModel([1000, 750], 280, 18, Pressure, Birch).Solve();
        var section = new RectangularSection(0.280, 0.018);
        var load = Pressure * 1e6 * 0.280;
        var beam = new ContinuousBeam([1.0, 0.75], load, 9700e6 * section.SecondMoment);
        var shear = Beams.SimpleShearSag(load, 1.0, 190e6 * section.ShearArea);
        Assert.InRange((beam.LargestSag(0) + shear) * 1000 / middle[0], 0.97, 1.03);

        // The short bay hardly sags; its own share of shear and of the plate's width is of the same size, so it is held to a tenth.
        var shearShort = Beams.SimpleShearSag(load, 0.75, 190e6 * section.ShearArea);
        Assert.InRange((beam.LargestSag(1) + shearShort) * 1000 / middle[1], 0.90, 1.10);
    }

    [Theory]
    [InlineData(15, 5, 20)]
    [InlineData(24, 8, 28)]
    public void A_spliced_panel_shares_the_moment_and_turns_as_our_rules_say(double thickness, double spline, double embedment)
    {
        Assert.SkipWhen(Calculix.Absent, Calculix.WhyAbsent);
        const double HalfLength = 160;
        const double Moment = 100;
        var model = new SpliceModel(thickness, spline, embedment, HalfLength, Ply, Maple);
        var result = model.Bent(Moment);
        Assert.Equal(0, result.Axial, 1e-3);
        Assert.Equal(Moment, Math.Abs(result.Moment), 1.0);

        // Bond limit rebuilt from what the elements show: peak mean cheek shear = (1 − r)M/(2 e z) + r M/(t_t e), lever arm z.
        var z = (thickness / 2) - result.Contact;
        var shown = 1 / (((1 - result.Share) / (2 * embedment * z)) + (result.Share / (spline * embedment)));
        var ours = SpliceStrength.ClosedBond(new(1, thickness / 1000, 8500e6, 40e6, 24e6, 1), new(spline / 1000, 1, embedment / 1000, 36e6, 60e6)) * 1e6;
        Assert.InRange(ours / shown, 0.95, 1.05);

        // Half turn = M L/EI of the plain half + half of the joint's turn M/k.
        var stiffness = 8500 * Math.Pow(thickness, 3) / 12;
        var extra = 2 * ((Math.Abs(result.Turn) * stiffness / Moment) - HalfLength);
        Assert.InRange(SpliceStiffness.SplineLength(thickness / 1000, spline / 1000) * 1000 / extra, 0.90, 1.10);
    }

    [Fact]
    public void A_loaded_panel_spliced_at_midspan_sags_more_by_what_our_rule_adds()
    {
        Assert.SkipWhen(Calculix.Absent, Calculix.WhyAbsent);
        const double Half = 350;
        const double Pressure = 0.001;
        var sag = new SpliceModel(18, 6, 25, Half, Ply, Maple).Loaded(Pressure).Sag;
        var stiffness = 8500e6 * Math.Pow(0.018, 3) / 12;
        var plain = (Beams.SimpleSag(Pressure * 1e6, 2 * Half / 1000, stiffness) + Beams.SimpleShearSag(Pressure * 1e6, 2 * Half / 1000, 200e6 * 5 / 6 * 0.018)) * 1000;
        var added = SpliceStiffness.AddedSag(SpliceStiffness.SplineLength(0.018, 0.006), 2 * Half / 1000, Half / 1000);
        Assert.InRange(plain * (1 + added) / sag, 0.97, 1.03);
    }
}
