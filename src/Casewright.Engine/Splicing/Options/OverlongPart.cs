using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing.Options;

/// <summary>A part that outruns the usual sheet or board, and where it may be joined.</summary>
internal sealed record OverlongPart
{
    public required Part Part { get; init; }

    /// <summary>The part's run.</summary>
    public required Run Run { get; init; }

    /// <summary>Methods that can be used, the preferred first, with the places that each allows.</summary>
    public required ValueList<JointRoom> Rooms { get; init; }

    /// <summary>The different lengths that a piece can have at most, longest first; at least one.</summary>
    public required ValueList<Length> Longest { get; init; }

    /// <summary>Shortest stretch of the finished part between two joints or a joint and an end.</summary>
    public required Length ShortestPiece { get; init; }

    /// <summary>Places where a joint is hidden best, in the room.</summary>
    public required ValueList<Length> BestSpots { get; init; }

    /// <summary>Length of the longest piece that any stock gives.</summary>
    public Length LongestPiece => Longest[0];

    /// <summary>Whether longer stock takes the part in one piece.</summary>
    public bool WholeFits => Part.Length <= LongestPiece;

    /// <summary>Lines in the room that some method allows.</summary>
    public ValueList<Stretch> AllowedLines => Stretches.Merged(Rooms.SelectMany(room => room.Allowed).Select(Part.ToRoom));

    /// <summary>The ways to join the part at some of the lines that its group keeps, with as few joints as do; or at all of them.</summary>
    /// <param name="lines">Lines in the room; at least one.</param>
    /// <param name="forced">A line that must be among the joints; null when free.</param>
    /// <param name="all">Whether only joints at all the lines count.</param>
    /// <returns>Joint lines from the reference end, ascending, for each way; none when no method can be used so.</returns>
    public IEnumerable<Length[]> Ways(ValueList<Length> lines, Length? forced, bool all)
    {
        var full = (1 << lines.Count) - 1;
        int? fewest = null;
        foreach (var chosen in Enumerable.Range(all ? full : 1, all ? 1 : full).OrderBy(int.PopCount))
        {
            if (fewest < int.PopCount(chosen))
                yield break;
            Length[] some = [.. lines.Index().Where(line => (chosen >> line.Index & 1) == 1).Select(line => line.Item)];
            Length[] joints = [.. some.Select(Part.FromRoom).Order()];
            if ((forced is { } must && !some.Contains(must)) || !Rooms.Any(room => Feasible(room, joints)))
                continue;
            fewest ??= joints.Length;
            yield return joints;
        }
    }

    /// <summary>Whether pieces between the given joints are long enough and can be cut.</summary>
    /// <param name="room">The method.</param>
    /// <param name="joints">Joint lines from the reference end, ascending; at least one.</param>
    public bool Feasible(JointRoom room, IReadOnlyList<Length> joints)
    {
        var from = Length.Zero;
        for (var piece = 0; piece <= joints.Count; piece++)
        {
            var last = piece == joints.Count;
            var to = last ? Part.Length : joints[piece];
            if ((!last && !room.Allowed.Contain(to)) || to - from < ShortestPiece)
                return false;
            var sawn = to - from + (piece == 0 ? Length.Zero : room.AtJoint) + (last ? room.AtEnd : room.AtJoint);
            if (sawn > LongestPiece)
                return false;
            from = to;
        }

        return true;
    }
}
