using Casewright.Engine.Splicing.Options;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing;

/// <summary>A stretch of heights at which the uprights of a run may not be joined; its very ends are allowed.</summary>
/// <param name="From">Low end above the floor.</param>
/// <param name="To">High end above the floor.</param>
/// <param name="Reason">What is in the way, in words that follow "not here:".</param>
public sealed record ClosedHeights(Length From, Length To, string Reason);

/// <summary>
/// Heights above the floor at which one joint of all the overlong uprights of a run may lie: what a drawing shows while a splice
/// line is moved. The planner works from the same rooms.
/// </summary>
/// <param name="Open">Allowed heights, ascending.</param>
/// <param name="Closed">What lies between the foot and the head of the uprights and is not allowed, ascending.</param>
public sealed record JointHeights(ValueList<Stretch> Open, ValueList<ClosedHeights> Closed)
{
    /// <summary>The heights of a run; null when none of its uprights outruns the usual sheet, or none of them can be joined at all.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run, or a part names a material that is not there.</exception>
    public static JointHeights? Of(Job job, Casework casework, string runId)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var finder = new SpliceRoomFinder(job, casework);
        var words = Words.In(job.Units);
        var tiers = Overlong(job, casework, finder, runId)
            .GroupBy(o => casework.Cases.FirstOrDefault(c => c.Id == o.Part.Case)?.Tier ?? 0)
            .OrderBy(t => t.Key)
            .Select(t => new Tier([.. t], finder, job, words))
            .ToList();
        return tiers.Count == 0
            ? null
            : new(Stretches.Merged(tiers.SelectMany(t => t.Open)), tiers.SelectMany(t => t.Closed()).OrderBy(c => c.From).ToValueList());
    }

    /// <summary>The allowed height nearest to <paramref name="height"/>; itself where it is allowed or where nothing is.</summary>
    public Length Nearest(Length height)
    {
        var (below, above) = (Open.AtOrBelow(height), Open.AtOrAbove(height));
        if (below is null || above is null)
            return below ?? above ?? height;
        return height - below.Value <= above.Value - height ? below.Value : above.Value;
    }

    /// <summary>Why a joint may not lie at a height; null where it may.</summary>
    public string? WhyNot(Length height) => Closed.FirstOrDefault(c => c.From < height && height < c.To)?.Reason;

    private static IEnumerable<OverlongPart> Overlong(Job job, Casework casework, SpliceRoomFinder finder, string runId)
    {
        var fits = new Dictionary<string, StockFit>(StringComparer.Ordinal);
        foreach (var part in casework.Parts.Where(p => p.Run == runId && p.IsUpright() && p.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel))
        {
            if (!fits.TryGetValue(part.Material, out var fit))
                fits.Add(part.Material, fit = new StockFit(job, job.Stock.Material(part.Material)));
            var longest = fit.LongestPieces(part.Width, part.Grain);
            if (longest.Count == 0)
                continue;
            var usual = fit.LongestUsualPieces(part.Width, part.Grain);
            if (part.Length > (usual.Count > 0 ? usual : longest)[0] && finder.Find(part, longest, out _) is { } found)
                yield return found;
        }
    }

    /// <summary>Overlong uprights that keep one line.</summary>
    private sealed class Tier
    {
        private readonly SpliceRoomFinder _finder;
        private readonly Job _job;
        private readonly Func<Length, string> _words;
        private readonly List<(OverlongPart Member, ValueList<Stretch> Open)> _bound;
        private readonly Stretch _whole;
        private readonly Length[] _edges;

        public Tier(IReadOnlyList<OverlongPart> members, SpliceRoomFinder finder, Job job, Func<Length, string> words)
        {
            (_finder, _job, _words) = (finder, job, words);
            var must = members.Where(m => !m.WholeFits).ToList();
            _bound = [.. (must.Count > 0 ? must : members).Select(m => (m, OpenOf(m)))];
            Open = _bound.Select(b => b.Open).Aggregate(Stretches.Common);
            var stands = _bound.Select(b => b.Member.Part.ToRoom(new Stretch(Length.Zero, b.Member.Part.Length))).ToList();
            _whole = new(stands.Select(s => s.From).Min(), stands.Select(s => s.To).Max());
            _edges = [.. _bound.SelectMany(b => EdgesOf(b.Member)).Distinct().Order()];
        }

        public ValueList<Stretch> Open { get; }

        public IEnumerable<ClosedHeights> Closed()
        {
            var from = _whole.From;
            foreach (var open in Open)
            {
                foreach (var closed in Closed(from, open.From))
                    yield return closed;
                from = open.To;
            }

            foreach (var closed in Closed(from, _whole.To))
                yield return closed;
        }

        /// <summary>A closed stretch, divided where its reason changes.</summary>
        private IEnumerable<ClosedHeights> Closed(Length from, Length to)
        {
            if (from >= to)
                yield break;
            ClosedHeights? last = null;
            Length[] edges = [from, .. _edges.Where(e => from < e && e < to), to];
            foreach (var (low, high) in edges.Zip(edges.Skip(1)))
            {
                var next = new ClosedHeights(low, high, Why((low + high) / 2));
                if (last is not null && last.Reason == next.Reason)
                {
                    last = last with { To = high };
                    continue;
                }

                if (last is not null)
                    yield return last;
                last = next;
            }

            yield return last!;
        }

        private IEnumerable<Length> EdgesOf(OverlongPart member) =>
            _finder.Zones(member.Part, member.Rooms[0].Method).SelectMany(z => new[] { z.From, z.To })
                .Concat([member.ShortestPiece, member.Part.Length - member.ShortestPiece])
                .Select(member.Part.ToRoom);

        private string Why(Length height)
        {
            var (member, _) = _bound.Find(b => !b.Open.Contain(height));
            if (member is null)
                return "no place suits all the uprights";
            var x = member.Part.FromRoom(height);
            if (x < member.ShortestPiece || x > member.Part.Length - member.ShortestPiece)
                return $"a piece of {member.Part.Id} would be shorter than {_words(member.ShortestPiece)}";
            var zone = _finder.Zones(member.Part, member.Rooms[0].Method).FirstOrDefault(z => z.Forbids(x));
            return zone is null ? $"a piece of {member.Part.Id} would outrun the sheet" : $"{zone.Reason}, {member.Part.Id}";
        }

        /// <summary>Where one joint is enough, places that leave a piece too long for the stock are left out too.</summary>
        private ValueList<Stretch> OpenOf(OverlongPart member)
        {
            var joints = _job.Shop.Splicing.MostJoints;
            var single = Stretches.Merged(member.Rooms.SelectMany(room => Stretches.Common(room.Allowed, Reach(member, room))).Select(member.Part.ToRoom));
            return single.Count > 0 || joints < 2 ? single : member.AllowedLines;
        }

        private static ValueList<Stretch> Reach(OverlongPart member, JointRoom room)
        {
            var low = member.Part.Length + room.AtJoint + room.AtEnd - member.LongestPiece;
            var high = member.LongestPiece - room.AtJoint;
            return low <= high ? [new Stretch(low, high)] : [];
        }
    }
}
