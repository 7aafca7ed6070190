using Casewright.Model.Collections;
using Casewright.Store.Rows;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Casewright.Store;

/// <summary>Something ticked off in the shop.</summary>
/// <param name="Item">What was done, such as piece:C3-L/a.</param>
/// <param name="Was">What it was when it was done, such as its sawn size.</param>
/// <param name="At">When it was ticked.</param>
public sealed record StoredTick(string Item, string Was, DateTimeOffset At);

/// <summary>
/// What the shop has done of its jobs, and settings that hold for all of them. Each call is one transaction, written through to
/// the disk before it returns; of two people who tick the same thing both are right.
/// </summary>
public sealed class ShopFloor
{
    // SQLITE_CONSTRAINT of its list of result codes.
    private const int BrokenConstraint = 19;

    private readonly Func<JobContext> _open;
    private readonly TimeProvider _clock;

    internal ShopFloor(Func<JobContext> open, TimeProvider clock)
    {
        _open = open;
        _clock = clock;
    }

    /// <summary>Everything ticked off of a job, by item.</summary>
    public ValueList<StoredTick> Ticks(Guid jobId)
    {
        using var context = _open();
        return context.Ticks.AsNoTracking().Where(t => t.JobId == jobId).OrderBy(t => t.Item).Select(t => new StoredTick(t.Item, t.Was, t.At)).ToValueList();
    }

    /// <summary>Ticks something off, or renews the tick of it.</summary>
    public void Tick(Guid jobId, string item, string was)
    {
        ArgumentException.ThrowIfNullOrEmpty(item);
        ArgumentNullException.ThrowIfNull(was);
        using var context = _open();
        var now = _clock.GetUtcNow();
        if (context.Ticks.FirstOrDefault(t => t.JobId == jobId && t.Item == item) is { } row)
            (row.Was, row.At) = (was, now);
        else
            context.Add(new TickRow { JobId = jobId, Item = item, Was = was, At = now });
        SaveUnlessThere(context);
    }

    /// <summary>Takes a tick back; does nothing when there is none.</summary>
    public void Untick(Guid jobId, string item)
    {
        using var context = _open();
        context.Ticks.Where(t => t.JobId == jobId && t.Item == item).ExecuteDelete();
    }

    /// <summary>A setting of the shop; null when it was never made.</summary>
    public string? Setting(string name)
    {
        using var context = _open();
        return context.Settings.AsNoTracking().FirstOrDefault(s => s.Name == name)?.Value;
    }

    /// <summary>Makes a setting of the shop.</summary>
    public void Set(string name, string value)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        ArgumentNullException.ThrowIfNull(value);
        using var context = _open();
        if (context.Settings.FirstOrDefault(s => s.Name == name) is { } row)
            row.Value = value;
        else
            context.Add(new SettingRow { Name = name, Value = value });
        SaveUnlessThere(context);
    }

    private static void SaveUnlessThere(JobContext context)
    {
        try
        {
            context.SaveChanges();
        }
        catch (DbUpdateException exception) when (exception.InnerException
            is SqliteException { SqliteErrorCode: BrokenConstraint } or PostgresException { SqlState: PostgresErrorCodes.UniqueViolation })
        {
            // Somebody else wrote the same row between our reading and our writing; theirs says the same.
        }
    }
}
