using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Timeline;

namespace Casewright.Model.Pricing;

/// <summary>Groups of an estimate.</summary>
public enum CostGroup
{
    /// <summary>Sheets and boards bought.</summary>
    Material,

    /// <summary>Pins, tenons, connectors, fixings.</summary>
    Hardware,

    /// <summary>Glue and small consumables.</summary>
    Consumables,

    /// <summary>Finish by the litre.</summary>
    Finish,

    /// <summary>Hours.</summary>
    Labour,

    /// <summary>Loads and days on the road.</summary>
    Delivery,
}

/// <summary>One line of an estimate.</summary>
/// <param name="Group">Its group.</param>
/// <param name="Name">What it is.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Unit">Unit of the quantity.</param>
/// <param name="Each">Price of one unit, in the job's currency.</param>
/// <param name="Amount">Quantity times price, rounded to the smallest coin.</param>
/// <param name="Why">How the quantity was computed.</param>
public sealed record EstimateLine(CostGroup Group, string Name, decimal Quantity, string Unit, decimal Each, decimal Amount, string Why);

/// <summary>Hours of one stage of the work.</summary>
/// <param name="Phase">The stage.</param>
/// <param name="Hours">Hands-on hours, every pair of hands counted.</param>
public sealed record PhaseHours(WorkPhase Phase, decimal Hours);

/// <summary>A payment.</summary>
/// <param name="Name">When it falls due, in words.</param>
/// <param name="Share">Its share of the price.</param>
/// <param name="Amount">The sum, tax included.</param>
public sealed record Payment(string Name, decimal Share, decimal Amount);

/// <summary>What a job costs and what is asked for it. All sums in the job's currency, rounded to its smallest coin.</summary>
public sealed record Estimate
{
    /// <summary>Currency, ISO 4217.</summary>
    public required string Currency { get; init; }

    /// <summary>Lines, by group.</summary>
    public required ValueList<EstimateLine> Lines { get; init; }

    /// <summary>Hours by stage.</summary>
    public required ValueList<PhaseHours> Hours { get; init; }

    /// <summary>Overhead on labour.</summary>
    public required decimal Overhead { get; init; }

    /// <summary>Mark-up on material, hardware, consumables and finish.</summary>
    public required decimal MarkUp { get; init; }

    /// <summary>For what goes wrong.</summary>
    public required decimal Contingency { get; init; }

    /// <summary>What rounding up added.</summary>
    public required decimal Rounding { get; init; }

    /// <summary>Price before tax.</summary>
    public required decimal Net { get; init; }

    /// <summary>Tax; zero when none is stated.</summary>
    public required decimal Tax { get; init; }

    /// <summary>Price with tax.</summary>
    public required decimal Gross { get; init; }

    /// <summary>Payments; they add up to <see cref="Gross"/>.</summary>
    public required ValueList<Payment> Payments { get; init; }

    /// <summary>What was noticed: prices nobody stated, hours that cost nothing, a price below cost.</summary>
    public ValueList<Finding> Findings { get; init; } = [];

    /// <summary>Sum of a group.</summary>
    public decimal Of(CostGroup group) => Lines.Where(l => l.Group == group).Sum(l => l.Amount);

    /// <summary>All lines and the overhead: what the job costs before mark-up and contingency.</summary>
    public decimal Cost => Lines.Sum(l => l.Amount) + Overhead;

    /// <summary>What is asked above the cost, as a share of the cost.</summary>
    public decimal MarkUpShare => Cost == 0 ? 0 : (Net - Cost) / Cost;

    /// <summary>What is asked above the cost, as a share of the price. A mark-up of 25 % is a margin of 20 %.</summary>
    public decimal MarginShare => Net == 0 ? 0 : (Net - Cost) / Net;

    /// <summary>All hours.</summary>
    public decimal TotalHours => Hours.Sum(h => h.Hours);
}
