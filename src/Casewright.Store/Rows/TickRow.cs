namespace Casewright.Store.Rows;

/// <summary>Something ticked off in the shop. It belongs to the job, not to a revision: work done stays done when the plan changes.</summary>
internal sealed class TickRow
{
    public required Guid JobId { get; init; }

    /// <summary>What was done, such as piece:C3-L/a.</summary>
    public required string Item { get; init; }

    /// <summary>What it was when it was done, such as its sawn size; tells whether a later plan still means the same.</summary>
    public required string Was { get; set; }

    public required DateTimeOffset At { get; set; }
}
