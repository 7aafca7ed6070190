using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>What the readings of a job come to.</summary>
/// <param name="Walls">Every surveyed wall, in the order of the job.</param>
/// <param name="Runs">Every run on a surveyed wall, in the order of the job.</param>
/// <param name="Missing">Readings that nobody took, by wall.</param>
/// <param name="Findings">Contradictions, what is in the way, blanks that are too small.</param>
public sealed record SurveyResult(ValueList<SurveyedWall> Walls, ValueList<SurveyedRun> Runs, ValueList<MissingReading> Missing, ValueList<Finding> Findings);

/// <summary>A wall as surveyed.</summary>
/// <param name="Wall">Its id.</param>
/// <param name="Level">The floor against the level line; null when it was not read.</param>
/// <param name="Opening">The tightest opening; null without a width reading.</param>
/// <param name="Envelope">The room between the ends at every height that was read.</param>
/// <param name="LowestCeiling">Lowest ceiling above the highest floor point; null when it was not read.</param>
/// <param name="CeilingRange">How much the ceiling readings differ; zero when it was not read.</param>
public sealed record SurveyedWall(
    string Wall, LevelLine? Level, PlumbOpening? Opening, ValueList<EnvelopeRow> Envelope, Length? LowestCeiling, Length CeilingRange);

/// <summary>A run in its crooked room.</summary>
public sealed record SurveyedRun
{
    /// <summary>Id of the run.</summary>
    public required string Run { get; init; }

    /// <summary>Id of its wall.</summary>
    public required string Wall { get; init; }

    /// <summary>Base heights and shims, from left to right.</summary>
    public required ValueList<BaseStation> Base { get; init; }

    /// <summary>Fillers at walls: left, then right.</summary>
    public required ValueList<FillerFit> Fillers { get; init; }

    /// <summary>Scribe tables of toe faces, end panels and crowns, in that order.</summary>
    public required ValueList<ScribeTable> Scribes { get; init; }

    /// <summary>What each nailer can be screwed to, case by case, from the top down.</summary>
    public required ValueList<StudHits> Studs { get; init; }

    /// <summary>Width that each of two fillers has when the room left over is split evenly; null unless both ends meet a wall.</summary>
    public Length? EvenFiller { get; init; }

    /// <summary>Every scribe table of the run, fillers first.</summary>
    public IEnumerable<ScribeTable> AllScribes => Fillers.Select(f => f.Scribe).Concat(Scribes);
}
