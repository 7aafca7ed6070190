using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying;

/// <summary>One thing that must hold of every plan.</summary>
internal interface IPlanRule
{
    /// <summary>Each place where it does not hold, in the order of the plan.</summary>
    IEnumerable<Problem> Check(Evidence evidence);
}
