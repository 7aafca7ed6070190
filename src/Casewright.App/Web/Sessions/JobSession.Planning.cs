using Casewright.Engine;
using Casewright.Model.Jobs;

namespace Casewright.App.Web.Sessions;

/// <content>Planning behind the page: one at a time, the newest edit always first.</content>
public sealed partial class JobSession
{
    private static JobState Planned(JobState state, PlanningResult result, long revision) => state with
    {
        Planning = false,
        Progress = null,
        Result = result,
        ResultRevision = revision,
        Plan = result.Plan ?? state.Plan,
        Change = result.Plan is { } plan && state.Plan is { } before ? TallyChange.Between(before, plan) : null,
    };

    private void StartPlanning()
    {
        _planning?.Cancel();
        _planning = null;
        if (_state.LayoutProblems.Count > 0)
        {
            _state = _state with { Planning = false, Progress = null };
            return;
        }

        if (_plans.Of(_state.Revision) is { } known)
        {
            _state = Planned(_state, known, _state.Revision);
            return;
        }

        var cancellation = new CancellationTokenSource();
        _planning = cancellation;
        _state = _state with { Planning = true, Progress = null };
        var (job, revision) = (_state.Job, _state.Revision);
        _ = Task.Run(() => PlanInBackground(job, revision, cancellation), CancellationToken.None);
    }

    private void PlanInBackground(Job job, long revision, CancellationTokenSource cancellation)
    {
        try
        {
            // A short wait lets a drag or a burst of typing pass without a plan for every step.
            if (cancellation.Token.WaitHandle.WaitOne(TimeSpan.FromMilliseconds(150)))
                return;
            var result = _planner(job, new Watcher(this, cancellation), cancellation.Token);
            Finish(revision, cancellation, result);
        }
        catch (OperationCanceledException)
        {
            // A newer edit took over.
        }
#pragma warning disable CA1031 // A defect of a stage must not leave the page waiting for ever; it is shown instead.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            Fail(cancellation, exception);
        }
        finally
        {
            cancellation.Dispose();
        }
    }

    private void Finish(long revision, CancellationTokenSource cancellation, PlanningResult result)
    {
        lock (_gate)
        {
            if (!ReferenceEquals(_planning, cancellation) || _state.Revision != revision)
                return;
            _planning = null;
            _plans.Keep(revision, result);
            _state = Planned(_state, result, revision);
        }

        Raise();
    }

    private void Fail(CancellationTokenSource cancellation, Exception exception)
    {
        lock (_gate)
        {
            if (!ReferenceEquals(_planning, cancellation))
                return;
            _planning = null;
            _state = _state with { Planning = false, Progress = null, Notice = "Planning failed, which is a defect of the program; nothing is lost. " + exception.Message };
        }

        Raise();
    }

    private sealed class Watcher(JobSession session, CancellationTokenSource cancellation) : IProgress<PlanningProgress>
    {
        public void Report(PlanningProgress value)
        {
            lock (session._gate)
            {
                if (!ReferenceEquals(session._planning, cancellation))
                    return;
                session._state = session._state with { Progress = value };
            }

            session.Raise();
        }
    }
}
