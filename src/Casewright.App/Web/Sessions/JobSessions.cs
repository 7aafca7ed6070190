using System.Collections.Concurrent;
using Casewright.Engine;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Store;

namespace Casewright.App.Web.Sessions;

/// <summary>The jobs that are open, one session each, shared by every window.</summary>
/// <param name="store">The jobs on record.</param>
/// <param name="planner">What plans them; null for the planner of the program.</param>
/// <param name="clock">The clock; null for that of the machine.</param>
public sealed class JobSessions(JobStore store, JobPlanner? planner = null, TimeProvider? clock = null) : IDisposable
{
    private readonly TimeProvider _clock = clock ?? TimeProvider.System;
    private readonly JobPlanner _planner = planner ?? ((job, progress, cancellation) => Planner.Plan(job, progress, cancellation: cancellation));
    private readonly Lock _letting = new();
    private const string InchesSetting = "inches";
    private readonly ConcurrentDictionary<Guid, Lazy<JobSession?>> _open = new();

    /// <summary>The store behind them.</summary>
    public JobStore Store { get; } = store;

    /// <summary>How many jobs are held in memory.</summary>
    public int Held => _open.Count;

    /// <summary>The session of a job, opened when it is not yet.</summary>
    /// <returns>The session; null when there is no such job or its file cannot be read.</returns>
    public JobSession? Open(Guid id)
    {
        lock (_letting)
        {
            var session = _open.GetOrAdd(id, key => new(() => Make(key))).Value;
            if (session is null)
                _open.TryRemove(id, out _);
            else
                session.LastUsed = _clock.GetUtcNow();
            return session;
        }
    }

    /// <summary>Lets go of jobs that no window has shown and nothing was worked out for since <paramref name="idle"/>; every edit is in the store.</summary>
    /// <returns>How many were let go.</returns>
    public int LetGo(TimeSpan idle)
    {
        lock (_letting)
        {
            var before = _clock.GetUtcNow() - idle;
            var gone = _open.Where(o => o.Value is { IsValueCreated: true, Value: { InUse: false } session } && session.LastUsed <= before).ToList();
            foreach (var (id, session) in gone)
            {
                _open.TryRemove(id, out _);
                session.Value!.Dispose();
            }

            return gone.Count;
        }
    }

    /// <summary>Puts a job on record and opens it.</summary>
    public JobSession Add(Job job, string words)
    {
        ArgumentNullException.ThrowIfNull(job);
        var revision = Store.Create(job.Name, JobFile.Write(job), words);
        return Open(revision.JobId)!;
    }

    /// <summary>Sets how this shop reads inches on the pages, and shows it in every window.</summary>
    public void ShowDecimalInches(bool decimals)
    {
        if (Shown.DecimalInches == decimals)
            return;
        Shown.DecimalInches = decimals;
        Store.Floor.Set(InchesSetting, decimals ? "decimal" : "fractions");
        foreach (var session in _open.Values.Where(s => s.IsValueCreated))
            session.Value?.ShowAgain();
    }

    /// <summary>Takes over the settings that the shop made earlier.</summary>
    public void ReadSettings() => Shown.DecimalInches = Store.Floor.Setting(InchesSetting) == "decimal";

    /// <summary>Takes a job out of the list.</summary>
    public void PutAway(Guid id)
    {
        Store.PutAway(id);
        if (_open.TryRemove(id, out var session))
            session.Value?.Dispose();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var session in _open.Values.Where(s => s.IsValueCreated))
            session.Value?.Dispose();
    }

    private JobSession? Make(Guid id)
    {
        StoredRevision revision;
        try
        {
            revision = Store.Current(id);
        }
        catch (KeyNotFoundException)
        {
            return null;
        }

        return JobFile.Read(revision.Text) is { Succeeded: true } read ? new(Store, revision, read.Value, _planner, _clock) : null;
    }
}
