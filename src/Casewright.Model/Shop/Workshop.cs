using Casewright.Model.Collections;
using Casewright.Model.Pricing;
using Casewright.Model.Timeline;

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

    /// <summary>Standard times.</summary>
    public StandardTimes Times { get; init; } = new();

    /// <summary>Working hours and days off.</summary>
    public WorkingHours Hours { get; init; } = new();

    /// <summary>People; ids unique. Without any there is no timetable.</summary>
    public ValueList<Person> People { get; init; } = [];

    /// <summary>Stations for glue-ups; ids unique. Clamped splices need one.</summary>
    public ValueList<Station> Stations { get; init; } = [];

    /// <summary>Clamps, one entry a kind; a kind that is left out was not counted, and limits nothing.</summary>
    public ValueList<ClampStock> Clamps { get; init; } = [];

    /// <summary>Floor places for cases from assembly to delivery; null when there is room for all.</summary>
    public int? FloorPlaces { get; init; }

    /// <summary>Finish; null for work that is not finished by the shop.</summary>
    public FinishSystem? Finish { get; init; }

    /// <summary>How the job is priced.</summary>
    public PriceRules Prices { get; init; } = new();
}
