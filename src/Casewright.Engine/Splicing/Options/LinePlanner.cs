using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Shop;

namespace Casewright.Engine.Splicing.Options;

/// <summary>
/// Chooses the joint lines worth trying for overlong parts that keep their lines together (or for one part by itself): the best
/// spots first, then what makes full-sheet pieces and whole divisions of a sheet, then a grid. Their number is bounded.
/// </summary>
internal sealed class LinePlanner
{
    private const int MostSingles = 24;
    private const int MostSets = 24;
    private const int MostExtraSets = 6;
    private const int MostCandidates = 12;
    private const int MostDivisions = 6;

    /// <summary>A part in more than seven pieces is not planned, whatever the shop allows: the ways to choose its joints grow too many.</summary>
    private const int MostJoints = 6;
    private static readonly Length s_overhead = Length.FromMillimetres(2100);

    private readonly IReadOnlyList<OverlongPart> _members;
    private readonly IReadOnlyList<OverlongPart> _bound;
    private readonly SpliceRules _rules;
    private readonly Length _kerf;
    private readonly Length _rounding;
    private readonly Length? _forced;
    private readonly IReadOnlyList<Length> _sawn;
    private readonly ValueList<Stretch> _allowed;

    /// <param name="members">The parts, one of each kind; at least one.</param>
    /// <param name="rules">The shop's rules.</param>
    /// <param name="kerf">Width of the saw cut.</param>
    /// <param name="rounding">Step that joint positions are whole multiples of where they are free; positive.</param>
    /// <param name="forced">A line in the room that must be among the joints; null when free.</param>
    /// <param name="sawn">Lines in the room that sawn pieces were cut to; tried before all others.</param>
    public LinePlanner(
        IReadOnlyList<OverlongPart> members, SpliceRules rules, Length kerf, Length rounding, Length? forced, IReadOnlyList<Length> sawn)
    {
        _sawn = sawn;
        _members = members;
        var mustJoin = members.Where(m => !m.WholeFits).ToArray();
        _bound = mustJoin.Length > 0 ? mustJoin : members;
        _rules = rules;
        _kerf = kerf;
        _rounding = rounding;
        _forced = forced;
        _allowed = _bound.Select(m => m.AllowedLines).Aggregate(Stretches.Common);
    }

    /// <summary>Lines that every part which must be joined allows by some method, whatever the pieces come to.</summary>
    public ValueList<Stretch> Allowed => _allowed;

    /// <summary>Sets of joint lines, the preferred set first; empty when there is none.</summary>
    public IReadOnlyList<LineSet> Sets()
    {
        var candidates = Candidates();
        for (var joints = FewestJoints(); joints <= Math.Min(_rules.MostJoints, MostJoints); joints++)
        {
            var found = SetsOf(candidates, joints, joints == 1 ? MostSingles : MostSets, all: joints == 1 || _members.Count == 1);
            if (found.Count == 0)
                continue;
            var extra = joints < _rules.MostJoints ? SetsOf(candidates, joints + 1, MostExtraSets, all: true) : [];
            return [.. found, .. extra];
        }

        return [];
    }

    /// <summary>Joints without which the pieces of the longest part cannot add up to it.</summary>
    private int FewestJoints() =>
        Math.Max(1, _bound.Max(m => (int)Math.Min(MostJoints + 1, (m.Part.Length.Nanometres - 1) / m.LongestPiece.Nanometres)));

    private List<LineSet> SetsOf(List<Candidate> candidates, int joints, int most, bool all)
    {
        var pool = joints == 1
            ? Thinned([.. candidates.Where(c => Serves([c.Line], all))], most)
            : Pool(candidates);
        var sets = new List<(ValueList<Length> Lines, int Rank)>();
        Collect(pool, joints, 0, [], all, sets);
        return [.. sets.OrderBy(s => s.Rank).Take(most).Select(s => new LineSet(s.Lines, all))];
    }

    /// <summary>Lines to combine: those of full-sheet pieces come first, since they alone may reach with the fewest joints.</summary>
    private static List<Candidate> Pool(List<Candidate> candidates)
    {
        var full = Thinned([.. candidates.Where(c => c.Rank is Rank.FullSheet or Rank.Forced)], MostCandidates);
        return [.. full, .. Thinned([.. candidates.Where(c => !full.Contains(c))], MostCandidates / 2)];
    }

    private void Collect(
        List<Candidate> pool, int joints, int start, List<Candidate> chosen, bool all, List<(ValueList<Length> Lines, int Rank)> sets)
    {
        if (chosen.Count == joints)
        {
            ValueList<Length> lines = [.. chosen.Select(c => c.Line).Order()];
            if (Serves(lines, all))
                sets.Add((lines, chosen.Sum(c => c.Rank)));
            return;
        }

        for (var next = start; next < pool.Count; next++)
        {
            chosen.Add(pool[next]);
            Collect(pool, joints, next + 1, chosen, all, sets);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    /// <summary>Whether every part that must be joined can be at these lines, and one of them at no fewer, so that it shows the whole set.</summary>
    private bool Serves(ValueList<Length> lines, bool all)
    {
        var fewest = _bound.Select(m => m.Ways(lines, _forced, all).FirstOrDefault()?.Length).ToArray();
        return Array.TrueForAll(fewest, f => f is not null) && Array.Exists(fewest, f => f == lines.Count);
    }

    /// <summary>Allowed lines, each once with its best rank, ordered by preference.</summary>
    private List<Candidate> Candidates()
    {
        if (_allowed.Count == 0)
            return [];
        var ranks = new Dictionary<Length, int>();
        foreach (var (line, rank) in Proposals().Where(p => _allowed.Contain(p.Line)))
            ranks[line] = Math.Min(rank, ranks.GetValueOrDefault(line, int.MaxValue));
        var up = _bound.Any(m => m.Part.IsUpright() && m.Part.ToRoom(new Stretch(Length.Zero, m.Part.Length)).To > s_overhead);
        var ordered = ranks.Select(r => new Candidate(r.Key, r.Value)).OrderBy(c => c.Rank);
        return [.. up ? ordered.ThenByDescending(c => c.Line) : ordered.ThenBy(c => c.Line)];
    }

    private IEnumerable<(Length Line, int Rank)> Proposals()
    {
        if (_forced is { } forced)
            yield return (forced, Rank.Forced);
        foreach (var line in _sawn)
            yield return (line, Rank.Forced);
        foreach (var member in _members)
        {
            foreach (var spot in member.BestSpots)
                yield return (spot, Rank.BestSpot);
            foreach (var room in member.Rooms)
            {
                foreach (var proposal in ForSheets(member, room))
                    yield return proposal;
            }
        }

        foreach (var stretch in _allowed)
        {
            yield return (Round(stretch.From, [stretch], downwards: false), Rank.StretchEnd);
            yield return (Round(stretch.To, [stretch], downwards: true), Rank.StretchEnd);
            for (var line = stretch.From.CeilingTo(Step); line <= stretch.To; line += Step)
                yield return (line, Rank.Grid);
        }
    }

    private Length Step => Length.Max(_rules.PositionStep, Length.FromMillimetres(1));

    private IEnumerable<(Length Line, int Rank)> ForSheets(OverlongPart member, JointRoom room)
    {
        foreach (var usable in member.Longest)
        {
            foreach (var line in Chain(member, room, usable))
                yield return (line, Rank.FullSheet);
            for (var share = 2; share <= MostDivisions; share++)
            {
                var sawn = (usable - (_kerf * (share - 1))) / share;
                foreach (var line in Near(member, sawn - room.AtJoint, member.Part.Length - sawn + room.AtJoint + room.AtEnd))
                    yield return (line, Rank.Division);
            }
        }

        var half = (member.Part.Length + room.AtEnd) / 2;
        foreach (var line in Near(member, half, half))
            yield return (line, Rank.Division);
    }

    /// <summary>Joints as far apart as the stock allows, counted from either end.</summary>
    private IEnumerable<Length> Chain(OverlongPart member, JointRoom room, Length usable)
    {
        var lines = member.Part;
        Length? fromStart = usable - room.AtJoint;
        Length? fromEnd = lines.Length - usable + room.AtJoint + room.AtEnd;
        var stride = usable - (room.AtJoint * 2);
        for (var joint = 0; joint < _rules.MostJoints; joint++)
        {
            fromStart = fromStart is { } s && s > Length.Zero ? AllowedX(member, s, downwards: true) : null;
            fromEnd = fromEnd is { } e && e < lines.Length ? AllowedX(member, e, downwards: false) : null;
            if (fromStart is { } low)
                yield return lines.ToRoom(low);
            if (fromEnd is { } high)
                yield return lines.ToRoom(high);
            fromStart += stride;
            fromEnd -= stride;
        }
    }

    private IEnumerable<Length> Near(OverlongPart member, Length atMost, Length atLeast)
    {
        if (atMost > Length.Zero && AllowedX(member, atMost, downwards: true) is { } low)
            yield return member.Part.ToRoom(low);
        if (atLeast < member.Part.Length && AllowedX(member, atLeast, downwards: false) is { } high)
            yield return member.Part.ToRoom(high);
    }

    /// <summary>The nearest place of the part, in the direction given, whose line is allowed; on the rounding step where that is allowed too.</summary>
    private Length? AllowedX(OverlongPart member, Length x, bool downwards)
    {
        var part = member.Part;
        ValueList<Stretch> places = [.. _allowed.Select(part.FromRoom).OrderBy(s => s.From)];
        var nearest = downwards ? places.AtOrBelow(x) : places.AtOrAbove(x);
        return nearest is { } place ? Round(place, places, downwards) : null;
    }

    /// <summary>The place on the rounding step, in the direction given; as it is where that would not be allowed.</summary>
    private Length Round(Length place, ValueList<Stretch> allowed, bool downwards)
    {
        var rounded = downwards ? place.FloorTo(_rounding) : place.CeilingTo(_rounding);
        return allowed.Contain(rounded) ? rounded : place;
    }

    /// <summary>All lines of the better ranks, and of the last rank that no longer fits an even choice.</summary>
    private static List<Candidate> Thinned(List<Candidate> candidates, int most)
    {
        if (candidates.Count <= most)
            return candidates;
        var kept = new List<Candidate>();
        foreach (var rank in candidates.GroupBy(c => c.Rank).OrderBy(g => g.Key))
        {
            Candidate[] same = [.. rank];
            var room = most - kept.Count;
            if (same.Length <= room)
                kept.AddRange(same);
            else
                kept.AddRange(Enumerable.Range(0, room).Select(i => same[(int)((long)i * same.Length / room)]));
            if (kept.Count >= most)
                break;
        }

        return kept;
    }

    private readonly record struct Candidate(Length Line, int Rank);

    private static class Rank
    {
        public const int Forced = 0;
        public const int BestSpot = 1;
        public const int FullSheet = 2;
        public const int Division = 3;
        public const int StretchEnd = 4;
        public const int Grid = 5;
    }
}
