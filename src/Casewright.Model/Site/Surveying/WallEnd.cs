using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>What stands at one end of a wall, as measured.</summary>
public sealed record WallEnd
{
    /// <summary>Id of the job's wall that meets this one here; null when none of the job's walls does.</summary>
    public string? Wall { get; init; }

    /// <summary>The corner; null when it was not measured.</summary>
    public CornerReading? Corner { get; init; }

    /// <summary>How far the wall at this end reaches out from the corner; null when nobody said or it fills the room.</summary>
    public Length? Reach { get; init; }

    /// <summary>
    /// Distance from a plumb line to the wall at this end, by height: one plumb line at the back, one at the front.
    /// A smaller distance means that the wall leans in.
    /// </summary>
    public ValueList<HeightReading> Plumb { get; init; } = [];
}
