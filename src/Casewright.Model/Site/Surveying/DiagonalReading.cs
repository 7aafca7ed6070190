using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>A diagonal measured from one end of the wall to the other, at two heights.</summary>
public sealed record DiagonalReading
{
    /// <summary>Height of its left end above the highest floor point; not negative.</summary>
    public required Length LeftHeight { get; init; }

    /// <summary>Height of its right end; not negative.</summary>
    public required Length RightHeight { get; init; }

    /// <summary>Line along which it was measured.</summary>
    public ReadingLine Line { get; init; }

    /// <summary>The diagonal; positive.</summary>
    public required Length Distance { get; init; }
}
