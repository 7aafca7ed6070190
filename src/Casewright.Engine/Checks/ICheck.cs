using Casewright.Model.Findings;

namespace Casewright.Engine.Checks;

/// <summary>One check. Pure: the same plan gives the same findings in the same order.</summary>
public interface ICheck
{
    /// <summary>What it is.</summary>
    CheckSheet Sheet { get; }

    /// <summary>Looks at the whole plan. Yields nothing only when the plan holds nothing of its kind.</summary>
    IEnumerable<Finding> Run(CheckContext context);
}
