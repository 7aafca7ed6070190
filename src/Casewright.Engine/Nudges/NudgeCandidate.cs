using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;

namespace Casewright.Engine.Nudges;

/// <summary>A small change of a job, not yet planned.</summary>
/// <param name="Words">The change in words.</param>
/// <param name="Job">The job with it.</param>
internal sealed record NudgeCandidate(string Words, Job Job)
{
    /// <summary>One run changed, and nothing else.</summary>
    public static NudgeCandidate Of(Job job, Run run, string words, Run changed) =>
        new(words, job with { Runs = job.Runs.Select(r => r.Id == run.Id ? changed : r).ToValueList() });
}
