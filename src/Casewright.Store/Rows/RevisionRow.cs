namespace Casewright.Store.Rows;

/// <summary>One state of a job, kept for good.</summary>
internal sealed class RevisionRow
{
    public required Guid JobId { get; init; }

    /// <summary>From 1, in order of writing.</summary>
    public required long Number { get; init; }

    /// <summary>The revision it was made from; null for the first.</summary>
    public long? Parent { get; init; }

    /// <summary>The child that redo goes to: the one last left by undo, or last written. Null at a tip.</summary>
    public long? Forward { get; set; }

    /// <summary>What the edit did, in a few words.</summary>
    public required string Edit { get; init; }

    /// <summary>A name someone gave this state; null for most.</summary>
    public string? Label { get; set; }

    public required DateTimeOffset At { get; init; }

    /// <summary>The job file.</summary>
    public required string Text { get; init; }
}
