using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;
using Google.OrTools.Graph;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Makes chosen layouts hold exactly the pieces wanted: pieces too many give their places to smaller ones still missing.</summary>
internal static class PieceExchange
{
    /// <summary>Fits layouts to what is wanted; the layouts left empty go. Pieces still missing are those that no place can be found for.</summary>
    public static List<(int Sheet, LayoutTree Layout)> Fit(ReducedProblem problem, List<(int Sheet, LayoutTree Layout)> layouts, int[] wanted)
    {
        var spare = new int[wanted.Length];
        foreach (var (_, layout) in layouts)
            layout.Count(spare);
        for (var k = 0; k < spare.Length; k++)
            spare[k] -= wanted[k];
        var moves = Moves(problem, spare);
        var exchanged = layouts.Select(l => (l.Sheet, Layout: l.Layout.With(kind =>
        {
            if (moves[kind].Count == 0)
                return (kind, 0, 0);
            var other = moves[kind].Dequeue();
            return (other, problem.Kinds[other].SizeX, problem.Kinds[other].SizeY);
        }))).ToList();
        // What is still too many becomes rest.
        var surplus = spare.Select(n => Math.Max(0, n)).ToArray();
        return [.. exchanged.Select(l => (l.Sheet, Layout: l.Layout.Without(surplus))).Where(l => l.Layout is not null).Select(l => (l.Sheet, l.Layout!))];
    }

    // The most pieces that can be given places, as a flow from places too many to pieces missing.
    private static Queue<int>[] Moves(ReducedProblem problem, int[] spare)
    {
        var kinds = problem.Kinds;
        var moves = spare.Select(_ => new Queue<int>()).ToArray();
        var missing = Enumerable.Range(0, spare.Length).Where(k => spare[k] < 0).ToArray();
        var places = Enumerable.Range(0, spare.Length).Where(k => spare[k] > 0).ToArray();
        if (missing.Length == 0 || places.Length == 0)
            return moves;
        var flow = new MaxFlow();
        var (source, sink) = (missing.Length + places.Length, missing.Length + places.Length + 1);
        for (var p = 0; p < places.Length; p++)
            flow.AddArcWithCapacity(source, missing.Length + p, spare[places[p]]);
        for (var m = 0; m < missing.Length; m++)
            flow.AddArcWithCapacity(m, sink, -spare[missing[m]]);
        var arcs = new List<(int Arc, int Place, int Missing)>();
        for (var p = 0; p < places.Length; p++)
        {
            for (var m = 0; m < missing.Length; m++)
            {
                if (Exchanges.Holds(kinds[places[p]], kinds[missing[m]]))
                    arcs.Add((flow.AddArcWithCapacity(missing.Length + p, m, spare[places[p]]), places[p], missing[m]));
            }
        }

        if (arcs.Count == 0 || flow.Solve(source, sink) != MaxFlow.Status.OPTIMAL)
            return moves;
        foreach (var (arc, place, wants) in arcs)
        {
            for (var n = flow.Flow(arc); n > 0; n--)
            {
                moves[place].Enqueue(wants);
                spare[place]--;
                spare[wants]++;
            }
        }

        return moves;
    }
}
