using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>The floor along a wall against a level line.</summary>
/// <param name="HighAt">Place of the highest reading.</param>
/// <param name="HighLine">Line of the highest reading.</param>
/// <param name="High">How far the highest reading lies below the room's highest floor point; zero where it is that point.</param>
/// <param name="Fall">How far the lowest reading lies below the highest.</param>
/// <param name="Best">The straight line that strays least from the readings, in millimetres above the highest floor point: its slope is what the floor is out of level.</param>
public sealed record LevelLine(Length HighAt, ReadingLine HighLine, Length High, Length Fall, MinimaxLine Best)
{
    /// <summary>The level of a floor; null when it was not measured.</summary>
    public static LevelLine? Of(FloorProfile floor)
    {
        ArgumentNullException.ThrowIfNull(floor);
        var points = floor.Points.ToList();
        if (points.Count == 0)
            return null;
        var high = points.MinBy(p => p.Below);
        var best = MinimaxLine.Through([.. points.Select(p => ((double)p.At.Millimetres, -(double)p.Below.Millimetres))]);
        return new(high.At, high.Line, high.Below, points.Max(p => p.Below) - high.Below, best);
    }
}
