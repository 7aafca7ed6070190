using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Learning;

/// <summary>A standard time that the shop's own logs speak for; nothing changes until somebody adopts it.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Now">Minutes a unit as the shop plans with them now.</param>
/// <param name="Proposed">Median over the jobs, in minutes a unit, to a hundredth.</param>
/// <param name="Jobs">Jobs that logged the operation.</param>
/// <param name="Least">Quickest of these jobs, in minutes a unit.</param>
/// <param name="Most">Slowest of these jobs, in minutes a unit.</param>
/// <param name="Usual">Whether the proposal lies in the range that shops report.</param>
public sealed record TimeProposal(Operation Operation, decimal Now, decimal Proposed, int Jobs, decimal Least, decimal Most, bool Usual);
