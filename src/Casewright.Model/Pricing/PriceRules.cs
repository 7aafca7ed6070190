using Casewright.Model.Collections;
using Casewright.Model.Timeline;

namespace Casewright.Model.Pricing;

/// <summary>Hardware that is counted from the plan.</summary>
public enum HardwareKind
{
    /// <summary>Shelf pin.</summary>
    ShelfPin,

    /// <summary>Loose tenon.</summary>
    LooseTenon,

    /// <summary>Draw connector.</summary>
    DrawConnector,

    /// <summary>Fixing of a case into the wall.</summary>
    WallFixing,

    /// <summary>Screw or bolt that joins a case to its neighbour.</summary>
    JoiningScrew,

    /// <summary>Concealed hinge with its plate.</summary>
    Hinge,

    /// <summary>Pair of drawer slides.</summary>
    SlidePair,

    /// <summary>Pull of a door or drawer.</summary>
    Pull,
}

/// <summary>Price of one piece of hardware.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Each">Price of one, not negative, in the job's currency.</param>
public sealed record HardwarePrice(HardwareKind Kind, decimal Each);

/// <summary>An hourly rate of one stage of the work, where it differs from the shop's.</summary>
/// <param name="Phase">The stage.</param>
/// <param name="Rate">Price of an hour, not negative, in the job's currency.</param>
public sealed record PhaseRate(WorkPhase Phase, decimal Rate);

/// <summary>A part of the price that falls due at one moment.</summary>
/// <param name="Name">When, in words, such as "with the order".</param>
/// <param name="Share">Share of the price, 0 to 1. The last stage takes what is left.</param>
public sealed record PaymentStage(string Name, decimal Share);

/// <summary>How the shop prices a job. Shares are fractions of 1; defaults are common practice, no source.</summary>
public sealed record PriceRules
{
    /// <summary>Added to bought material, hardware and consumables as a share of their cost (usual 0.20 to 0.35).</summary>
    public decimal MarkUp { get; init; } = 0.25m;

    /// <summary>Overhead as a share of labour, where it is not inside the hourly rate; not negative.</summary>
    public decimal Overhead { get; init; }

    /// <summary>Small consumables (abrasives, screws, tape) as a share of material (usual 0.03 to 0.05); not negative.</summary>
    public decimal Consumables { get; init; } = 0.04m;

    /// <summary>For what goes wrong, as a share of all costs (usual 0.05 to 0.10, 0.15 for a first of its kind); not negative.</summary>
    public decimal Contingency { get; init; } = 0.05m;

    /// <summary>Tax on the price as a share; null prices without tax and says so.</summary>
    public decimal? Tax { get; init; }

    /// <summary>The price before tax is rounded up to a whole number of these, in the job's currency; 0 leaves it to the smallest coin.</summary>
    public decimal RoundUpTo { get; init; }

    /// <summary>Price of a litre of glue, not negative, in the job's currency; null when nobody said.</summary>
    public decimal? GlueLitre { get; init; }

    /// <summary>Hardware prices, one entry a kind.</summary>
    public ValueList<HardwarePrice> Hardware { get; init; } = [];

    /// <summary>Rates of single stages; the shop's rate holds for the others.</summary>
    public ValueList<PhaseRate> Rates { get; init; } = [];

    /// <summary>Price of one load to the site, not negative, in the job's currency.</summary>
    public decimal DeliveryLoad { get; init; }

    /// <summary>Price of getting to the site for one day, not negative, in the job's currency.</summary>
    public decimal SiteDay { get; init; }

    /// <summary>Stages of payment; shares add up to 1.</summary>
    public ValueList<PaymentStage> Payments { get; init; } = [new("with the order", 0.45m), new("before delivery", 0.40m), new("at completion", 0.15m)];

    /// <summary>Days for which the quote holds; positive.</summary>
    public int ValidDays { get; init; } = 30;
}
