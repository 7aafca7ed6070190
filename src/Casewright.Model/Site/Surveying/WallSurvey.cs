using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// A wall as the tape and the laser read it. x counts from the plumb line at the innermost point of the left end, heights from the highest
/// floor point, distances out from the plumb plane at the foremost point of the wall. Lists may be empty; what is missing is then said.
/// </summary>
public sealed record WallSurvey
{
    /// <summary>Height of the level line that floor and ceiling are measured from, above the highest floor point of the room; positive.</summary>
    public required Length Datum { get; init; }

    /// <summary>Distance from the wall of the front line; null when everything was measured at the wall only.</summary>
    public Length? FrontLine { get; init; }

    /// <summary>Down from the level line to the floor, by station.</summary>
    public ValueList<StationReading> Floor { get; init; } = [];

    /// <summary>Up from the level line to the ceiling, by station.</summary>
    public ValueList<StationReading> Ceiling { get; init; } = [];

    /// <summary>Width between the ends, level, by height.</summary>
    public ValueList<HeightReading> Widths { get; init; } = [];

    /// <summary>Diagonals from end to end.</summary>
    public ValueList<DiagonalReading> Diagonals { get; init; } = [];

    /// <summary>Left end; null when it is open or was not measured.</summary>
    public WallEnd? LeftEnd { get; init; }

    /// <summary>Right end; null when it is open or was not measured.</summary>
    public WallEnd? RightEnd { get; init; }

    /// <summary>Bow of the wall, by strings.</summary>
    public ValueList<StringLine> Strings { get; init; } = [];

    /// <summary>Lean of the wall, by plumb lines.</summary>
    public ValueList<PlumbLine> PlumbLines { get; init; } = [];

    /// <summary>What the wall is made of; null takes what is said of the site.</summary>
    public WallStructure? Structure { get; init; }

    /// <summary>Centres of the studs along the wall; empty when nobody has looked or there are none.</summary>
    public ValueList<Length> Studs { get; init; } = [];

    /// <summary>Doors, windows, outlets, registers, radiators, beams, pipes.</summary>
    public ValueList<WallFeature> Features { get; init; } = [];

    /// <summary>Skirting; null without one.</summary>
    public WallMoulding? Skirting { get; init; }

    /// <summary>Cornice; null without one.</summary>
    public WallMoulding? Cornice { get; init; }

    /// <summary>The tightest opening between the ends; null without a width reading.</summary>
    public PlumbOpening? Opening => PlumbOpening.Of(this);

    /// <summary>Lowest ceiling above the highest floor point; null without a ceiling reading.</summary>
    public Length? LowestCeiling => Readings(Ceiling).DefaultIfEmpty().Min() is { } least ? Datum + least : null;

    private static IEnumerable<Length?> Readings(ValueList<StationReading> stations) =>
        stations.SelectMany(s => new[] { s.Back, s.Front }).Where(r => r is not null);
}
