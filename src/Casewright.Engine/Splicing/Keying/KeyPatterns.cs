using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>Proposes tenon patterns for a joint: tenons nearly even across the part, some of them moved by whole key steps.</summary>
internal sealed class KeyPatterns
{
    private readonly TenonRoom _room;
    private readonly SpliceMethod _method;
    private readonly Length _unit;
    private readonly Length _step;
    private readonly Length _first;
    private readonly Length _last;

    /// <param name="room">Where tenons and connectors may lie; with room for one tenon at least.</param>
    /// <param name="method">Tenons with or without draw connectors.</param>
    /// <param name="units">Unit in which offsets are round: 1 mm, or 1/16 in.</param>
    public KeyPatterns(TenonRoom room, SpliceMethod method, UnitSystem units)
    {
        _room = room;
        _method = method;
        _unit = units == UnitSystem.Inches ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        _step = JointPractice.LeastMismatch.CeilingTo(_unit);
        _first = room.Tenons[0].From.CeilingTo(_unit);
        _last = room.Tenons[^1].To.FloorTo(_unit);
    }

    /// <summary>Connectors that a joint of this width should have.</summary>
    public int WantedConnectors => _method == SpliceMethod.TenonsAndConnectors
        ? Math.Max(1, (int)(((_room.Width * 2) + JointPractice.WidthPerConnector) / (JointPractice.WidthPerConnector * 2)))
        : 0;

    /// <summary>Whether two tenons, and one connector between them if the method has such, find room.</summary>
    public static bool Exist(TenonRoom room, SpliceMethod method, UnitSystem units) =>
        room.Tenons.Count > 0 && new KeyPatterns(room, method, units).Counts().SelectMany(c => c).Any();

    /// <summary>The patterns with their distance from an even spread, the most even first; at least one when the room suffices.</summary>
    public IReadOnlyList<(KeyPattern Pattern, int Moved)> All()
    {
        foreach (var count in Counts())
        {
            var found = count.ToList();
            if (found.Count > 0)
                return [.. found.OrderBy(p => p.Moved)];
        }

        return [];
    }

    /// <summary>The patterns with as many tenons as the width asks for, then with fewer.</summary>
    private IEnumerable<IEnumerable<(KeyPattern Pattern, int Moved)>> Counts()
    {
        for (var count = TenonCount(); count >= 2; count--)
            yield return Of(count);
    }

    /// <summary>Two tenons, and one more for every 110 mm between the outer ones.</summary>
    private int TenonCount()
    {
        var between = _room.Width - (JointPractice.TenonToEdge * 2);
        var more = (int)((between.Nanometres + JointPractice.WidestSpacing.Nanometres - 1) / JointPractice.WidestSpacing.Nanometres);
        return Math.Max(2, 1 + more);
    }

    private IEnumerable<(KeyPattern Pattern, int Moved)> Of(int count)
    {
        var even = (_last - _first) / (count - 1);
        if (even < Least)
            yield break;
        foreach (var moves in Moves(count))
        {
            if (Place(moves, even) is not { } tenons || !Spaced(tenons, even))
                continue;
            var connectors = Connectors(tenons);
            if (WantedConnectors > 0 && connectors.Count == 0)
                continue;
            yield return (new KeyPattern(tenons.ToValueList(), connectors, _room.Width), moves.Sum(Math.Abs));
        }
    }

    private Length Least => _method == SpliceMethod.TenonsAndConnectors
        ? JointPractice.LeastAroundConnector(_room.TenonWidth)
        : JointPractice.LeastSpacing(_room.TenonWidth);

    /// <summary>Whole key steps by which each tenon is moved off the even spread: outer ones inwards, inner ones either way.</summary>
    private static IEnumerable<int[]> Moves(int count)
    {
        var (outer, inner) = count switch { 2 => (6, 0), 3 => (4, 4), 4 => (3, 3), _ => (2, 2) };
        var moved = Math.Min(count, 5);
        var moves = new int[count];
        return Vary(0);

        IEnumerable<int[]> Vary(int tenon)
        {
            if (tenon == moved)
            {
                yield return [.. moves];
                yield break;
            }

            var index = tenon == moved - 1 ? count - 1 : tenon;
            var (low, high) = index == 0 ? (0, outer) : index == count - 1 ? (-outer, 0) : (-inner, inner);
            for (var by = low; by <= high; by++)
            {
                moves[index] = by;
                foreach (var result in Vary(tenon + 1))
                    yield return result;
            }

            moves[index] = 0;
        }
    }

    private List<Length>? Place(int[] moves, Length even)
    {
        var tenons = new List<Length>();
        for (var i = 0; i < moves.Length; i++)
        {
            var wanted = (i == moves.Length - 1 ? _last : _first + (even * i)).RoundTo(_unit) + (_step * moves[i]);
            if (Nearest(wanted) is not { } place)
                return null;
            tenons.Add(place);
        }

        return tenons;
    }

    /// <summary>The nearest free place on the unit.</summary>
    private Length? Nearest(Length wanted)
    {
        var below = _room.Tenons.AtOrBelow(wanted)?.FloorTo(_unit);
        var above = _room.Tenons.AtOrAbove(wanted)?.CeilingTo(_unit);
        if (below is { } b && !_room.Tenons.Contain(b))
            below = null;
        if (above is { } a && !_room.Tenons.Contain(a))
            above = null;
        return below is { } low && above is { } high
            ? wanted - low <= high - wanted ? low : high
            : below ?? above;
    }

    private bool Spaced(List<Length> tenons, Length even)
    {
        var least = Length.Max(Least, Length.Min(JointPractice.UsualSpacing, even * 3 / 4));
        var most = Length.Max(JointPractice.MostSpacing, even);
        return tenons.Zip(tenons.Skip(1), (low, high) => high - low).All(gap => gap >= least && gap <= most);
    }

    /// <summary>One connector in the middle of a gap, in as many gaps as are wanted, evenly chosen.</summary>
    private ValueList<Length> Connectors(List<Length> tenons)
    {
        if (WantedConnectors == 0)
            return [];
        var beside = JointPractice.TenonToConnector(_room.TenonWidth);
        var places = new List<Length>();
        for (var gap = 0; gap + 1 < tenons.Count; gap++)
        {
            var free = Stretches.Common(_room.Connectors, [new Stretch(tenons[gap] + beside, tenons[gap + 1] - beside)]);
            var middle = ((tenons[gap] + tenons[gap + 1]) / 2).RoundTo(_unit);
            if (free.Contain(middle))
                places.Add(middle);
            else if ((free.AtOrAbove(middle)?.CeilingTo(_unit)) is { } above && free.Contain(above))
                places.Add(above);
            else if ((free.AtOrBelow(middle)?.FloorTo(_unit)) is { } below && free.Contain(below))
                places.Add(below);
        }

        var wanted = Math.Min(WantedConnectors, places.Count);
        return [.. Enumerable.Range(0, wanted).Select(i => places[((2 * i) + 1) * places.Count / (2 * wanted)])];
    }
}
