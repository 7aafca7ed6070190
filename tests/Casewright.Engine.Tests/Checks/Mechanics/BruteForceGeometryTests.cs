using Casewright.Engine.Checks.Mechanics;
using CsCheck;

namespace Casewright.Engine.Tests.Checks.Mechanics;

/// <summary>Tilting and turning against rotation in small steps.</summary>
public class BruteForceGeometryTests
{
    private const int Steps = 20_000;

    private static double Tallest((double X, double Y)[] outline, double from, double to)
    {
        var tallest = 0.0;
        for (var i = 0; i <= Steps; i++)
        {
            var (sin, cos) = Math.SinCos(from + ((to - from) * i / Steps));
            var heights = outline.Select(p => (p.X * sin) + (p.Y * cos)).ToList();
            tallest = Math.Max(tallest, heights.Max() - heights.Min());
        }

        return tallest;
    }

    [Fact]
    public void A_box_tilts_up_through_the_diagonal() => Gen.Double[1, 3].Select(Gen.Double[0.2, 0.8]).Sample(
        size =>
        {
            var (h, d) = size;
            (double, double)[] box = [(0, 0), (d, 0), (d, h), (0, h)];
            Assert.Equal(Tallest(box, Math.PI / 2, 0), TiltUp.Headroom(h, d), 1e-6);
            Assert.Equal(h, TiltUp.TallestUnder(TiltUp.Headroom(h, d), d), 1e-9);
        },
        iter: 40);

    [Fact]
    public void A_toe_recess_saves_what_the_rule_says_when_tilted_from_the_face() =>
        Gen.Select(Gen.Double[1.5, 2.6], Gen.Double[0.25, 0.7], Gen.Double[0.02, 0.1], Gen.Double[0.05, 0.15]).Sample(
            (h, d, recess, height) =>
            {
                (double, double)[] outline = [(0, 0), (d - recess, 0), (d, height), (d, h), (0, h)];
                var ours = TiltUp.HeadroomFromFace(h, d, new(recess, height));
                Assert.Equal(Tallest(outline, -Math.PI / 2, 0), ours, 1e-6);
                Assert.True(ours <= TiltUp.Headroom(h, d));
            },
            iter: 40);

    [Fact]
    public void The_longest_rectangle_round_a_corner_just_clears_it() =>
        Gen.Select(Gen.Double[0.7, 1.6], Gen.Double[0.7, 1.6], Gen.Double[0.02, 0.6]).Sample(
            (a, b, thickness) =>
            {
                var longest = CorridorTurn.Longest(a, b, thickness);
                Assert.True(Clears(a, b, longest * 0.9999, thickness));
                Assert.False(Clears(a, b, longest * 1.001, thickness));
            },
            iter: 40);

    [Fact]
    public void A_short_wide_thing_goes_round_sideways_without_turning()
    {
        Assert.True(CorridorTurn.Passes(0.9, 1.0, 0.95, 0.85));
        Assert.False(CorridorTurn.Passes(0.9, 1.0, 1.2, 0.95));
        Assert.True(CorridorTurn.Passes(0.9, 1.0, 1.98, 0.35));
        Assert.False(CorridorTurn.Passes(0.9, 1.0, 1.99, 0.35));
    }

    // The outer corner is at the origin, the inner one at (a, b). The rectangle leans with the ends of its outer side on both outer
    // walls; at every angle the inner corner must lie outside it.
    private static bool Clears(double a, double b, double length, double thickness)
    {
        for (var i = 1; i < Steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * i / Steps);
            (double X, double Y) p = (length * cos, 0);
            (double X, double Y) q = (0, length * sin);
            (double X, double Y) r = (q.X + (thickness * sin), q.Y + (thickness * cos));
            (double X, double Y) s = (p.X + (thickness * sin), p.Y + (thickness * cos));
            (double X, double Y)[] outline = [p, s, r, q];
            if (Inside(outline, (a, b)))
                return false;
        }

        return true;
    }

    private static bool Inside((double X, double Y)[] outline, (double X, double Y) point)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Length]);
            if (((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X)) <= 1e-12)
                return false;
        }

        return true;
    }
}
