namespace Casewright.Store;

/// <summary>A job in the list of jobs.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Head">Number of the revision in force.</param>
/// <param name="Changed">When it last changed.</param>
public sealed record StoredJob(Guid Id, string Name, long Head, DateTimeOffset Changed);

/// <summary>The revision of a job in force.</summary>
/// <param name="JobId">Id of the job.</param>
/// <param name="Number">Number of the revision, from 1.</param>
/// <param name="Text">The job file.</param>
/// <param name="CanUndo">Whether there is a revision before it.</param>
/// <param name="CanRedo">Whether an undo can be taken back.</param>
public sealed record StoredRevision(Guid JobId, long Number, string Text, bool CanUndo, bool CanRedo);

/// <summary>A line of a job's history.</summary>
/// <param name="Number">Number of the revision, from 1.</param>
/// <param name="Parent">The revision it was made from; null for the first.</param>
/// <param name="Edit">What the edit did.</param>
/// <param name="Label">A name someone gave it; null for most.</param>
/// <param name="At">When it was written.</param>
/// <param name="InForce">Whether it is the one in force.</param>
public sealed record HistoryLine(long Number, long? Parent, string Edit, string? Label, DateTimeOffset At, bool InForce);

/// <summary>What came of a change.</summary>
/// <param name="Revision">The revision now in force.</param>
/// <param name="Conflict">Whether the change was refused because someone else had changed the job; then <paramref name="Revision"/> is theirs.</param>
public sealed record StoreOutcome(StoredRevision Revision, bool Conflict);
