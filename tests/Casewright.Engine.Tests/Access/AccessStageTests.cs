using Casewright.Engine.Access;
using Casewright.Engine.Tests.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Tests.Access;

/// <summary>Standing cases up, worked by hand, and the advice where they do not get in or up.</summary>
public sealed class AccessStageTests
{
    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    private static Job Job(decimal ceiling, BaseDesign foot, decimal height, ValueList<Passage>? route = null)
    {
        var run = SampleRuns.Plain(UnitSystem.Millimetres, Mm(900), Mm(height), Mm(400)) with { Base = foot };
        var job = SampleRuns.Job(UnitSystem.Millimetres, run);
        return job with { Walls = [job.Walls[0] with { Height = Mm(ceiling) }], Site = new() { Route = route } };
    }

    private static CaseAccess Study(Job job) => AccessStage.Study(job, Laid.Of(job).Casework)[0];

    private static BaseDesign Plinth(decimal height) => new() { Kind = BaseKind.Plinth, Height = Mm(height), Setback = Mm(50), ShimRoom = Mm(10) };

    [Fact]
    public void On_its_base_it_needs_more_than_beside_it()
    {
        // Case 2340 × 400 on a base of 100: √(2340² + 400²) = 2373.94; beside and lifted max(2373.94 + 10, 2440 + 12) = 2452; on it 2483.94.
        var access = Study(Job(2470, Plinth(100), 2440));
        Assert.Equal([StandingPlace.FloorThenLifted, StandingPlace.OnBase], access.Standing.Select(s => s.Place));
        Assert.Equal(2.452, access.Standing[0].Need, 1e-6);
        Assert.Equal(2.48394, access.Standing[1].Need, 1e-5);
        Assert.True(access.Best is { Place: StandingPlace.FloorThenLifted, Passes: true });
        Assert.True(access.Passes);
        Assert.Empty(access.Advice);
    }

    [Fact]
    public void Sides_to_the_floor_that_do_not_go_up_are_advised_a_base_apart()
    {
        // 2440 × 400: √ = 2472.57 + 10 under 2460 does not go; without 100 of base 2373.94 + 10 does.
        var access = Study(Job(2460, new() { Kind = BaseKind.SidesToFloor, Height = Mm(100), Setback = Mm(0) }, 2440));
        Assert.False(access.Passes);
        Assert.StartsWith("Deliver the base apart", access.Advice[0], StringComparison.Ordinal);

        // √(2450² − 400²) = 2417.1 is the tallest that goes up.
        Assert.Contains("2417.1 mm", access.Advice[1], StringComparison.Ordinal);
        Assert.Contains("so 2 of them", access.Advice[1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_pass_the_stairs_is_split_and_what_can_be_no_smaller_is_glued_up_in_the_room()
    {
        Passage stairs = new() { Name = "stairs", Kind = PassageKind.Stair, Width = Mm(700), Height = Mm(1900), NextWidth = Mm(700), Pitch = 42 };
        var split = Study(Job(2700, Plinth(100), 2440, [stairs]));
        Assert.Contains(split.Advice, a => a.StartsWith("Split the case", StringComparison.Ordinal));

        // Nothing 400 × 900 passes a door 380 wide, however low it is.
        var glued = Study(Job(2700, Plinth(100), 2440, [new() { Name = "hatch", Kind = PassageKind.Window, Width = Mm(380), Height = Mm(380) }]));
        Assert.StartsWith("Glue it up in the room", Assert.Single(glued.Advice), StringComparison.Ordinal);
    }

    [Fact]
    public void An_upper_case_is_stood_up_and_lifted_onto_the_lower_one()
    {
        var job = Job(2600, Plinth(100), 2440);
        var run = job.Runs[0] with { Tiers = [new() { Height = Mm(800), Interior = new() }, new() { Interior = new() }] };
        job = job with { Runs = [run] };
        var upper = AccessStage.Study(job, Laid.Of(job).Casework)[1];

        // 900 up, 1540 high: 2440 + 12 to lift it over.
        Assert.Equal(2.452, Assert.Single(upper.Standing).Need, 1e-6);
    }

    [Fact]
    public void Weight_and_hands_are_those_of_the_case_without_loose_shelves()
    {
        var access = Study(Job(2700, Plinth(100), 2440));
        Assert.True(access.Mass is > 30 and < 70, $"{access.Mass} kg");
        Assert.Equal((int)Math.Ceiling(access.Mass / 23), access.People);
        Assert.Null(access.Passages);
    }
}
