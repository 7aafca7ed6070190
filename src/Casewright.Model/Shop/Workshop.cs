namespace Casewright.Model.Shop;

/// <summary>The shop that builds the job: its saw, its joints, its hour.</summary>
public sealed record Workshop
{
    /// <summary>Saw and breakdown.</summary>
    public required SawRules Saw { get; init; }

    /// <summary>Joining parts end to end.</summary>
    public required SpliceRules Splicing { get; init; }

    /// <summary>What an hour of work costs the job, not negative, in the job's currency.</summary>
    public required decimal HourlyRate { get; init; }
}
