using Casewright.Engine.Verifying.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying;

/// <summary>
/// Proves a cutting plan again from the job and the parts alone, before anything of it is printed or sawn. It shares no code with
/// the stages that made the plan: what they compute, it derives anew from the records and from the rules of the shop.
/// </summary>
/// <remarks>
/// What it does not prove: that a lower bound is really one (only that it does not exceed the cost and adds up), and that the layout
/// of the parts is what the design asked for.
/// </remarks>
public static class PlanVerifier
{
    /// <summary>Rules that the others stand on: when one of these fails, the rest would only repeat it.</summary>
    private static readonly IPlanRule[] s_gates = [new SoundFigures(), new ReferencesResolve()];

    private static readonly IPlanRule[] s_rules =
    [
        new StockIsReal(),
        new StockSuffices(),
        new SawnStays(),
        new LeftoversAreThere(),
        new PartsAreCovered(),
        new PieceWidths(),
        new JointAllowances(),
        new GrainIsFollowed(),
        new PiecesInsideSheets(),
        new KerfBetweenPieces(),
        new CutsRunEdgeToEdge(),
        new CutStages(),
        new FenceSettings(),
        new SawLimits(),
        new PiecesComeOff(),
        new OffcutsLieInWaste(),
        new BoardsAreCut(),
        new SplicesMeetPieces(),
        new SplicePieceLengths(),
        new SpliceClearances(),
        new SpliceMethods(),
        new SpliceMarks(),
        new TenonsFit(),
        new ConnectorsFit(),
        new JointsAreKeyed(),
        new PairLetters(),
        new SightLines(),
        new CoveredButtsAreCarried(),
        new FrontsMoveFreely(),
        new RakedPartsFit(),
        new BoundsAddUp(),
    ];

    /// <summary>Every way in which the plan breaks a rule, in the order of the rules; empty for a plan that is proven.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">Its cases and parts.</param>
    /// <param name="plan">What is to be cut from what, and where it is spliced.</param>
    public static ValueList<Problem> Verify(Job job, Casework casework, CutPlan plan)
    {
        var evidence = new Evidence(job, casework, plan);
        foreach (var gate in s_gates)
        {
            var stops = gate.Check(evidence).ToValueList();
            if (stops.Count > 0)
                return stops;
        }

        return s_rules.SelectMany(rule => rule.Check(evidence)).ToValueList();
    }
}
