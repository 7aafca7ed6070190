using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Splicing;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Parts;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>
/// Which sawn pieces still serve their parts. A part keeps as many of its pieces as one way to make it allows, and is then made in
/// a way that holds them; parts that share a sight line keep the line that most of the sawn pieces were cut to.
/// </summary>
/// <param name="Whole">Parts all of whose pieces are there.</param>
/// <param name="Rest">What is still to be cut.</param>
/// <param name="Pieces">The pieces kept, at their places.</param>
internal sealed record KeptPieces(ValueList<JointedPart> Whole, ValueList<PartDemand> Rest, ValueList<Piece> Pieces)
{
    /// <summary>Sorts the demands of a material by what is sawn of them.</summary>
    public static KeptPieces Of(MaterialDemands demands, IReadOnlyList<SawnAt> sawn)
    {
        if (sawn.Count == 0)
            return new([], demands.Demands, []);
        var sorting = new Sorting(demands, sawn);
        ValueList<PartDemand> rest = [.. demands.Demands.SelectMany(sorting.Rest)];
        return new(sorting.Whole.ToValueList(), rest, sorting.Kept.ToValueList());
    }

    private sealed class Sorting
    {
        private readonly MaterialDemands _demands;
        private readonly ILookup<string, SawnAt> _sawn;
        private readonly Dictionary<string, long> _lines = new(StringComparer.Ordinal);

        public Sorting(MaterialDemands demands, IReadOnlyList<SawnAt> sawn)
        {
            _demands = demands;
            _sawn = sawn.ToLookup(s => s.Piece.Part, StringComparer.Ordinal);
            foreach (var group in demands.Demands.Where(d => d.SightLineGroup is not null).GroupBy(d => d.SightLineGroup!, StringComparer.Ordinal))
            {
                if (LineOf([.. group]) is { } line)
                    _lines.Add(group.Key, line);
            }
        }

        public List<JointedPart> Whole { get; } = [];

        public List<Piece> Kept { get; } = [];

        public IEnumerable<PartDemand> Rest(PartDemand demand)
        {
            var options = Options(demand);
            var open = new List<(Part Part, ValueList<PieceCut> Kept, ValueList<PartOption> Options)>();
            foreach (var part in demand.Parts)
            {
                var best = options.MaxBy(o => Held(part, o).Count)!;
                var held = Held(part, best);
                ValueList<PartOption> suiting = [.. options.Where(o => held.Keys.All(i => i < o.Pieces.Count && o.Pieces[i] == best.Pieces[i]))];
                Kept.AddRange(held.OrderBy(h => h.Key).Select(h => h.Value.InPlan));
                if (suiting.FirstOrDefault(o => o.Pieces.Count == held.Count) is { } done)
                    Whole.Add(new(part, done, demand.SightLineGroup is not null));
                else
                    open.Add((part, [.. held.Keys.Order().Select(i => best.Pieces[i])], suiting));
            }

            return open.GroupBy(o => (o.Kept, o.Options)).Select(g => demand with
            {
                Parts = [.. g.Select(o => o.Part)],
                Options = g.Key.Options,
                Kept = g.Key.Kept,
            });
        }

        private ValueList<PartOption> Options(PartDemand demand) =>
            demand.SightLineGroup is { } group && _lines.TryGetValue(group, out var line)
                ? [.. demand.Options.Where(o => o.Line is null || o.Line == line)]
                : demand.Options;

        /// <summary>Sawn pieces that an option of a part asks for, by their number in it.</summary>
        private Dictionary<int, SawnAt> Held(Part part, PartOption option)
        {
            var held = new Dictionary<int, SawnAt>();
            foreach (var (index, cut) in option.Pieces.Index())
            {
                var id = CopyBook.IdOf(part, index);
                if (_sawn[part.Id].FirstOrDefault(s => s.Piece.Id == id && s.Serves(part, cut, _demands.Material)) is { } there)
                    held.Add(index, there);
            }

            return held;
        }

        /// <summary>The line of a group to which most pieces were cut, among those that serve every part of it; null where none was cut.</summary>
        private long? LineOf(IReadOnlyList<PartDemand> group) =>
            group.SelectMany(d => d.Options).Select(o => o.Line).OfType<long>().Distinct()
                .Where(line => group.All(d => d.Options.Any(o => o.Line is null || o.Line == line)))
                .Select(line => (Line: (long?)line, Held: group.Sum(d => d.Parts.Sum(p => d.Options.Where(o => o.Line == line).Max(o => (int?)Held(p, o).Count) ?? 0))))
                .Where(l => l.Held > 0)
                .OrderByDescending(l => l.Held)
                .Select(l => l.Line)
                .FirstOrDefault();
    }
}
