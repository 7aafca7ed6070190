namespace Casewright.Store.Rows;

/// <summary>A job on record.</summary>
internal sealed class JobRow
{
    public required Guid Id { get; init; }

    public required string Name { get; set; }

    /// <summary>Number of the revision in force. Guarded as a concurrency token: a writer that saw another head is refused.</summary>
    public required long Head { get; set; }

    public required DateTimeOffset Created { get; init; }

    public required DateTimeOffset Changed { get; set; }

    /// <summary>When it was put away; null for a job in use. Nothing is ever erased.</summary>
    public DateTimeOffset? PutAway { get; set; }
}
