using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>The two lines along which a wall is measured.</summary>
public enum ReadingLine
{
    /// <summary>Close to the wall.</summary>
    Back,

    /// <summary>At the stated distance from the wall, where the fronts of the cases will be.</summary>
    Front,
}

/// <summary>A reading that is taken at a place along the wall, at the back and at the front line; at least one of the two.</summary>
public sealed record StationReading
{
    /// <summary>Place along the wall, from its left end; not negative.</summary>
    public required Length At { get; init; }

    /// <summary>At the wall.</summary>
    public Length? Back { get; init; }

    /// <summary>At the front line.</summary>
    public Length? Front { get; init; }

    /// <summary>The reading on a line; null when it was not taken.</summary>
    public Length? On(ReadingLine line) => line == ReadingLine.Back ? Back : Front;
}

/// <summary>A reading that is taken at a height, at the back and at the front line; at least one of the two.</summary>
public sealed record HeightReading
{
    /// <summary>Height above the highest floor point; not negative.</summary>
    public required Length Height { get; init; }

    /// <summary>At the wall.</summary>
    public Length? Back { get; init; }

    /// <summary>At the front line.</summary>
    public Length? Front { get; init; }

    /// <summary>The reading on a line; null when it was not taken.</summary>
    public Length? On(ReadingLine line) => line == ReadingLine.Back ? Back : Front;
}

/// <summary>A distance from a string or a plumb line to the wall, at one place along it.</summary>
/// <param name="At">Along the wall on a string, or height on a plumb line; not negative.</param>
/// <param name="Gap">From the line to the wall; not negative.</param>
public sealed record LineReading(Length At, Length Gap);
