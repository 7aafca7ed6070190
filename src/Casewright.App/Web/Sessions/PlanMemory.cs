using Casewright.Engine;

namespace Casewright.App.Web.Sessions;

/// <summary>Plans a job.</summary>
/// <param name="job">The job.</param>
/// <param name="progress">Told of every stage.</param>
/// <param name="cancellation">Stops it.</param>
/// <exception cref="OperationCanceledException">It was stopped.</exception>
public delegate PlanningResult JobPlanner(Model.Jobs.Job job, IProgress<PlanningProgress> progress, CancellationToken cancellation);

/// <summary>The plans of the last few revisions of a job, so that undo and redo show theirs at once. A revision never changes, so neither does its plan.</summary>
public sealed class PlanMemory
{
    private const int Most = 6;
    private readonly List<(long Revision, PlanningResult Result)> _kept = [];

    /// <summary>The plan of a revision; null when it is not kept.</summary>
    public PlanningResult? Of(long revision) => _kept.Find(k => k.Revision == revision).Result;

    /// <summary>Keeps a plan, and lets the oldest go.</summary>
    public void Keep(long revision, PlanningResult result)
    {
        _kept.RemoveAll(k => k.Revision == revision);
        _kept.Add((revision, result));
        if (_kept.Count > Most)
            _kept.RemoveAt(0);
    }
}
