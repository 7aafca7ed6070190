using Casewright.Model.Measure;

namespace Casewright.Engine.Surveying;

/// <summary>How far readings may differ before they contradict each other: our judgement of what a tape and a laser level give in a room.</summary>
internal static class SurveyTolerance
{
    /// <summary>Two level or width readings of the same thing: 3 mm (1/8 in).</summary>
    public static Length Reading { get; } = Length.FromMillimetres(3);

    /// <summary>A diagonal against what widths and heights give: 5 mm, a long tape over a corner.</summary>
    public static Length Diagonal { get; } = Length.FromMillimetres(5);

    /// <summary>The highest floor reading against the stated height of the level line: 2 mm.</summary>
    public static Length Datum { get; } = Length.FromMillimetres(2);

    /// <summary>One corner measured from both walls: half a degree.</summary>
    public const double CornerDegrees = 0.5;

    /// <summary>Longest distance between floor stations: 600 mm is usual, 650 lets a 24 in spacing pass with a stud's thickness over.</summary>
    public static Length StationSpacing { get; } = Length.FromMillimetres(650);
}
