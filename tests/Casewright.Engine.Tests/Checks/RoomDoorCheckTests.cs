using Casewright.Engine.Access;

using Casewright.Engine.Checks.Fitting;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

/// <summary>Leaves of room doors and what stands beside them, against geometry by hand and against turning the leaf step by step.</summary>
public class RoomDoorCheckTests
{
    [Theory]
    [InlineData(-970, -70, 0, 350, 101.31)]
    [InlineData(-970, -70, 0, 1000, 90.77)]
    [InlineData(-330, -60, 30, 966, 90)]
    [InlineData(-330, -30, 30, 966, 87.68)]
    [InlineData(860, 1700, 0, 350, 180)]
    [InlineData(600, 900, 300, 900, 19.2)]
    [InlineData(300, 500, 200, 900, 21.8)]
    public void A_leaf_opens_until_it_meets_a_case(double fromU, double toU, double fromV, double toV, double angle)
    {
        // A leaf of 800, its handle 60 from the edge and 60 out: the handle's circle is √(740² + 60²) = 742.43, 4.635° ahead of the leaf.
        // A case 70 beside the hinge and 350 deep: 180° − arctan(350/70) = 101.31°, its corner √(70² + 350²) = 357 from the hinge.
        // 1000 deep, its side is met: the leaf at arccos(−70/800) = 95.02°, the handle at arccos(−70/742.43) − 4.635° = 90.77°.
        // A side at −60: leaf 94.3°, handle arccos(−60/742.43) − 4.635° = 94.635° − 4.635° = 90°. At −30: 92.316° − 4.635° = 87.68°.
        // Beyond the latch: never. A box from u 600, 300 out: leaf arcsin(300/800) = 22.02°, handle arcsin(300/742.43) − 4.635° = 19.2°.
        // A box from u 300 to 500, 200 out: its corner lies within reach at arctan(200/500) = 21.8°.
        Assert.Equal(angle, LeafSwing.Angle(800, 60, 60, new(fromU, toU, fromV, toV)), 0.02);
    }

    [Fact]
    public void A_leaf_turned_step_by_step_meets_a_box_where_the_formula_says() => Gen.Select(Gen.Double[-900, 900], Gen.Double[20, 600], Gen.Double[0, 900], Gen.Double[20, 900]).Sample(
        (fromU, wide, fromV, deep) =>
        {
            var box = new PlanRectangle(fromU, fromU + wide, fromV, fromV + deep);
            var (told, turned) = (LeafSwing.Angle(800, 60, 60, box), Turned(box));
            Assert.True(Math.Abs(told - turned) < 0.35, $"{box}: {told} by formula, {turned} step by step");
        },
        iter: 300);

    // The leaf as a line clipped to the box, side by side (Liang and Barsky 1984, from memory), and the handle; a tenth of a degree at a time.
    private static double Turned(PlanRectangle box)
    {
        for (var tenth = 0; tenth <= 1800; tenth++)
        {
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(tenth / 10.0));
            if (Crosses(800 * cos, 800 * sin, box) || Inside((740 * cos) - (60 * sin), (740 * sin) + (60 * cos), box))
                return tenth / 10.0;
        }

        return 180;
    }

    // Whether the line from the hinge to (u, v) enters the box.
    private static bool Crosses(double u, double v, PlanRectangle box)
    {
        var (enter, leave) = (0.0, 1.0);
        foreach (var (step, room) in new[] { (-u, -box.FromU), (u, box.ToU), (-v, -box.FromV), (v, box.ToV) })
        {
            if (step == 0 && room < 0)
                return false;
            if (step < 0)
                enter = Math.Max(enter, room / step);
            else if (step > 0)
                leave = Math.Min(leave, room / step);
        }

        return enter <= leave;
    }

    private static bool Inside(double u, double v, PlanRectangle box) => u >= box.FromU && u <= box.ToU && v >= box.FromV && v <= box.ToV;

    private static Bookcase WithDoor(WallFeature door) => new() { ChangeJob = j => j with { Walls = [j.Walls[0] with { Width = Bookcase.Mm(4000), Survey = new() { Datum = Bookcase.Mm(1000), Features = [door] } }] } };

    private static WallFeature Door(decimal x, DoorSwing? swing, bool moves = false) => new()
    {
        Name = "hall door",
        Kind = FeatureKind.Door,
        X = Bookcase.Mm(x),
        Y = Length.Zero,
        Width = Bookcase.Mm(800),
        Height = Bookcase.Mm(2000),
        Casing = Bookcase.Mm(60),
        Swing = swing,
        Moves = moves,
    };

    [Fact]
    public void A_door_beside_the_run_opens_past_square()
    {
        // The case ends at 966, the opening begins at 1036: 180° − arctan(300/70) = 103.1°.
        var finding = Checked.By<RoomDoorsCheck>(WithDoor(Door(1036, DoorSwing.InHungLeft)), "A");
        Assert.Equal((Severity.Pass, 103.13), (finding.Severity, Math.Round(finding.Value!.Value, 2)));
        Assert.Equal(180, Checked.By<RoomDoorsCheck>(WithDoor(Door(1036, DoorSwing.InHungRight)), "A").Value);
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<RoomDoorsCheck>(WithDoor(Door(1036, null)), "A"));
        Assert.Empty(Checked.By<RoomDoorsCheck>(WithDoor(Door(1036, DoorSwing.InHungLeft, moves: true))));
    }

    [Fact]
    public void A_leaf_that_stands_in_the_doorway_takes_its_thickness()
    {
        // 350 between the stops; a box of 320 passes, and with a leaf of 40 in the way it lacks 10.
        var passage = new Passage { Name = "door", Kind = PassageKind.Doorway, Width = Bookcase.Mm(350), Height = Bookcase.Mm(2000) };
        Assert.Equal(0.030, PassageGeometry.Fit(passage, [2.4, 0.8, 0.32]).Spare, 1e-9);
        Assert.Equal(-0.010, PassageGeometry.Fit(passage with { Leaf = Bookcase.Mm(40) }, [2.4, 0.8, 0.32]).Spare, 1e-9);
    }
}
