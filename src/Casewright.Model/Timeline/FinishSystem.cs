using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>How a coat is put on.</summary>
public enum CoatApplication
{
    /// <summary>Sprayed.</summary>
    Spray,

    /// <summary>Brushed or rolled.</summary>
    Brush,
}

/// <summary>One coat of a finish.</summary>
public sealed record Coat
{
    /// <summary>Name on the finish schedule, such as "primer".</summary>
    public required string Name { get; init; }

    /// <summary>How it is put on.</summary>
    public CoatApplication Application { get; init; }

    /// <summary>Hours until the next coat, or until it may be handled; not negative. Drying goes on through the night.</summary>
    public required decimal DryHours { get; init; }

    /// <summary>Whether the coat below is de-nibbed first.</summary>
    public bool DenibFirst { get; init; }

    /// <summary>Square metres covered by one litre; positive.</summary>
    public decimal Coverage { get; init; } = 8;

    /// <summary>Price of a litre, not negative, in the job's currency.</summary>
    public decimal LitrePrice { get; init; }
}

/// <summary>A finish: its coats, and how long it hardens.</summary>
public sealed record FinishSystem
{
    /// <summary>Name on the papers.</summary>
    public required string Name { get; init; }

    /// <summary>Whether wood shows through: joints then take more care.</summary>
    public bool Clear { get; init; }

    /// <summary>Coats in order; at least one.</summary>
    public required ValueList<Coat> Coats { get; init; }

    /// <summary>Days from the last coat until shelves may be loaded; not negative.</summary>
    public int DaysBeforeLoading { get; init; } = 7;

    /// <summary>Water-based paint, sprayed: a primer and two top coats, two hours between coats (common practice, no source).</summary>
    public static FinishSystem WaterBasedPaint { get; } = new()
    {
        Name = "water-based paint, sprayed",
        Coats =
        [
            new() { Name = "primer", DryHours = 2 },
            new() { Name = "first top coat", DryHours = 2, DenibFirst = true },
            new() { Name = "second top coat", DryHours = 2, DenibFirst = true },
        ],
    };
}
