using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.App.Web.Components.Steps;

/// <summary>One line of a table of readings.</summary>
/// <param name="At">Place along the wall, or height.</param>
/// <param name="Back">Reading at the wall; null when it was not taken.</param>
/// <param name="Front">Reading at the front line; null when it was not taken.</param>
public sealed record MeasureRow(Length At, Length? Back, Length? Front)
{
    /// <summary>A line of a reading by station.</summary>
    public static MeasureRow Of(StationReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.At, reading.Back, reading.Front);
    }

    /// <summary>A line of a reading by height.</summary>
    public static MeasureRow Of(HeightReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.Height, reading.Back, reading.Front);
    }

    /// <summary>The reading by station.</summary>
    public StationReading ToStation() => new() { At = At, Back = Back, Front = Front };

    /// <summary>The reading by height.</summary>
    public HeightReading ToHeight() => new() { Height = At, Back = Back, Front = Front };
}
