using System.Data.Common;
using System.Runtime.ExceptionServices;
using Casewright.Model.Collections;
using Casewright.Store.Rows;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Casewright.Store;

/// <summary>
/// Jobs with their whole history. Every edit is a new revision, written through to the disk before the call returns;
/// undo and redo move the head and erase nothing. A change names the revision it was made from and is refused when the
/// job has moved on, so that two people never overwrite each other in silence.
/// </summary>
/// <remarks>Safe for use from several threads and processes: each call is one transaction.</remarks>
public sealed class JobStore
{
    private readonly DbContextOptions<JobContext> _options;
    private readonly TimeProvider _clock;

    private JobStore(DbContextOptions<JobContext> options, TimeProvider clock)
    {
        _options = options;
        _clock = clock;
        Floor = new(Open, clock);
    }

    /// <summary>What the shop has done, and its settings.</summary>
    public ShopFloor Floor { get; }

    /// <summary>Opens the store in a SQLite file, made when absent.</summary>
    public static JobStore OpenSqlite(string path, TimeProvider clock)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var connection = new SqliteConnectionStringBuilder { DataSource = path, DefaultTimeout = 30 }.ToString();
        var store = new JobStore(new DbContextOptionsBuilder<JobContext>().UseSqlite(connection).Options, clock);
        using var context = store.Open();
        context.Database.EnsureCreated();
        AddLaterTables(context);
        // Write-ahead log with full synchronisation: what a call has written survives a kill and a power cut.
        context.Database.ExecuteSqlRaw("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
        return store;
    }

    /// <summary>Opens the store in a PostgreSQL database; its tables are made when absent.</summary>
    /// <param name="connection">Connection string in the form of Npgsql, as in "Host=shop;Database=casewright;Username=bench".</param>
    /// <param name="clock">Tells the time of edits.</param>
    /// <exception cref="DbException">The database cannot be reached.</exception>
    public static JobStore OpenPostgres(string connection, TimeProvider clock)
    {
        var store = new JobStore(new DbContextOptionsBuilder<JobContext>().UseNpgsql(connection).Options, clock);
        using var context = store.Open();
        try
        {
            context.Database.EnsureCreated();
        }
        catch (InvalidOperationException exception) when (exception.InnerException is DbException cause)
        {
            // The provider wraps a failed connection in advice for programmers.
            ExceptionDispatchInfo.Throw(cause);
        }

        return store;
    }

    /// <summary>Jobs in use, the latest changed first.</summary>
    public ValueList<StoredJob> Jobs()
    {
        using var context = Open();
        return context.Jobs.AsNoTracking().Where(j => j.PutAway == null).OrderByDescending(j => j.Changed).ThenBy(j => j.Id)
            .Select(j => new StoredJob(j.Id, j.Name, j.Head, j.Changed)).ToValueList();
    }

    /// <summary>Puts a new job on record.</summary>
    public StoredRevision Create(string name, string text, string edit)
    {
        var now = _clock.GetUtcNow();
        var job = new JobRow { Id = Guid.CreateVersion7(now), Name = name, Head = 1, Created = now, Changed = now };
        var first = new RevisionRow { JobId = job.Id, Number = 1, Edit = edit, At = now, Text = text };
        using var context = Open();
        context.Add(job);
        context.Add(first);
        context.SaveChanges();
        return Shown(first);
    }

    /// <summary>The revision in force.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public StoredRevision Current(Guid jobId)
    {
        using var context = Open();
        return Shown(Head(context, JobOf(context, jobId)));
    }

    /// <summary>Writes an edit made from revision <paramref name="madeFrom"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public StoreOutcome Save(Guid jobId, long madeFrom, string name, string text, string edit) => Change(jobId, madeFrom, (context, job, head) =>
    {
        if (string.Equals(head.Text, text, StringComparison.Ordinal))
            return head;
        var next = new RevisionRow
        {
            JobId = jobId,
            Number = context.Revisions.Where(r => r.JobId == jobId).Max(r => r.Number) + 1,
            Parent = head.Number,
            Edit = edit,
            At = _clock.GetUtcNow(),
            Text = text,
        };
        context.Add(next);
        head.Forward = next.Number;
        job.Name = name;
        return next;
    });

    /// <summary>Goes back to the revision before; does nothing at the first.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public StoreOutcome Undo(Guid jobId, long madeFrom) => Change(jobId, madeFrom, (context, _, head) =>
    {
        if (head.Parent is not { } parent)
            return head;
        var before = Revision(context, jobId, parent);
        before.Forward = head.Number;
        return before;
    });

    /// <summary>Takes the last undo back; does nothing when there is none.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public StoreOutcome Redo(Guid jobId, long madeFrom) => Change(
        jobId, madeFrom, (context, _, head) => head.Forward is { } forward ? Revision(context, jobId, forward) : head);

    /// <summary>Brings an earlier state back as a new revision, so that this too can be undone.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job or revision.</exception>
    public StoreOutcome Restore(Guid jobId, long madeFrom, long number)
    {
        string text, name;
        using (var context = Open())
        {
            name = JobOf(context, jobId).Name;
            text = Revision(context, jobId, number).Text;
        }

        return Save(jobId, madeFrom, name, text, $"back to revision {number}");
    }

    /// <summary>The history, latest first.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public ValueList<HistoryLine> History(Guid jobId)
    {
        using var context = Open();
        var head = JobOf(context, jobId).Head;
        return context.Revisions.AsNoTracking().Where(r => r.JobId == jobId).OrderByDescending(r => r.Number)
            .Select(r => new HistoryLine(r.Number, r.Parent, r.Edit, r.Label, r.At, r.Number == head)).ToValueList();
    }

    /// <summary>Gives a revision a name; an empty one takes it away.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job or revision.</exception>
    public void Label(Guid jobId, long number, string label)
    {
        using var context = Open();
        Revision(context, jobId, number).Label = string.IsNullOrWhiteSpace(label) ? null : label.Trim();
        context.SaveChanges();
    }

    /// <summary>Takes a job out of the list; its history stays on record.</summary>
    /// <exception cref="KeyNotFoundException">There is no such job.</exception>
    public void PutAway(Guid jobId)
    {
        using var context = Open();
        JobOf(context, jobId).PutAway = _clock.GetUtcNow();
        context.SaveChanges();
    }

    /// <summary>A store made before these tables were has none of them, and making it anew would make nothing.</summary>
    private static void AddLaterTables(JobContext context) => context.Database.ExecuteSqlRaw(
        """
        CREATE TABLE IF NOT EXISTS "Ticks" ("JobId" TEXT NOT NULL, "Item" TEXT NOT NULL, "Was" TEXT NOT NULL, "At" INTEGER NOT NULL, PRIMARY KEY ("JobId", "Item"));
        CREATE TABLE IF NOT EXISTS "Settings" ("Name" TEXT NOT NULL PRIMARY KEY, "Value" TEXT NOT NULL);
        """);

    private static StoredRevision Shown(RevisionRow row) => new(row.JobId, row.Number, row.Text, row.Parent is not null, row.Forward is not null);

    private static JobRow JobOf(JobContext context, Guid jobId) =>
        context.Jobs.FirstOrDefault(j => j.Id == jobId) ?? throw new KeyNotFoundException($"There is no job {jobId}.");

    private static RevisionRow Head(JobContext context, JobRow job) => Revision(context, job.Id, job.Head);

    private static RevisionRow Revision(JobContext context, Guid jobId, long number) =>
        context.Revisions.FirstOrDefault(r => r.JobId == jobId && r.Number == number)
        ?? throw new KeyNotFoundException($"Job {jobId} has no revision {number}.");

    private StoreOutcome Change(Guid jobId, long madeFrom, Func<JobContext, JobRow, RevisionRow, RevisionRow> change)
    {
        using var context = Open();
        var job = JobOf(context, jobId);
        var head = Head(context, job);
        if (job.Head != madeFrom)
            return new(Shown(head), Conflict: true);
        var next = change(context, job, head);
        if (next.Number == head.Number)
            return new(Shown(head), Conflict: false);
        job.Head = next.Number;
        job.Changed = _clock.GetUtcNow();
        try
        {
            context.SaveChanges();
        }
        catch (DbUpdateException)
        {
            // Somebody else moved the head, or took the revision number, between our reading and our writing.
            return new(Current(jobId), Conflict: true);
        }

        return new(Shown(next), Conflict: false);
    }

    private JobContext Open() => new(_options);
}
