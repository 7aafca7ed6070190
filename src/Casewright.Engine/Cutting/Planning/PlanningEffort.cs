namespace Casewright.Engine.Cutting.Planning;

/// <summary>How long the cutting of a job is searched for. Effort is counted in work, not time, so that results repeat.</summary>
public enum PlanningEffort
{
    /// <summary>A first answer, for trying things out.</summary>
    Quick,

    /// <summary>What suits a job.</summary>
    Usual,

    /// <summary>Before sheets are bought.</summary>
    Thorough,
}
