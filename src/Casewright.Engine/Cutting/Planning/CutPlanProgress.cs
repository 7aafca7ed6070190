namespace Casewright.Engine.Cutting.Planning;

/// <summary>How far the cutting of a job has come.</summary>
/// <param name="Material">Id of the material that is being cut.</param>
/// <param name="Number">Its number among the materials of the job, from 1.</param>
/// <param name="Of">How many materials there are.</param>
/// <param name="Search">How far its search has come.</param>
public sealed record CutPlanProgress(string Material, int Number, int Of, CuttingProgress Search);
