using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Stock;
using Casewright.Model.Timeline;

namespace Casewright.Model.Jobs;

/// <summary>One commission: a site, a design, the stock and the shop that will build it.</summary>
public sealed record Job
{
    /// <summary>Name of the job.</summary>
    public required string Name { get; init; }

    /// <summary>Client; may be empty.</summary>
    public string Client { get; init; } = "";

    /// <summary>Date printed on the papers.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Revision printed on the papers; at least 1.</summary>
    public int Revision { get; init; } = 1;

    /// <summary>Revision that the client signed; null before approval.</summary>
    public int? ApprovedRevision { get; init; }

    /// <summary>Date by which stock must be in the shop; null when nobody said.</summary>
    public DateOnly? StockNeededBy { get; init; }

    /// <summary>Unit of bare numbers and of the papers.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Currency of all prices, ISO 4217.</summary>
    public required string Currency { get; init; }

    /// <summary>What is known of the building.</summary>
    public SiteFacts Site { get; init; } = new();

    /// <summary>Walls of the room; ids unique.</summary>
    public required ValueList<Wall> Walls { get; init; }

    /// <summary>Runs of casework; ids unique.</summary>
    public required ValueList<Run> Runs { get; init; }

    /// <summary>Materials, sheets and boards.</summary>
    public required StockRoom Stock { get; init; }

    /// <summary>The shop.</summary>
    public required Workshop Shop { get; init; }

    /// <summary>First day of work, on which stock is ordered too; null takes <see cref="Date"/>. Without either there is no timetable.</summary>
    public DateOnly? StartOn { get; init; }

    /// <summary>Last day on which the installation may be finished; null without a promise.</summary>
    public DateOnly? FinishBy { get; init; }

    /// <summary>How far the work has come: what is done stays, what is left is scheduled from now. Null before it begins.</summary>
    public ShopProgress? Progress { get; init; }

    /// <summary>What the saw has already made: it stays as it is, and the rest is planned around it. Null before the first sheet is cut.</summary>
    public SawnWork? Sawn { get; init; }
}
