namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>Proves a schedule against its problem, written apart from the solver: every rule is looked at again, moment by moment.</summary>
public static class ScheduleVerifier
{
    /// <summary>The rules that a schedule breaks, in plain sentences; empty when it keeps all.</summary>
    public static IReadOnlyList<string> Check(SchedulingProblem problem, SchedulingSolution solution)
    {
        var faults = new List<string>();
        CheckTasks(problem, solution, faults);
        CheckLinks(problem, solution, faults);
        CheckResources(problem, solution, faults);
        return faults;
    }

    private static void CheckTasks(SchedulingProblem problem, SchedulingSolution solution, List<string> faults)
    {
        for (var t = 0; t < problem.Tasks.Count; t++)
        {
            var (task, place) = (problem.Tasks[t], solution.Tasks[t]);
            if (place.End - place.Start != task.Duration || place.Start < 0 || place.End > solution.Makespan)
                faults.Add($"{task.Id} does not last its time, or lies outside the schedule.");
            if (task.FixedStart is { } settled)
            {
                if (settled != place.Start)
                    faults.Add($"{task.Id} was settled and has been moved.");
                continue;
            }

            if (place.Start < problem.Axis.Length && problem.Axis.ClockAtStart(place.Start) < task.Release)
                faults.Add($"{task.Id} begins before its release.");
            if (!task.Breakable && task.Duration > 0 && problem.Axis.StretchAt(place.Start) != problem.Axis.StretchAt(place.End - 1))
                faults.Add($"{task.Id} is interrupted.");
            if (task.Duration > 0 && !CrewSuffices(task, place))
                faults.Add($"{task.Id} has not the people that it needs.");
        }

        foreach (var order in problem.Orders.Where(o => solution.Tasks[o.First].Start > solution.Tasks[o.Second].Start))
            faults.Add($"{problem.Tasks[order.First].Id} begins after {problem.Tasks[order.Second].Id}.");
    }

    /// <summary>Whether the people at a task can be dealt out to its needs, one need after another in every order of dealing.</summary>
    private static bool CrewSuffices(SchedulingTask task, TaskPlacement place)
    {
        var there = place.Crew.SelectMany(c => Enumerable.Repeat(c.Resource, c.Count)).ToList();
        var wanted = task.Crew.SelectMany(c => Enumerable.Repeat(c.Eligible, c.Count)).ToList();
        return there.Count == wanted.Count && Deal(0);

        bool Deal(int at)
        {
            if (at == wanted.Count)
                return true;
            for (var i = 0; i < there.Count; i++)
            {
                var person = there[i];
                if (!wanted[at].Contains(person))
                    continue;
                there.RemoveAt(i);
                if (Deal(at + 1))
                    return true;
                there.Insert(i, person);
            }

            return false;
        }
    }

    private static void CheckLinks(SchedulingProblem problem, SchedulingSolution solution, List<string> faults)
    {
        foreach (var link in problem.Links.Where(l => problem.Tasks[l.After].FixedStart is null))
        {
            var (before, after) = (solution.Tasks[link.Before], solution.Tasks[link.After]);
            if (after.Start < before.End)
                faults.Add($"{problem.Tasks[link.After].Id} begins before {problem.Tasks[link.Before].Id} has ended.");
            if (after.Start >= problem.Axis.Length || (link.Least == 0 && link.Most is null))
                continue;
            var passed = problem.Axis.ClockAtStart(after.Start) - problem.Axis.ClockAtEnd(before.End);
            if (passed < link.Least || passed > (link.Most ?? long.MaxValue))
                faults.Add($"{passed} pass between {problem.Tasks[link.Before].Id} and {problem.Tasks[link.After].Id}.");
        }
    }

    private static void CheckResources(SchedulingProblem problem, SchedulingSolution solution, List<string> faults)
    {
        for (var r = 0; r < problem.Resources.Count; r++)
        {
            var loads = Loads(problem, solution, r).Where(l => l.From < l.To).ToList();
            foreach (var at in loads.Select(l => l.From).Distinct())
            {
                var sum = loads.Where(l => l.From <= at && at < l.To).Sum(l => l.Amount);
                if (sum > problem.Resources[r].Capacity)
                    faults.Add($"{sum} of {problem.Resources[r].Id} are in use at {at}; there are {problem.Resources[r].Capacity}.");
            }
        }
    }

    private static IEnumerable<(long From, long To, int Amount)> Loads(SchedulingProblem problem, SchedulingSolution solution, int resource)
    {
        for (var t = 0; t < problem.Tasks.Count; t++)
        {
            foreach (var share in solution.Tasks[t].Crew.Where(c => c.Resource == resource))
                yield return (solution.Tasks[t].Start, solution.Tasks[t].End, share.Count);
        }

        for (var h = 0; h < problem.Holds.Count; h++)
        {
            if (solution.HoldChoices[h] == resource)
                yield return (solution.Tasks[problem.Holds[h].First].Start, solution.Tasks[problem.Holds[h].Last].End, problem.Holds[h].Amount);
        }

        foreach (var away in problem.Resources[resource].Away)
            yield return (problem.Axis.AtOrAfter(away.Open), problem.Axis.AtOrAfter(away.Close), problem.Resources[resource].Capacity);
    }
}
