namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>
/// A finish that no schedule beats, from work and hands alone: what cannot begin before a time, and has something to follow it, is so much
/// work for so many hands. The classic head, body and tail bound of machine scheduling (Carlier 1982), taken over hands of each skill.
/// </summary>
internal static class WorkBound
{
    /// <summary>The bound, in working time.</summary>
    public static long Of(SchedulingProblem problem)
    {
        var order = Order(problem);
        var (heads, tails) = (Heads(problem, order), Tails(problem, order));
        var chain = Enumerable.Range(0, problem.Tasks.Count).Select(t => heads[t] + tails[t]).DefaultIfEmpty(0).Max();
        return Math.Max(chain, Groups(problem).Select(g => OfGroup(g.Capacity, g.Work(heads, tails))).DefaultIfEmpty(0).Max());
    }

    /// <summary>Hands that a need may come from, and everything that must come from them and nobody else.</summary>
    private static IEnumerable<HandGroup> Groups(SchedulingProblem problem)
    {
        var needs = problem.Tasks.SelectMany(t => t.Crew).Select(c => c.Eligible).ToList();
        var sets = needs.Append([.. needs.SelectMany(e => e).Distinct().Order()]).Select(e => e.Order().ToArray()).DistinctBy(e => string.Join(',', e), StringComparer.Ordinal);
        return sets.Where(s => s.Length > 0).Select(set => new HandGroup(problem, set));
    }

    /// <summary>For every tail from the longest down: the work with no shorter one, from the latest head back.</summary>
    private static long OfGroup(int capacity, List<(long Head, long After, long Work)> work)
    {
        var best = 0L;
        foreach (var after in work.Select(w => w.After).Distinct())
        {
            var sum = 0L;
            foreach (var item in work.Where(w => w.After >= after).OrderByDescending(w => w.Head))
            {
                sum += item.Work;
                best = Math.Max(best, item.Head + ((sum + capacity - 1) / capacity) + after);
            }
        }

        return best;
    }

    /// <summary>The earliest working time at which each task can begin, as if there were hands for all.</summary>
    private static long[] Heads(SchedulingProblem problem, List<int> order)
    {
        var heads = new long[problem.Tasks.Count];
        var into = problem.Links.ToLookup(l => l.After);
        foreach (var t in order)
        {
            var task = problem.Tasks[t];
            if (task.FixedStart is { } settled)
            {
                heads[t] = settled;
                continue;
            }

            heads[t] = problem.Axis.AtOrAfter(task.Release);
            foreach (var link in into[t])
            {
                var end = heads[link.Before] + problem.Tasks[link.Before].Duration;
                heads[t] = Math.Max(heads[t], link.Least == 0 ? end : problem.Axis.AtOrAfter(problem.Axis.ClockAtEnd(end) + link.Least));
            }
        }

        return heads;
    }

    /// <summary>Working time from the start of each task to the end of all at the least; a lag counts with what it takes at its best hour.</summary>
    private static long[] Tails(SchedulingProblem problem, List<int> order)
    {
        var tails = problem.Tasks.Select(t => t.Duration).ToArray();
        var least = problem.Links.Select(l => l.Least).Distinct().ToDictionary(l => l, l => LeastWork(problem.Axis, l));
        var from = problem.Links.ToLookup(l => l.Before);
        foreach (var t in Enumerable.Reverse(order))
        {
            foreach (var link in from[t])
                tails[t] = Math.Max(tails[t], problem.Tasks[t].Duration + least[link.Least] + tails[link.After]);
        }

        return tails;
    }

    private static long LeastWork(WorkAxis axis, long lag)
    {
        if (lag == 0)
            return 0;
        var pieces = LagCurve.Earliest(axis, lag, axis.Length - 1).Pieces;

        // What would begin beyond the end of the axis cannot begin at all.
        return pieces.Where(p => p.At(p.From) < axis.Length).Select(p => p.Flat ? p.Value - p.To : p.Value).DefaultIfEmpty(0).Min();
    }

    /// <summary>The tasks so that each comes after all that it waits for.</summary>
    private static List<int> Order(SchedulingProblem problem)
    {
        var waits = new int[problem.Tasks.Count];
        foreach (var link in problem.Links)
            waits[link.After]++;
        var from = problem.Links.ToLookup(l => l.Before, l => l.After);
        var order = Enumerable.Range(0, waits.Length).Where(t => waits[t] == 0).ToList();
        for (var i = 0; i < order.Count; i++)
        {
            foreach (var next in from[order[i]])
            {
                if (--waits[next] == 0)
                    order.Add(next);
            }
        }

        return order;
    }

    private sealed record HandGroup(SchedulingProblem Problem, int[] Resources)
    {
        public int Capacity => Resources.Sum(r => Problem.Resources[r].Capacity);

        public List<(long Head, long After, long Work)> Work(long[] heads, long[] tails)
        {
            var work = new List<(long, long, long)>();
            for (var t = 0; t < Problem.Tasks.Count; t++)
            {
                var task = Problem.Tasks[t];
                var hands = task.Crew.Where(c => c.Eligible.All(Resources.Contains)).Sum(c => c.Count);
                if (hands > 0 && task.Duration > 0 && Capacity > 0)
                    work.Add((heads[t], tails[t] - task.Duration, task.Duration * hands));
            }

            return work;
        }
    }
}
