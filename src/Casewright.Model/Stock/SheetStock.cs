using Casewright.Model.Measure;

namespace Casewright.Model.Stock;

/// <summary>A size of sheet on offer, on hand, or left over from earlier work.</summary>
public sealed record SheetStock
{
    /// <summary>Id, unique among all stock of the job.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Size along the first stated side; positive.</summary>
    public required Length Length { get; init; }

    /// <summary>Size along the second stated side; positive.</summary>
    public required Length Width { get; init; }

    /// <summary>Whether the face grain runs across the stated length (as in many large birch sheets).</summary>
    public bool GrainAcross { get; init; }

    /// <summary>Price of one sheet bought, not negative, in the job's currency.</summary>
    public required decimal Price { get; init; }

    /// <summary>Number already in the rack, paid for: they cost nothing more and are used before any is bought.</summary>
    public int OnHand { get; init; }

    /// <summary>The most that can be bought; null when there is no limit, 0 for an offcut that exists only on hand.</summary>
    public int? Limit { get; init; }

    /// <summary>Working days from order to delivery; not negative.</summary>
    public int LeadDays { get; init; }

    /// <summary>Whether this is an offcut on the rack: its edges are clean, so no edge trim is taken.</summary>
    public bool IsOffcut { get; init; }
}
