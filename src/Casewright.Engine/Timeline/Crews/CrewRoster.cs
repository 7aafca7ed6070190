using Casewright.Engine.Timeline.Scheduling;
using Casewright.Model.Collections;

namespace Casewright.Engine.Timeline.Crews;

/// <summary>Names the people at every task: of those of the class who are free, who has had the least to do so far.</summary>
internal static class CrewRoster
{
    /// <summary>Ids of the people at each task, who leads first, in the order of the tasks.</summary>
    /// <param name="solution">The schedule.</param>
    /// <param name="classes">Classes of people; their resources come first in the problem, in this order.</param>
    public static IReadOnlyList<ValueList<string>> Assign(SchedulingSolution solution, IReadOnlyList<CrewClass> classes)
    {
        var people = solution.Tasks.Select(_ => ValueList<string>.Empty).ToArray();
        var freeFrom = classes.Select(c => new long[c.People.Count]).ToArray();
        var worked = classes.Select(c => new long[c.People.Count]).ToArray();
        foreach (var t in Enumerable.Range(0, people.Length).OrderBy(t => solution.Tasks[t].Start).ThenBy(t => t))
        {
            var (start, end) = (solution.Tasks[t].Start, solution.Tasks[t].End);
            foreach (var share in solution.Tasks[t].Crew)
            {
                var free = Enumerable.Range(0, classes[share.Resource].People.Count)
                    .Where(p => freeFrom[share.Resource][p] <= start)
                    .OrderBy(p => worked[share.Resource][p])
                    .ThenBy(p => p)
                    .Take(share.Count);
                foreach (var p in free.ToList())
                {
                    freeFrom[share.Resource][p] = end;
                    worked[share.Resource][p] += end - start;
                    people[t] = people[t].Add(classes[share.Resource].People[p]);
                }
            }
        }

        return people;
    }
}
