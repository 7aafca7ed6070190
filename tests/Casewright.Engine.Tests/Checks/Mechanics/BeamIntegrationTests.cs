using Casewright.Engine.Checks.Mechanics;
using CsCheck;
using MathNet.Numerics.Integration;

namespace Casewright.Engine.Tests.Checks.Mechanics;

/// <summary>Beam formulas against numerical integration of M m/EI (principle of virtual work) and of the curvature.</summary>
public class BeamIntegrationTests
{
    private const double Load = 520;
    private const double Span = 1.15;
    private const double Stiffness = 1350;

    private static double Integral(Func<double, double> f, double from, double to) => GaussLegendreRule.Integrate(f, from, to, 32);

    private static double UnitMidspan(double x) => Math.Min(x, Span - x) / 2;

    [Fact]
    public void A_simple_span() => Assert.Equal(
        2 * Integral(x => Beams.SimpleMoment(Load, Span, x) * UnitMidspan(x), 0, Span / 2) / Stiffness,
        Beams.SimpleSag(Load, Span, Stiffness),
        1e-12);

    [Fact]
    public void Both_ends_fixed() => Assert.Equal(
        2 * Integral(x => ((Load * x * (Span - x) / 2) - (Load * Span * Span / 12)) * UnitMidspan(x), 0, Span / 2) / Stiffness,
        Beams.FixedSag(Load, Span, Stiffness),
        1e-12);

    [Fact]
    public void A_cantilever() => Assert.Equal(
        Integral(x => Load * (Span - x) * (Span - x) / 2 * (Span - x), 0, Span) / Stiffness,
        Beams.CantileverSag(Load, Span, Stiffness),
        1e-12);

    [Fact]
    public void A_point_load() => Assert.Equal(
        2 * Integral(x => 300 * x / 2 * UnitMidspan(x), 0, Span / 2) / Stiffness,
        Beams.PointSag(300, Span, Stiffness),
        1e-12);

    [Fact]
    public void Shear_adds_the_integral_of_the_shear_force() => Assert.Equal(
        2 * Integral(x => Load * ((Span / 2) - x) * 0.5, 0, Span / 2) / 8000,
        Beams.SimpleShearSag(Load, Span, 8000),
        1e-12);

    [Fact]
    public void A_shelf_on_two_inset_supports()
    {
        const double Inset = 0.21;
        var inner = Span - (2 * Inset);

        // Moment over the length, supports carry half each; unit load in the middle, then at the end.
        double Moment(double x) => (-Load * x * x / 2) + (x > Inset ? Load * Span / 2 * (x - Inset) : 0);
        double UnitMiddle(double x) => x > Inset ? (x - Inset) / 2 : 0;
        var (middle, end) = Beams.OverhangSag(Load, Span, Inset, Stiffness);
        Assert.Equal(2 * Integral(x => Moment(x) * UnitMiddle(x), Inset, Span / 2) / Stiffness, middle, 1e-12);

        // A downward unit load at each end together: moment −x to the support, −a between.
        var work = 2 * (Integral(x => Moment(x) * -x, 0, Inset) + Integral(x => Moment(x) * -Inset, Inset, Inset + (inner / 2))) / Stiffness;
        Assert.Equal(work / 2, end, 1e-12);
    }

    [Fact]
    public void Continuous_spans_of_any_lengths_keep_one_slope_over_every_support() =>
        Gen.Double[0.2, 1.8].Array[1, 6].Sample(
            spans =>
            {
                var beam = new ContinuousBeam(spans, Load, Stiffness);

                // Slopes at the ends of each span from the integral of curvature: θ_left = ∫M(1 − x/l)/EI, θ_right = −∫M x/l/EI.
                var left = spans.Select((l, i) => Integral(x => beam.Moment(i, x) * (1 - (x / l)), 0, l) / Stiffness).ToList();
                var right = spans.Select((l, i) => -Integral(x => beam.Moment(i, x) * x / l, 0, l) / Stiffness).ToList();
                for (var i = 1; i < spans.Length; i++)
                    Assert.Equal(right[i - 1], left[i], 1e-9);

                // Sag at a third of each span by virtual work on the span alone.
                for (var i = 0; i < spans.Length; i++)
                {
                    var (l, at) = (spans[i], spans[i] / 3);
                    var sag = (Integral(x => beam.Moment(i, x) * x * (l - at) / l, 0, at) + Integral(x => beam.Moment(i, x) * at * (l - x) / l, at, l)) / Stiffness;
                    Assert.Equal(sag, beam.Sag(i, at), 1e-9);
                    Assert.True(beam.LargestSag(i) >= beam.Sag(i, at) - 1e-12);
                }

                // The supports carry the whole load.
                Assert.Equal(Load * spans.Sum(), Enumerable.Range(0, spans.Length + 1).Sum(beam.Reaction), 1e-6);
                Assert.Equal(0, beam.MomentOver(0), 1e-12);
                Assert.Equal(0, beam.MomentOver(spans.Length), 1e-12);
            },
            iter: 200);

    [Fact]
    public void Two_and_three_equal_spans_are_the_handbook_cases()
    {
        var two = new ContinuousBeam([1, 1], 1, 1);
        Assert.Equal(Beams.TwoSpanSagFactor, two.LargestSag(0), 1e-9);
        Assert.Equal(-0.125, two.MomentOver(1), 1e-12);
        Assert.Equal(0.375, two.Reaction(0), 1e-12);
        Assert.Equal(1.25, two.Reaction(1), 1e-12);
        var three = new ContinuousBeam([1, 1, 1], 1, 1);
        Assert.Equal(-0.1, three.MomentOver(1), 1e-12);
        Assert.Equal(0.1, three.LargestMoment(), 1e-12);
        Assert.Equal(0.125, new ContinuousBeam([1], 1, 1).LargestMoment(), 1e-12);
    }
}
