using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Model.Schemes;

/// <summary>Ways of getting tall pieces out of short sheets.</summary>
public enum SchemeKind
{
    /// <summary>Every part is made to fit the usual sheet, by a higher base or a lower head.</summary>
    DesignedAway,

    /// <summary>Cases above one another, with a line all round where they meet.</summary>
    Stacked,

    /// <summary>Every part whole, from longer sheets where the usual ones are too short.</summary>
    LongSheets,

    /// <summary>Spliced from the usual sheets only.</summary>
    Spliced,

    /// <summary>Spliced or from longer sheets, part by part, whichever costs less.</summary>
    Mixed,
}

/// <summary>One priced way to build the job, planned in full.</summary>
public sealed record Scheme
{
    /// <summary>Which way.</summary>
    public required SchemeKind Kind { get; init; }

    /// <summary>The job changed that way; adopting the scheme is taking this job.</summary>
    public required Job Job { get; init; }

    /// <summary>What was changed of the job as stated, in words; empty when nothing was.</summary>
    public required ValueList<string> Changes { get; init; }

    /// <summary>Whether it was planned and no check stops it that does not stop the job as stated.</summary>
    public required bool Feasible { get; init; }

    /// <summary>Why it is not feasible; empty when it is.</summary>
    public required ValueList<string> Why { get; init; }

    /// <summary>What it comes to; null when there is no plan.</summary>
    public SchemeFigures? Figures { get; init; }
}

/// <summary>What a scheme comes to.</summary>
/// <param name="Sheets">Sheets used, on hand and bought.</param>
/// <param name="Splices">Joints end to end, covered butts of backs not counted.</param>
/// <param name="Material">Cost of the material bought, in the job's currency.</param>
/// <param name="Hours">Hands-on hours; 0 without an estimate.</param>
/// <param name="StationDays">Days of a glue-up station; null without a timetable.</param>
/// <param name="LeadDays">Working days until the last bought stock is there.</param>
/// <param name="LinesInView">Heights at which joints run across faces that show, and lines between stacked cases, run by run.</param>
/// <param name="Heaviest">Heaviest case, in kg.</param>
/// <param name="Longest">Longest part.</param>
/// <param name="Net">Price before tax; null without an estimate.</param>
/// <param name="Finish">Day on which it is finished; null without a timetable.</param>
public sealed record SchemeFigures(
    int Sheets,
    int Splices,
    decimal Material,
    decimal Hours,
    decimal? StationDays,
    int LeadDays,
    int LinesInView,
    double Heaviest,
    Length Longest,
    decimal? Net,
    DateOnly? Finish);
