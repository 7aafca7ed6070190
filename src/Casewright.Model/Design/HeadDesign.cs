using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>How a run ends at the top: exactly one of <see cref="Height"/> and <see cref="Gap"/> is given.</summary>
public sealed record HeadDesign
{
    /// <summary>Top of the cases, or of a counter on them, above the highest floor point.</summary>
    public Length? Height { get; init; }

    /// <summary>Room left between the top of the cases and the lowest ceiling.</summary>
    public Length? Gap { get; init; }

    /// <summary>Board material of the crown; its board width is the height shown. Null for none.</summary>
    public string? Crown { get; init; }

    /// <summary>Room left plumb between raked tops and a sloping ceiling; null takes <see cref="Gap"/>.</summary>
    public Length? SlopeGap { get; init; }

    /// <summary>Sheet material of the scribed strip that closes the gap along a sloping ceiling; null leaves it open.</summary>
    public string? SlopeFiller { get; init; }

    /// <summary>How far the crown laps down over the cases; not negative.</summary>
    public Length CrownLap { get; init; }
}
