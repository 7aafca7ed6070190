using System.Collections.Immutable;
using Casewright.App.Web.Making;
using Casewright.Engine.Layout;
using Casewright.Engine.Nudges;
using Casewright.Engine.Schemes;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Store;

namespace Casewright.App.Web.Sessions;

/// <summary>
/// A job that is open in one or more windows. An edit is laid out and saved before the call returns; the plan follows in
/// the background, and a plan of an older revision never replaces a newer one.
/// </summary>
public sealed partial class JobSession : IDisposable
{
    private readonly JobStore _store;
    private readonly JobPlanner _planner;
    private readonly PlanMemory _plans = new();
    private readonly Lock _gate = new();
    private readonly TimeProvider _clock;
    private EventHandler? _changed;
    private CancellationTokenSource? _planning;
    private JobState _state;

    internal JobSession(JobStore store, StoredRevision revision, Job job, JobPlanner planner, TimeProvider clock)
    {
        _store = store;
        _planner = planner;
        _clock = clock;
        LastUsed = clock.GetUtcNow();
        Id = revision.JobId;
        _state = Laid(new JobState
        {
            Job = job,
            Revision = revision.Number,
            CanUndo = revision.CanUndo,
            CanRedo = revision.CanRedo,
            Ticks = store.Floor.Ticks(Id).ToImmutableDictionary(t => t.Item, StringComparer.Ordinal),
        });
        StartPlanning();
    }

    /// <summary>Raised, on any thread, after the state has changed. Whoever listens is a window that shows the job.</summary>
    public event EventHandler? Changed
    {
        add
        {
            lock (_gate)
                _changed += value;
        }

        remove
        {
            lock (_gate)
            {
                _changed -= value;
                LastUsed = _clock.GetUtcNow();
            }
        }
    }

    /// <summary>When it was last asked for, or its last window went.</summary>
    internal DateTimeOffset LastUsed { get; set; }

    /// <summary>Whether a window shows the job or anything is being worked out for it.</summary>
    internal bool InUse
    {
        get
        {
            lock (_gate)
                return _changed is not null || _planning is not null || Schemes.Working || Nudges.Working;
        }
    }

    /// <summary>Id of the job in the store.</summary>
    public Guid Id { get; }

    /// <summary>The comparison of ways to build the job, when somebody asked for it.</summary>
    public SideWork<SchemeList> Schemes { get; } = new();

    /// <summary>Sheet layouts of equal cost, when somebody asked for them.</summary>
    public SideWork<ValueList<LayoutChoice>> Layouts { get; } = new();

    /// <summary>The search for small changes, when somebody asked for it.</summary>
    public SideWork<NudgeList> Nudges { get; } = new();

    /// <summary>The state at this moment.</summary>
    public JobState State
    {
        get
        {
            lock (_gate)
                return _state;
        }
    }

    /// <summary>Edits the job.</summary>
    /// <param name="words">What the edit does, for the history.</param>
    /// <param name="change">The edit; it may use the last good layout, and may refuse by throwing <see cref="ArgumentException"/> or <see cref="OverflowException"/>.</param>
    public void Edit(string words, Func<Job, Casework, Job> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        lock (_gate)
        {
            Job next;
            try
            {
                next = change(_state.Job, _state.Casework ?? new([], [], []));
            }
            catch (Exception exception) when (exception is ArgumentException or OverflowException or KeyNotFoundException)
            {
                _state = _state with { Notice = exception.Message };
                next = _state.Job;
            }

            if (!next.Equals(_state.Job))
                next = WithSawn(next);
            if (!next.Equals(_state.Job))
                Save(next, words);
        }

        Raise();
    }

    /// <summary>Replaces the whole job, as an import does.</summary>
    public void Replace(string words, Job job) => Edit(words, (_, _) => job);

    /// <summary>Undoes the last edit.</summary>
    public void Undo() => Move(() => _store.Undo(Id, _state.Revision));

    /// <summary>Takes the last undo back.</summary>
    public void Redo() => Move(() => _store.Redo(Id, _state.Revision));

    /// <summary>Brings an earlier revision back.</summary>
    public void Restore(long number) => Move(() => _store.Restore(Id, _state.Revision, number));

    /// <summary>Stops the planning at work; the last plan stays on show.</summary>
    public void CancelPlanning()
    {
        lock (_gate)
        {
            _planning?.Cancel();
            _planning = null;
            _state = _state with { Planning = false, Progress = null };
        }

        Raise();
    }

    /// <summary>Has every window show the state again, after something outside it changed.</summary>
    internal void ShowAgain() => Raise();

    /// <summary>Plans the present revision anew.</summary>
    public void PlanAgain()
    {
        lock (_gate)
            StartPlanning();
        Raise();
    }

    /// <summary>Ticks something off in the shop, or takes the tick back.</summary>
    /// <param name="item">What, such as piece:C3-L/a.</param>
    /// <param name="was">What it is by the plan at hand, such as its sawn size.</param>
    /// <param name="done">Whether it is done.</param>
    public void Tick(string item, string was, bool done) => Tick([(item, was)], done);

    /// <summary>Ticks several things off at once, or takes their ticks back.</summary>
    public void Tick(IReadOnlyList<(string Item, string Was)> items, bool done)
    {
        ArgumentNullException.ThrowIfNull(items);
        lock (_gate)
        {
            foreach (var (item, was) in items)
            {
                if (done)
                    _store.Floor.Tick(Id, item, was);
                else
                    _store.Floor.Untick(Id, item);
            }

            _state = _state with { Ticks = _store.Floor.Ticks(Id).ToImmutableDictionary(t => t.Item, StringComparer.Ordinal) };
        }

        Raise();
    }

    /// <summary>
    /// Records what is ticked off at the saw and plans the rest from there: sawn sheets stay as they are, good pieces keep their parts,
    /// and what is lost is made again. Does nothing while the plan on show is not that of the job.
    /// </summary>
    /// <param name="lost">Ids of pieces that are spoiled or gone; their ticks are taken back, since they are to be sawn again.</param>
    public void PlanFromHere(IReadOnlyCollection<string> lost)
    {
        ArgumentNullException.ThrowIfNull(lost);
        var state = State;
        if (!state.PlanIsCurrent || state.Plan is not { } plan)
            return;
        var record = SawnSoFar.Record(plan, state.Ticks, lost);
        if (!record.Succeeded)
            return;
        Edit(lost.Count == 0 ? "plan the rest from what is sawn" : $"make again {string.Join(", ", lost)}", (job, _) => job with { Sawn = record.Value.Sawn });
        if (lost.Count > 0)
            Tick([.. lost.Select(id => ($"piece:{id}", ""))], done: false);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            _planning?.Cancel();
            _planning = null;
        }

        Schemes.Stop();
        Nudges.Stop();
        Layouts.Stop();
    }

    private static JobState Laid(JobState state)
    {
        var layout = LayoutStage.Lay(state.Job);
        return state with { Casework = layout.Value ?? state.Casework, LayoutProblems = layout.Problems };
    }

    /// <summary>An edit made while the saw is at work takes a record of what is ticked off with it, so that the new plan keeps it.</summary>
    private Job WithSawn(Job next)
    {
        if (!_state.PlanIsCurrent || _state.Plan is not { } plan || !Equals(next.Sawn, _state.Job.Sawn) || !SawnSoFar.HasMore(plan, _state.Ticks))
            return next;
        return SawnSoFar.Record(plan, _state.Ticks, []) is { Succeeded: true } record ? next with { Sawn = record.Value.Sawn } : next;
    }

    private void Move(Func<StoreOutcome> move)
    {
        lock (_gate)
            Take(move(), job: null);
        Raise();
    }

    /// <summary>Saves a job if its file can hold it: one that could not be read again would be lost with the program's next start.</summary>
    private void Save(Job next, string words)
    {
        var text = JobFile.Write(next);
        if (JobFile.Read(text) is { Succeeded: false, Problems: [var problem, ..] })
            _state = _state with { Notice = "Not taken. " + (problem with { Line = null }) };
        else
            Take(_store.Save(Id, _state.Revision, next.Name, text, words), next);
    }

    /// <summary>Takes what the store now holds; <paramref name="job"/> is what was meant to be saved, null when the store's text is to be read.</summary>
    private void Take(StoreOutcome outcome, Job? job)
    {
        var revision = outcome.Revision;
        if (revision.Number == _state.Revision)
            return;
        if (outcome.Conflict || job is null)
        {
            var read = JobFile.Read(revision.Text);
            if (!read.Succeeded)
            {
                _state = _state with { Notice = "The stored job could not be read: " + read.Problems[0] };
                return;
            }

            job = read.Value;
        }

        _state = Laid(_state with
        {
            Job = job,
            Revision = revision.Number,
            CanUndo = revision.CanUndo,
            CanRedo = revision.CanRedo,
            Notice = outcome.Conflict ? "Somebody else changed this job meanwhile. Their state is shown; your last edit was not applied." : null,
        });
        StartPlanning();
    }

    private void Raise()
    {
        EventHandler? told;
        lock (_gate)
            told = _changed;
        told?.Invoke(this, EventArgs.Empty);
    }
}
