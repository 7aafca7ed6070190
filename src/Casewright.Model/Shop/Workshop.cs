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

    /// <summary>Glue of splices and cases.</summary>
    public GlueFacts Glue { get; init; } = new();

    /// <summary>Temperature of the shop while glue cures, in °C; null when nobody said.</summary>
    public double? Temperature { get; init; }

    /// <summary>Limits that the checks hold a plan to.</summary>
    public CheckLimits Checks { get; init; } = new();
}
