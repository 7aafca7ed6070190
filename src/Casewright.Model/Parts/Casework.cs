using Casewright.Model.Collections;
using Casewright.Model.Findings;

namespace Casewright.Model.Parts;

/// <summary>What the layout derives from a job: cases and parts in their places.</summary>
/// <param name="Cases">Cases, by run, column and tier.</param>
/// <param name="Parts">Parts in a stable order; ids unique.</param>
/// <param name="Findings">What the layout noticed.</param>
public sealed record Casework(ValueList<CaseBox> Cases, ValueList<Part> Parts, ValueList<Finding> Findings);
