using Casewright.Model.Collections;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>
/// Places tasks one by one as early as they go, most urgent first (least latest start, then the order of the problem): a first answer in
/// no time, and the horizon for the solver.
/// </summary>
internal sealed class ListScheduler
{
    private readonly SchedulingProblem _problem;
    private readonly long[] _starts;
    private readonly int[] _choices;
    private readonly List<CrewShare>[] _crews;
    private readonly UsageProfile[] _loads;
    private readonly List<int>[] _taking;
    private readonly List<int>[] _givingBack;
    private readonly List<TaskLink>[] _into;
    private readonly List<int>[] _ahead;
    private readonly ILookup<int, int> _turns;

    private ListScheduler(SchedulingProblem problem, ILookup<int, int> turns)
    {
        (_problem, _turns) = (problem, turns);
        _starts = [.. Enumerable.Repeat(-1L, problem.Tasks.Count)];
        _choices = [.. Enumerable.Repeat(-1, problem.Holds.Count)];
        _crews = [.. problem.Tasks.Select(_ => new List<CrewShare>())];
        _loads = [.. problem.Resources.Select(_ => new UsageProfile())];
        for (var r = 0; r < problem.Resources.Count; r++)
        {
            foreach (var away in problem.Resources[r].Away)
                _loads[r].Add(problem.Axis.AtOrAfter(away.Open), problem.Axis.AtOrAfter(away.Close), problem.Resources[r].Capacity);
        }

        _taking = [.. problem.Tasks.Select(_ => new List<int>())];
        _givingBack = [.. problem.Tasks.Select(_ => new List<int>())];
        for (var h = 0; h < problem.Holds.Count; h++)
        {
            _taking[problem.Holds[h].First].Add(h);
            if (problem.Holds[h].First != problem.Holds[h].Last)
                _givingBack[problem.Holds[h].Last].Add(h);
        }

        _into = [.. problem.Tasks.Select(_ => new List<TaskLink>())];
        foreach (var link in problem.Links)
            _into[link.After].Add(link);
        _ahead = [.. problem.Tasks.Select(_ => new List<int>())];
        foreach (var order in problem.Orders)
            _ahead[order.Second].Add(order.First);
    }

    /// <summary>
    /// The best of a number of list schedules: the plain one, and others whose urgencies are shaken with a fixed seed.
    /// </summary>
    /// <param name="problem">The problem.</param>
    /// <param name="tries">How many; at least 1.</param>
    /// <returns>Null when placing one by one runs into a dead end every time.</returns>
    public static SchedulingSolution? Schedule(SchedulingProblem problem, int tries = 1)
    {
        var tails = Tails(problem);
        var shaken = new ShakenOrder();
        var turns = HoldTurns.Of(problem);
        SchedulingSolution? best = null;
        for (var i = 0; i < tries; i++)
        {
            var urgency = tails.Select(t => i == 0 ? -t : -t * shaken.Next()).ToArray();
            if (new ListScheduler(problem, turns).Place(urgency) is { } next && (best is null || next.Makespan < best.Makespan))
                best = next;
        }

        return best;
    }

    private SchedulingSolution? Place(double[] urgency)
    {
        var waiting = Enumerable.Range(0, _problem.Tasks.Count).OrderBy(t => _problem.Tasks[t].FixedStart is null).ThenBy(t => urgency[t]).ThenBy(t => t).ToList();
        while (waiting.Count > 0)
        {
            var at = waiting.FindIndex(TryPlace);
            if (at < 0)
                return null;
            waiting.RemoveAt(at);
        }

        return Read();
    }

    /// <summary>The longest chain of work and lags from the start of each task to the end of all.</summary>
    private static double[] Tails(SchedulingProblem problem)
    {
        var tail = problem.Tasks.Select(t => t.Duration).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var link in problem.Links)
            {
                var through = problem.Tasks[link.Before].Duration + link.Least + tail[link.After];
                if (through > tail[link.Before])
                {
                    tail[link.Before] = through;
                    changed = true;
                }
            }
        }

        return [.. tail.Select(t => (double)t)];
    }

    /// <summary>Factors around 1 from a linear congruential generator (Knuth's MMIX constants), the same in every run and on every platform.</summary>
    private sealed class ShakenOrder
    {
        private ulong _state = 1;

        public double Next()
        {
            _state = (_state * 6364136223846793005UL) + 1442695040888963407UL;
            return 0.75 + ((_state >> 11) * (0.5 / (1UL << 53)));
        }
    }

    private bool TryPlace(int t)
    {
        if (_into[t].Exists(l => _starts[l.Before] < 0) || _ahead[t].Exists(a => _starts[a] < 0))
            return false;
        var task = _problem.Tasks[t];
        if (task.FixedStart is { } settled)
            return Take(t, settled, force: true);
        if (_turns[t].Any(first => _starts[first] < 0))
            return false;
        var start = _problem.Axis.AtOrAfter(task.Release);
        foreach (var link in _into[t])
            start = Math.Max(start, _problem.Axis.AtOrAfter(Clock(link.Before) + link.Least));
        foreach (var first in _ahead[t])
            start = Math.Max(start, _starts[first]);
        while (start + task.Duration <= _problem.Axis.Length)
        {
            var unbroken = Unbroken(task, start);
            if (unbroken != start)
            {
                start = unbroken;
                continue;
            }

            if (Take(t, start, force: false))
                return WithinMost(t);
            if (NextEvent(start) is not { } later)
                return false;
            start = later;
        }

        return false;
    }

    private long Clock(int task)
    {
        var end = _starts[task] + _problem.Tasks[task].Duration;
        return _problem.Tasks[task].Duration == 0 && end < _problem.Axis.Length ? _problem.Axis.ClockAtStart(end) : _problem.Axis.ClockAtEnd(end);
    }

    private long Unbroken(SchedulingTask task, long start)
    {
        if (task.Breakable || task.Duration == 0)
            return start;
        var k = _problem.Axis.StretchAt(start);
        var close = _problem.Axis.Before(k) + _problem.Axis.Stretches[k].Length;
        return start + task.Duration <= close ? start : close;
    }

    private bool WithinMost(int t) =>
        _into[t].TrueForAll(l => l.Most is not { } most || _problem.Axis.ClockAtStart(_starts[t]) <= Clock(l.Before) + most);

    private bool Take(int t, long start, bool force)
    {
        var task = _problem.Tasks[t];
        var end = start + task.Duration;
        var crew = new List<CrewShare>();
        if (task.Duration > 0 && !TakeCrew(task, start, end, crew) && !force)
            return false;

        var taken = new List<(int Hold, int Resource)>();
        foreach (var h in _taking[t])
        {
            var hold = _problem.Holds[h];
            var until = hold.Last == t ? end : long.MaxValue;
            var resource = hold.Options.FirstOrDefault(r => Free(r, start, until) - taken.Where(x => x.Resource == r).Sum(x => _problem.Holds[x.Hold].Amount) >= hold.Amount, -1);
            if (resource < 0 && !force)
                return false;
            taken.Add((h, resource < 0 ? hold.Options[0] : resource));
        }

        _starts[t] = start;
        foreach (var share in crew)
            _loads[share.Resource].Add(start, end, share.Count);
        _crews[t] = crew;
        foreach (var (h, resource) in taken)
        {
            _choices[h] = resource;
            _loads[resource].Add(start, _problem.Holds[h].Last == t ? end : long.MaxValue, _problem.Holds[h].Amount);
        }

        Release(t, end);
        return true;
    }

    private bool TakeCrew(SchedulingTask task, long start, long end, List<CrewShare> crew)
    {
        foreach (var need in task.Crew)
        {
            var missing = need.Count;
            foreach (var r in need.Eligible)
            {
                var count = Math.Clamp(Free(r, start, end) - crew.Where(c => c.Resource == r).Sum(c => c.Count), 0, missing);
                if (count > 0)
                    crew.Add(new(r, count));
                missing -= count;
            }

            if (missing > 0)
                return false;
        }

        return true;
    }

    /// <summary>Ends the holds that were open until the end of this task was known.</summary>
    private void Release(int t, long end)
    {
        foreach (var h in _givingBack[t])
            _loads[_choices[h]].Add(end, long.MaxValue, -_problem.Holds[h].Amount);
    }

    private int Free(int resource, long from, long to) => _problem.Resources[resource].Capacity - _loads[resource].Most(from, to);

    private long? NextEvent(long after) => _loads.Min(l => l.NextRelease(after));

    private SchedulingSolution? Read()
    {
        var placements = _starts.Select((s, t) => new TaskPlacement(s, s + _problem.Tasks[t].Duration, _crews[t].ToValueList())).ToValueList();
        var makespan = placements.Count == 0 ? 0 : placements.Max(p => p.End);
        for (var t = 0; t < placements.Count; t++)
        {
            if (!WithinMost(t))
                return null;
        }

        return new(placements, _choices.ToValueList(), makespan, 0, false, 0);
    }
}
