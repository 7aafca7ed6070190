using System.Collections.Concurrent;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Store;

namespace Casewright.App.Web.Sessions;

/// <summary>The jobs that are open, one session each, shared by every window.</summary>
public sealed class JobSessions(JobStore store) : IDisposable
{
    private readonly ConcurrentDictionary<Guid, Lazy<JobSession?>> _open = new();

    /// <summary>The store behind them.</summary>
    public JobStore Store { get; } = store;

    /// <summary>The session of a job, opened when it is not yet.</summary>
    /// <returns>The session; null when there is no such job or its file cannot be read.</returns>
    public JobSession? Open(Guid id)
    {
        var session = _open.GetOrAdd(id, key => new(() => Make(key))).Value;
        if (session is null)
            _open.TryRemove(id, out _);
        return session;
    }

    /// <summary>Puts a job on record and opens it.</summary>
    public JobSession Add(Job job, string words)
    {
        ArgumentNullException.ThrowIfNull(job);
        var revision = Store.Create(job.Name, JobFile.Write(job), words);
        return Open(revision.JobId)!;
    }

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

        return JobFile.Read(revision.Text) is { Succeeded: true } read ? new(Store, revision, read.Value) : null;
    }
}
