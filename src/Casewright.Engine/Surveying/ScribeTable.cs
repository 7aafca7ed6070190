using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Engine.Surveying;

/// <summary>One line of a scribe table.</summary>
/// <param name="At">Along the blank from its reference end: from the foot of an upright one, from the left end of a level one.</param>
/// <param name="Stands">Width that is left of the blank there.</param>
/// <param name="TakeOff">Width to take off its straight edge there; negative where the blank is too narrow.</param>
/// <param name="Measured">Whether it stands at a reading; between readings the wall is taken as straight.</param>
public sealed record ScribeRow(Length At, Length Stands, Length TakeOff, bool Measured);

/// <summary>What is taken off a blank, along its length, so that it meets wall, floor or ceiling.</summary>
public sealed record ScribeTable
{
    /// <summary>Id of the part.</summary>
    public required string Part { get; init; }

    /// <summary>Name of the part.</summary>
    public required string Name { get; init; }

    /// <summary>What it is scribed to, such as "left wall" or "floor".</summary>
    public required string Against { get; init; }

    /// <summary>Width of the blank as cut.</summary>
    public required Length Blank { get; init; }

    /// <summary>Length of the blank.</summary>
    public required Length Length { get; init; }

    /// <summary>Rows along the blank, at least two.</summary>
    public required ValueList<ScribeRow> Rows { get; init; }

    /// <summary>Least width left.</summary>
    public Length Narrowest => Rows.Min(r => r.Stands);

    /// <summary>Greatest width left.</summary>
    public Length Widest => Rows.Max(r => r.Stands);

    /// <summary>Whether the blank covers the widest gap everywhere.</summary>
    public bool Covers => Rows.All(r => r.TakeOff >= Length.Zero);

    /// <summary>The straight line that strays least from the scribed edge, in millimetres: a saw cut along it leaves no more than its deviation to plane.</summary>
    public MinimaxLine BestStraight => MinimaxLine.Through(
        [.. Rows.Where(r => r.Measured).DefaultIfEmpty(Rows[0]).Select(r => ((double)r.At.Millimetres, (double)r.Stands.Millimetres))]);

    /// <summary>Rows at readings and at even steps.</summary>
    /// <param name="length">Length of the blank.</param>
    /// <param name="step">Even step; positive.</param>
    /// <param name="measured">Places of readings along the blank.</param>
    /// <param name="blank">Width of the blank.</param>
    /// <param name="stands">Width left at a place.</param>
    internal static ValueList<ScribeRow> RowsOf(Length length, Length step, IEnumerable<Length> measured, Length blank, Func<Length, Length> stands)
    {
        var readings = measured.Where(at => at >= Length.Zero && at <= length).ToHashSet();
        var even = Enumerable.Range(0, (int)(length / step) + 1).Select(i => step * i);
        return readings.Concat(even).Append(length).Distinct().Order()
            .Select(at => new ScribeRow(at, stands(at), blank - stands(at), readings.Contains(at)))
            .ToValueList();
    }
}
