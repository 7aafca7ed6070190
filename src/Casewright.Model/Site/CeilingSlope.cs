using Casewright.Model.Measure;

namespace Casewright.Model.Site;

/// <summary>
/// A ceiling that slopes along a wall (under a stair, in a gable), as two points on its line: x from the wall's left end, height above the
/// highest floor point. The line goes on beyond both; the ceiling is wherever the lowest of all lines and the level ceiling is.
/// </summary>
public sealed record CeilingSlope
{
    /// <summary>Where the first point is along the wall; not negative, but it may lie past the right end.</summary>
    public required Length FromX { get; init; }

    /// <summary>Height of the first point.</summary>
    public required Length FromHeight { get; init; }

    /// <summary>Where the second point is along the wall; not where the first is.</summary>
    public required Length ToX { get; init; }

    /// <summary>Height of the second point.</summary>
    public required Length ToHeight { get; init; }

    /// <summary>The slope, counted to the right.</summary>
    /// <exception cref="InvalidOperationException">Both points are at one place.</exception>
    public Slope ToSlope() => FromX == ToX
        ? throw new InvalidOperationException("A sloping ceiling needs two points at two places.")
        : FromX < ToX ? new(ToHeight - FromHeight, ToX - FromX) : new(FromHeight - ToHeight, FromX - ToX);

    /// <summary>Height of the line at a place along the wall.</summary>
    public Length At(Length x) => FromHeight + ToSlope().Over(x - FromX);
}
