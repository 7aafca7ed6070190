using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>What was really done of a task.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="Start">When it was begun, by the clock of the shop.</param>
/// <param name="Finish">When it was done; null while it is being done.</param>
public sealed record WorkRecord(string Task, DateTime Start, DateTime? Finish)
{
    /// <summary>Minutes that it took, every pair of hands counted; null when nobody logged them.</summary>
    public decimal? HandsOn { get; init; }
}

/// <summary>How far the work has come. What is left is scheduled from here.</summary>
/// <param name="Now">The moment by the clock of the shop; nothing new begins before it.</param>
/// <param name="Records">Tasks begun or done.</param>
public sealed record ShopProgress(DateTime Now, ValueList<WorkRecord> Records);
