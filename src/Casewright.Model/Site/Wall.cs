using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Model.Site;

/// <summary>A wall that a run stands against: its width and height stated, or its survey, or both.</summary>
public sealed record Wall
{
    /// <summary>Id, unique among the job's walls.</summary>
    public required string Id { get; init; }

    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>The width as somebody wrote it down; null takes what the survey gives.</summary>
    public Length? StatedWidth { get; init; }

    /// <summary>The height as somebody wrote it down; null takes what the survey gives.</summary>
    public Length? StatedHeight { get; init; }

    /// <summary>The readings of the wall; null when it was not surveyed.</summary>
    public WallSurvey? Survey { get; init; }

    /// <summary>Tightest width between its ends, stated or else surveyed; zero when neither is known, which no layout accepts.</summary>
    public Length Width
    {
        get => StatedWidth ?? Survey?.Opening?.Width ?? Length.Zero;
        init => StatedWidth = value;
    }

    /// <summary>Lowest ceiling above the highest floor point, stated or else surveyed; zero when neither is known, which no layout accepts.</summary>
    public Length Height
    {
        get => StatedHeight ?? Survey?.LowestCeiling ?? Length.Zero;
        init => StatedHeight = value;
    }

    /// <summary>Where the ceiling slopes along the wall and comes lower than <see cref="Height"/>; empty for a level ceiling.</summary>
    public ValueList<CeilingSlope> CeilingSlopes { get; init; } = [];

    /// <summary>Height of the ceiling at a place along the wall.</summary>
    public Length CeilingAt(Length x) => CeilingSlopes.Aggregate(Height, (lowest, slope) => Length.Min(lowest, slope.At(x)));

    /// <summary>Lowest ceiling between two places along the wall: between straight lines of which the lowest counts, it is at one of them.</summary>
    public Length LowestCeiling(Length from, Length to) => Length.Min(CeilingAt(from), CeilingAt(to));
}
