using Casewright.Model.Collections;
using Casewright.Model.Jobs;

namespace Casewright.Model.Schemes;

/// <summary>A small change of the job, planned in full beside the job as stated. Savings are positive, costs negative.</summary>
public sealed record Nudge
{
    /// <summary>The change in words, such as "base of Left run 40 mm higher".</summary>
    public required string Change { get; init; }

    /// <summary>The job with the change; taking the nudge is taking this job.</summary>
    public required Job Job { get; init; }

    /// <summary>Sheets saved.</summary>
    public required int Sheets { get; init; }

    /// <summary>Joints saved.</summary>
    public required int Splices { get; init; }

    /// <summary>Hands-on hours saved; 0 without an estimate.</summary>
    public required decimal Hours { get; init; }

    /// <summary>Working days saved; 0 without a timetable.</summary>
    public required int Days { get; init; }

    /// <summary>Price saved before tax, in the job's currency: of the estimate, or of the cutting without one.</summary>
    public required decimal Money { get; init; }

    /// <summary>What it costs in looks, storage and sag, in words.</summary>
    public required ValueList<string> Costs { get; init; }

    /// <summary>Stops of the job as stated that it does away with, in words; it may then cost money.</summary>
    public ValueList<string> Mends { get; init; } = [];
}
