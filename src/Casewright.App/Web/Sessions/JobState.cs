using System.Collections.Immutable;
using Casewright.Engine;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Store;

namespace Casewright.App.Web.Sessions;

/// <summary>Everything a page shows of a job, at one moment.</summary>
public sealed record JobState
{
    /// <summary>The job as last edited.</summary>
    public required Job Job { get; init; }

    /// <summary>Number of the revision in the store.</summary>
    public required long Revision { get; init; }

    /// <summary>Whether there is an edit to undo.</summary>
    public bool CanUndo { get; init; }

    /// <summary>Whether there is an undo to take back.</summary>
    public bool CanRedo { get; init; }

    /// <summary>The layout of the job, or of the last edit that could be laid out; null when none ever could.</summary>
    public Casework? Casework { get; init; }

    /// <summary>Why the present job cannot be laid out; empty when it can.</summary>
    public ValueList<Problem> LayoutProblems { get; init; } = [];

    /// <summary>The last planning that ended.</summary>
    public PlanningResult? Result { get; init; }

    /// <summary>The last plan there was; still shown, greyed, while a newer one is made.</summary>
    public Plan? Plan { get; init; }

    /// <summary>The revision that <see cref="Result"/> belongs to.</summary>
    public long ResultRevision { get; init; }

    /// <summary>How far the planning at work has come; null when none is.</summary>
    public PlanningProgress? Progress { get; init; }

    /// <summary>Whether a planning is at work.</summary>
    public bool Planning { get; init; }

    /// <summary>What the last change did to the job, for the foot line.</summary>
    public TallyChange? Change { get; init; }

    /// <summary>A message for whoever made the last edit; null when there is none.</summary>
    public string? Notice { get; init; }

    /// <summary>What is ticked off in the shop, by item.</summary>
    public ImmutableDictionary<string, StoredTick> Ticks { get; init; } = ImmutableDictionary<string, StoredTick>.Empty;

    /// <summary>The state in a few words, for those who hear the page.</summary>
    public string Words => LayoutProblems.Count > 0 ? "This cannot be built as it stands." : Planning ? "Planning." : PlanIsCurrent ? "Planned." : "Not planned.";

    /// <summary>Whether the plan shown is that of the present revision.</summary>
    public bool PlanIsCurrent => Plan is not null && Result?.Plan is not null && ResultRevision == Revision;
}
