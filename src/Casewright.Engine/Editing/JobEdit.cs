using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;

namespace Casewright.Engine.Editing;

/// <summary>A change of a job, with the words that the history keeps for it.</summary>
/// <param name="Job">The job after the change.</param>
/// <param name="Words">What was changed, such as "base height 110 mm".</param>
public sealed record JobEdit(Job Job, string Words);

/// <summary>Replacing one run of a job.</summary>
internal static class JobRuns
{
    /// <summary>The run with this id.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Run Find(Job job, string runId) =>
        job.Runs.FirstOrDefault(r => r.Id == runId) ?? throw new KeyNotFoundException($"There is no run '{runId}'.");

    /// <summary>The job with the run replaced by what <paramref name="change"/> makes of it.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job Change(Job job, string runId, Func<Run, Run> change)
    {
        var found = Find(job, runId);
        return job with { Runs = job.Runs.Select(r => ReferenceEquals(r, found) ? change(r) : r).ToValueList() };
    }
}
