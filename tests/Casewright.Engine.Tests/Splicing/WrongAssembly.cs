using Casewright.Engine.Splicing.Keying;
using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Tries every wrong assembly of a plan's tenoned joints.</summary>
internal static class WrongAssembly
{
    /// <summary>
    /// Every end of every piece is tried on the end before every tenoned joint, both ways; only what belongs there closes, or what the
    /// plan calls interchangeable. Joints that the plan itself reports as not keyed are left out.
    /// </summary>
    public static void NoneCloses(Casework casework, CutPlan plan)
    {
        var parts = casework.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var reported = plan.Findings.Select(f => f.Subject).ToHashSet(StringComparer.Ordinal);
        var tenoned = plan.Splices.Where(s => s.Tenons.Count > 0).ToArray();
        foreach (var joint in tenoned)
        {
            var foot = PieceEnd.Before(parts[joint.Part], joint);
            foreach (var other in tenoned)
            {
                var head = PieceEnd.After(parts[other.Part], other);
                var right = other.KeyClass == joint.KeyClass;
                if (right || !reported.Contains(joint.Id))
                    Assert.Equal(right, JointFit.GoesTogether(foot, head, EndPlacement.EdgesTogether));
                Assert.False(JointFit.GoesTogether(foot, head, EndPlacement.EdgesOpposed) && !reported.Contains(joint.Id), $"{other.Id} turned over on {joint.Id}");
                if (!right && !reported.Contains(joint.Id))
                    TurnedEndForEnd(foot, PieceEnd.Before(parts[other.Part], other), joint, other);
            }
        }

        Assert.Equal(plan.Splices.Count, plan.Splices.Select(s => s.PairLetter).Distinct(StringComparer.Ordinal).Count());
    }

    private static void TurnedEndForEnd(PieceEnd foot, PieceEnd turned, Splice joint, Splice other)
    {
        foreach (var placement in Enum.GetValues<EndPlacement>())
            Assert.False(JointFit.GoesTogether(foot, turned, placement), $"{other.Id} turned end for end on {joint.Id}");
    }
}
