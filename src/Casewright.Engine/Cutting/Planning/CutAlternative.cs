using Casewright.Model.Cutting;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>One of several plans of equal cost and sheets.</summary>
/// <param name="Aim">What it is best at.</param>
/// <param name="Plan">The plan.</param>
public sealed record CutAlternative(LayoutAim Aim, CutPlan Plan);
