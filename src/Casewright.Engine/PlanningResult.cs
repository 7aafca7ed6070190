using Casewright.Model.Collections;
using Casewright.Model.Plans;

namespace Casewright.Engine;

/// <summary>Where planning ended.</summary>
public enum PlanningEnd
{
    /// <summary>There is a plan, and it was verified.</summary>
    Planned,

    /// <summary>The job states something that cannot be built; each problem has its path in the job file.</summary>
    JobWrong,

    /// <summary>The job can be built, but not from this stock under these rules; each problem says what would make a plan.</summary>
    NoPlan,

    /// <summary>A plan was made and its verification failed: a defect of the program. Nothing may be printed from it.</summary>
    NotVerified,
}

/// <summary>What came of planning a job.</summary>
/// <param name="End">Where it ended.</param>
/// <param name="Plan">The plan; null unless <see cref="PlanningEnd.Planned"/>.</param>
/// <param name="Problems">Why there is no plan; empty when there is one.</param>
public sealed record PlanningResult(PlanningEnd End, Plan? Plan, ValueList<Problem> Problems)
{
    internal static PlanningResult Of(Plan plan) => new(PlanningEnd.Planned, plan, []);

    internal static PlanningResult Without(PlanningEnd end, ValueList<Problem> problems) => new(end, null, problems);
}
