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

    /// <summary>Lowest ceiling above the highest floor point, where it does not slope, stated or else surveyed; zero when neither is known, which no layout accepts.</summary>
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

    /// <summary>The line of the ceiling between two places along the wall, from left to right: its ends and where it breaks, to the micrometre.</summary>
    public ValueList<(Length X, Length Height)> CeilingLine(Length from, Length to)
    {
        var lines = CeilingSlopes.Select(s => (Tangent: (decimal)s.ToSlope().Rise.Nanometres / s.ToSlope().Run.Nanometres, AtZero: s.At(Length.Zero))).Append((0, Height)).ToArray();
        var breaks =
            from a in lines
            from b in lines
            where a.Tangent < b.Tangent
            let x = Length.FromNanometres((long)Math.Round((a.AtZero - b.AtZero).Nanometres / (b.Tangent - a.Tangent) / 1000) * 1000)
            where x > @from && x < to && (CeilingAt(x) - (b.AtZero + Length.FromNanometres((long)(b.Tangent * x.Nanometres)))).Abs() < Length.FromMillimetres(0.01m)
            select x;
        return [.. breaks.Append(@from).Append(to).Distinct().Order().Select(x => (x, CeilingAt(x)))];
    }
}
