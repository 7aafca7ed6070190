using Casewright.Engine.Access;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using CsCheck;

namespace Casewright.Engine.Tests.Access;

/// <summary>Boxes through narrow places: published corridor results, hand figures, and rotation in small steps.</summary>
public sealed class PassageGeometryTests
{
    private const int Steps = 20_000;

    private static Length Metres(double metres) => Length.FromNanometres((long)Math.Round(metres * 1e9));

    private static Passage Place(PassageKind kind, double width, double height, double? next = null) => new()
    {
        Name = "place",
        Kind = kind,
        Width = Metres(width),
        Height = Metres(height),
        NextWidth = next is { } n ? Metres(n) : null,
    };

    /// <summary>The ladder round a corner of two equal corridors: 2√2·w (textbook maximum-minimum problem, from memory); 2.8284 m at 1 m.</summary>
    [Fact]
    public void A_thin_ladder_turns_up_to_two_root_two_corridor_widths()
    {
        var corner = Place(PassageKind.Turn, 1, 2, 1);
        Assert.True(PassageGeometry.Fit(corner, [2.827, 1e-6, 0.4]).Passes);
        Assert.Equal(2 * Math.Sqrt(2), CorridorTurn.LongestRod(1, 1), 1e-12);

        // Held level it is 2.83 that no longer turns; tipped to a ceiling of 2.3 it is shorter from above and goes on turning.
        Assert.False(PassageGeometry.Fit(Place(PassageKind.Turn, 1, 0.4, 1), [2.83, 1e-6, 0.4]).Passes);
        Assert.True(PassageGeometry.Fit(Place(PassageKind.Turn, 1, 2.3, 1), [2.83, 1e-6, 0.2]).Passes);
    }

    /// <summary>engineering.md: 900 and 1000 wide, 350 thick: 1985.1 mm; 36 and 36 in, 12 thick: 77.823 in.</summary>
    [Fact]
    public void The_hallway_values_hold_for_boxes()
    {
        // As high as the passage, so that it cannot be tipped.
        var hall = Place(PassageKind.Turn, 0.9, 2.0, 1.0);
        Assert.True(PassageGeometry.Fit(hall, [1.985, 0.35, 2.0]).Passes);
        Assert.False(PassageGeometry.Fit(hall, [1.9852, 0.35, 2.0]).Passes);
        var square = Place(PassageKind.Turn, 36 * 0.0254, 80 * 0.0254, 36 * 0.0254);
        Assert.True(PassageGeometry.Fit(square, [77.82 * 0.0254, 12 * 0.0254, 80 * 0.0254]).Passes);
        Assert.False(PassageGeometry.Fit(square, [77.83 * 0.0254, 12 * 0.0254, 80 * 0.0254]).Passes);
    }

    /// <summary>By hand: 2.4 × 0.35 tipped under 2.1: diagonal 2.42539, asin(2.1/2.42539) − atan(0.35/2.4) = 59.981° − 8.297° = 51.684°; along 1.4880 + 0.2746.</summary>
    [Fact]
    public void A_tall_case_is_tipped_to_the_headroom()
    {
        var angle = Tipping.Shortest(2.4, 0.35, 2.1)!.Value;
        Assert.Equal(51.684, double.RadiansToDegrees(angle), 0.005);
        Assert.Equal(1.7626, Tipping.Along(2.4, 0.35, angle), 1e-3);
        Assert.Equal(2.1, Tipping.Height(2.4, 0.35, angle), 1e-9);
        Assert.Null(Tipping.Shortest(2.4, 0.35, 0.3));
    }

    [Fact]
    public void No_angle_is_shorter_under_the_headroom_than_the_one_found() =>
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[0.05, 0.9], Gen.Double[0.3, 2.6]).Sample(
            (length, thickness, headroom) =>
            {
                var least = double.MaxValue;
                for (var i = 0; i <= Steps; i++)
                {
                    var angle = Math.PI / 2 * i / Steps;
                    if (Tipping.Height(length, thickness, angle) <= headroom + 1e-12)
                        least = Math.Min(least, Tipping.Along(length, thickness, angle));
                }

                if (Tipping.Shortest(length, thickness, headroom) is not { } found)
                    Assert.Equal(double.MaxValue, least);
                else if (least < double.MaxValue)
                    Assert.Equal(least, Tipping.Along(length, thickness, found), 0.001);
            },
            iter: 60);

    /// <summary>Carver's rule against leaning in small steps: some angle fits exactly when the rule says so, but at its edge.</summary>
    [Fact]
    public void Leaning_in_a_rectangle_is_what_rotation_finds() =>
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[0.1, 1], Gen.Double[0.5, 2.5], Gen.Double[0.5, 2.5]).Sample(
            (p, q, a, b) =>
            {
                bool Rotates(double by)
                {
                    for (var i = 0; i <= 2000; i++)
                    {
                        var (sin, cos) = Math.SinCos(Math.PI / 2 * i / 2000);
                        if ((p * by * cos) + (q * by * sin) <= a && (p * by * sin) + (q * by * cos) <= b)
                            return true;
                    }

                    return false;
                }

                if (RectangleInRectangle.Fits(p, q, a, b))
                    Assert.True(Rotates(0.998));
                else
                    Assert.False(Rotates(1.002));
            },
            iter: 200);

    [Fact]
    public void A_doorway_takes_the_two_smaller_sizes()
    {
        // 760 wide and 1980 high takes 700 × 350 × any length; not 800 × 770.
        var door = Place(PassageKind.Doorway, 0.76, 1.98);
        Assert.True(PassageGeometry.Fit(door, [2.4, 0.9, 0.35]).Passes);
        Assert.Equal(0.41, PassageGeometry.Fit(door, [2.4, 0.9, 0.35]).Spare, 1e-9);
        Assert.False(PassageGeometry.Fit(door, [2.4, 0.8, 0.77]).Passes);
    }

    [Fact]
    public void Stairs_take_the_headroom_square_to_the_pitch()
    {
        // 2000 plumb at 42°: 1486 square to it. A flight 800 wide takes 700 × 1480, not 700 × 1490.
        var stair = Place(PassageKind.Stair, 0.8, 2.0) with { Pitch = 42 };
        Assert.True(PassageGeometry.Fit(stair, [2.4, 0.7, 1.48]).Passes);
        Assert.False(PassageGeometry.Fit(stair, [2.4, 1.49, 1.49]).Passes);

        // With a landing of 900 a case 2400 × 700 × 350 must turn: tipped under 2000 it is 1.82 long from above and 1.6 would turn.
        Assert.False(PassageGeometry.Fit(stair with { NextWidth = Metres(0.9) }, [2.4, 0.7, 0.35]).Passes);
        Assert.True(PassageGeometry.Fit(stair with { NextWidth = Metres(0.9) }, [1.9, 0.5, 0.3]).Passes);
    }

    [Fact]
    public void A_lift_is_entered_by_its_door_and_leaned_in()
    {
        // Car 1.1 × 1.4 × 2.2, door 0.8 × 2.0. A case 2.4 × 0.6 × 0.3 leans along the depth: 0.3 wide in 1.4 × 2.2 takes up to 2.39...
        var lift = Place(PassageKind.LiftCar, 1.1, 2.2, 1.4) with { DoorWidth = Metres(0.8), DoorHeight = Metres(2.0) };
        var longest = RectangleInRectangle.Longest(0.3, 1.4, 2.2);
        Assert.True(PassageGeometry.Fit(lift, [longest - 0.001, 0.6, 0.3]).Passes);
        Assert.False(PassageGeometry.Fit(lift, [longest + 0.001, 0.6, 0.3]).Passes);

        // Through the door neither 0.85 × 2.1 nor on its side.
        Assert.False(PassageGeometry.Fit(lift, [2.1, 0.85, 0.82]).Passes);
    }

    [Fact]
    public void The_longest_that_passes_is_the_edge_of_passing()
    {
        var hall = Place(PassageKind.Turn, 0.9, 2.1, 1.0);
        var longest = PassageGeometry.Longest(hall, 4, 0.6, 0.35);
        Assert.True(PassageGeometry.Fit(hall, [longest - 0.0005, 0.6, 0.35]).Passes);
        Assert.False(PassageGeometry.Fit(hall, [longest + 0.0005, 0.6, 0.35]).Passes);
    }
}
