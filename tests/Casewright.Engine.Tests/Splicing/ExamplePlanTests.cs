using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Verifying;
using Casewright.Engine.Verifying;
using Casewright.Model.Parts;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>The example jobs planned: proven by the verifier, and keyed so that no wrong assembly of theirs closes.</summary>
public class ExamplePlanTests
{
    public static TheoryData<string> Names => new(Examples.Names);

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_is_planned_and_proven(string name)
    {
        var job = Examples.Read(name);
        var casework = LayoutStage.Lay(job).Value!;
        var outcome = CuttingStage.Plan(job, casework, effort: PlanningEffort.Usual, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        var broken = PlanVerifier.Verify(job, casework, outcome.Value);
        Assert.True(broken.Count == 0, string.Join("\n", broken));
        Assert.Empty(outcome.Value.Findings);
        var bounds = outcome.Value.Bounds;
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{name}: {bounds.Sheets} sheets (at least {bounds.SheetsLowerBound}), cost {bounds.Cost} (at least {bounds.LowerBound}), {outcome.Value.Splices.Count} joints");
        WrongAssembly.NoneCloses(casework, outcome.Value);
    }

    [Fact]
    public void The_sides_of_the_display_wall_are_joined_at_one_height_without_connectors_where_both_faces_show()
    {
        var job = Examples.Read("display-wall");
        var casework = LayoutStage.Lay(job).Value!;
        var plan = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken).Value!;
        var sides = casework.Parts.Where(p => p.Role == PartRole.Side).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);

        // Every side is longer than a 96 in sheet, so each has a joint, all at one height; the two that show on both faces without connectors.
        var joints = plan.Splices.Where(s => sides.Contains(s.Part)).ToArray();
        Assert.Equal(12, joints.Length);
        Assert.Single(joints.Select(j => j.SightLine).Distinct());
        Assert.All(joints.Where(j => j.Part is "C1-L" or "C6-R"), j => Assert.Empty(j.Connectors));
    }
}
