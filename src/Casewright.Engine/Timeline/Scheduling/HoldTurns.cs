namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>
/// Whose turn it is where something is kept until a later task: floor is kept from the assembly of a case to the delivery of its lot. Two lots
/// that had half the floor each would wait for ever, so the lot that is delivered first takes its places first.
/// </summary>
internal static class HoldTurns
{
    /// <summary>For each task that takes something: the tasks that take of the same before it.</summary>
    public static ILookup<int, int> Of(SchedulingProblem problem)
    {
        var following = problem.Links.ToLookup(l => l.Before, l => l.After);
        var kept = problem.Holds.Where(h => h.First != h.Last).ToList();
        var reached = kept.SelectMany(h => new[] { h.First, h.Last }).Distinct().ToDictionary(t => t, t => Reached(following, t));
        var turns =
            from later in kept
            where problem.Tasks[later.First].FixedStart is null
            from earlier in kept
            where earlier.First != later.First
                && reached[earlier.Last].Contains(later.Last)
                && !reached[later.First].Contains(earlier.First)
                && earlier.Options.Any(later.Options.Contains)
            select (later.First, Before: earlier.First);
        return turns.Distinct().ToLookup(t => t.First, t => t.Before);
    }

    /// <summary>All tasks that follow another, one link or more away.</summary>
    private static HashSet<int> Reached(ILookup<int, int> following, int from)
    {
        var reached = new HashSet<int>();
        var open = new Stack<int>(following[from]);
        while (open.TryPop(out var task))
        {
            if (!reached.Add(task))
                continue;
            foreach (var next in following[task])
                open.Push(next);
        }

        return reached;
    }
}
