using Casewright.Model.Measure;

namespace Casewright.Model.Stock;

/// <summary>A length in which boards of a material's section are sold or on hand.</summary>
public sealed record BoardStock
{
    /// <summary>Id, unique among all stock of the job.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the material; it must have a board width.</summary>
    public required string Material { get; init; }

    /// <summary>Length of one board; positive.</summary>
    public required Length Length { get; init; }

    /// <summary>Price of one board bought, not negative, in the job's currency.</summary>
    public required decimal Price { get; init; }

    /// <summary>Number already in the rack, paid for.</summary>
    public int OnHand { get; init; }

    /// <summary>The most that can be bought; null when there is no limit.</summary>
    public int? Limit { get; init; }

    /// <summary>Working days from order to delivery; not negative.</summary>
    public int LeadDays { get; init; }
}
