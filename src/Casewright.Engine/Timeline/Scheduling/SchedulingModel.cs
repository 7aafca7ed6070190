using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace Casewright.Engine.Timeline.Scheduling;

/// <summary>A scheduling problem as a constraint model: a start for every task, intervals on every resource, lags as curves.</summary>
internal sealed class SchedulingModel
{
    private readonly SchedulingProblem _problem;
    private readonly long _horizon;
    private readonly IntervalVar[] _intervals;
    private readonly List<(int Resource, BoolVar Chosen)>[] _holdOptions;
    private readonly List<(int Resource, LinearExpr Count)>[] _crews;
    private readonly List<(IntervalVar Interval, LinearExpr Amount, bool Whole)>[] _loads;
    private readonly Dictionary<(int Task, long From), BoolVar> _endsAtOrAfter = [];
    private readonly Dictionary<(long Lag, bool Earliest), LagCurve> _curves = [];

    public SchedulingModel(SchedulingProblem problem, long horizon)
    {
        _problem = problem;
        _horizon = horizon;
        var tasks = problem.Tasks;
        Starts = new LinearExpr[tasks.Count];
        _intervals = new IntervalVar[tasks.Count];
        _crews = [.. tasks.Select(_ => new List<(int, LinearExpr)>())];
        _holdOptions = [.. problem.Holds.Select(_ => new List<(int, BoolVar)>())];
        _loads = [.. problem.Resources.Select(_ => new List<(IntervalVar, LinearExpr, bool)>())];
        Makespan = Model.NewIntVar(0, horizon, "makespan");
        for (var t = 0; t < tasks.Count; t++)
            AddTask(t);
        for (var t = 0; t < tasks.Count; t++)
            AddCrew(t);
        for (var h = 0; h < problem.Holds.Count; h++)
            AddHold(h);
        AddAbsences();
        AddResources();
        foreach (var link in problem.Links)
            AddLink(link);
        foreach (var order in problem.Orders)
            Model.Add(Starts[order.First] <= Starts[order.Second]);
    }

    public CpModel Model { get; } = new();

    public LinearExpr[] Starts { get; }

    public IntVar Makespan { get; }

    public IReadOnlyList<(int Resource, BoolVar Chosen)> HoldOptions(int hold) => _holdOptions[hold];

    public IReadOnlyList<(int Resource, LinearExpr Count)> Crew(int task) => _crews[task];

    public LinearExpr End(int task) => Starts[task] + _problem.Tasks[task].Duration;

    /// <summary>Adds the load of every day, counted where a task begins, and returns the highest of them in whole steps.</summary>
    public IntVar AddPeakLoad()
    {
        var days = _problem.DayStarts.Where(d => d < _horizon).ToArray();
        var peak = Model.NewIntVar(0, _problem.Tasks.Sum(t => t.Duration * t.Hands), "peak");
        var loads = days.Select(_ => new List<LinearExpr>()).ToArray();
        for (var t = 0; t < _problem.Tasks.Count; t++)
        {
            var work = _problem.Tasks[t].Duration * _problem.Tasks[t].Hands;
            if (work == 0)
                continue;
            var begins = days.Select((_, d) => Model.NewBoolVar($"begins{t}_{d}")).ToArray();
            Model.AddExactlyOne(begins);
            for (var d = 0; d < days.Length; d++)
            {
                var next = d + 1 < days.Length ? days[d + 1] : _horizon + 1;
                Model.AddLinearConstraint(Starts[t], days[d], next - 1).OnlyEnforceIf(begins[d]);
                loads[d].Add(begins[d] * work);
            }
        }

        foreach (var load in loads)
            Model.Add(LinearExpr.Sum(load) <= peak * _problem.LoadStep);
        return peak;
    }

    private void AddTask(int t)
    {
        var task = _problem.Tasks[t];
        if (task.FixedStart is { } fixedAt)
        {
            Starts[t] = Model.NewConstant(fixedAt);
        }
        else
        {
            var earliest = _problem.Axis.AtOrAfter(task.Release);
            Starts[t] = Model.NewIntVarFromDomain(StartDomain(task, earliest), "s" + t);
        }

        _intervals[t] = Model.NewFixedSizeIntervalVar(Starts[t], task.Duration, "i" + t);
        Model.Add(End(t) <= Makespan);
    }

    private Domain StartDomain(SchedulingTask task, long earliest)
    {
        if (task.Breakable || task.Duration == 0)
            return new Domain(earliest, _horizon - task.Duration);
        var windows = _problem.Axis.Windows(_horizon)
            .Select(w => new[] { Math.Max(w.From, earliest), w.To - task.Duration })
            .Where(w => w[0] <= w[1])
            .ToArray();
        return Domain.FromIntervals(windows);
    }

    private void AddCrew(int t)
    {
        if (_problem.Tasks[t].Duration == 0)
            return;
        for (var n = 0; n < _problem.Tasks[t].Crew.Count; n++)
            AddNeed(t, n, _problem.Tasks[t].Crew[n]);
    }

    private void AddNeed(int t, int n, CrewNeed need)
    {
        var whole = need.Eligible.Sum(r => _problem.Resources[r].Capacity);
        if (need.Eligible.Count == 1 || whole == need.Count)
        {
            foreach (var r in need.Eligible)
            {
                var count = need.Eligible.Count == 1 ? need.Count : _problem.Resources[r].Capacity;
                Engage(t, r, LinearExpr.Constant(count), _intervals[t]);
            }
        }
        else if (need.Count == 1)
        {
            var chosen = need.Eligible.Select(r => Model.NewBoolVar($"crew{t}_{n}_{r}")).ToArray();
            Model.AddExactlyOne(chosen);
            for (var c = 0; c < chosen.Length; c++)
            {
                var name = $"crew{t}_{n}_{need.Eligible[c]}";
                var optional = Model.NewOptionalFixedSizeIntervalVar(Starts[t], _problem.Tasks[t].Duration, chosen[c], name);
                _crews[t].Add((need.Eligible[c], chosen[c]));
                _loads[need.Eligible[c]].Add((optional, LinearExpr.Constant(1), true));
            }
        }
        else
        {
            var counts = need.Eligible.Select(r => Model.NewIntVar(0, Math.Min(need.Count, _problem.Resources[r].Capacity), $"crew{t}_{n}_{r}")).ToArray();
            Model.Add(LinearExpr.Sum(counts) == need.Count);
            for (var c = 0; c < counts.Length; c++)
                Engage(t, need.Eligible[c], counts[c], _intervals[t]);
        }
    }

    private void Engage(int task, int resource, LinearExpr count, IntervalVar interval)
    {
        _crews[task].Add((resource, count));
        _loads[resource].Add((interval, count, false));
    }

    private void AddHold(int h)
    {
        var hold = _problem.Holds[h];
        var interval = _intervals[hold.First];
        var size = Model.NewConstant(_problem.Tasks[hold.First].Duration);
        if (hold.First != hold.Last)
        {
            size = Model.NewIntVar(_problem.Tasks[hold.First].Duration + _problem.Tasks[hold.Last].Duration, Math.Max(_horizon, 0), "held" + h);
            interval = Model.NewIntervalVar(Starts[hold.First], size, End(hold.Last), "hold" + h);
        }

        if (hold.Options.Count == 1)
        {
            _loads[hold.Options[0]].Add((interval, LinearExpr.Constant(hold.Amount), false));
            return;
        }

        var chosen = hold.Options.Select(r => Model.NewBoolVar($"hold{h}_{r}")).ToArray();
        Model.AddExactlyOne(chosen);
        for (var c = 0; c < chosen.Length; c++)
        {
            var optional = Model.NewOptionalIntervalVar(Starts[hold.First], size, End(hold.Last), chosen[c], $"hold{h}_{hold.Options[c]}");
            _holdOptions[h].Add((hold.Options[c], chosen[c]));
            _loads[hold.Options[c]].Add((optional, LinearExpr.Constant(hold.Amount), false));
        }
    }

    private void AddAbsences()
    {
        for (var r = 0; r < _problem.Resources.Count; r++)
        {
            foreach (var away in _problem.Resources[r].Away)
            {
                var (from, to) = (_problem.Axis.AtOrAfter(away.Open), Math.Min(_horizon, _problem.Axis.AtOrAfter(away.Close)));
                if (from < to)
                    _loads[r].Add((Model.NewFixedSizeIntervalVar(from, to - from, $"away{r}"), LinearExpr.Constant(_problem.Resources[r].Capacity), false));
            }
        }
    }

    private void AddResources()
    {
        for (var r = 0; r < _loads.Length; r++)
        {
            if (_loads[r].Count == 0)
                continue;
            if (_problem.Resources[r].Capacity == 1 && _loads[r].TrueForAll(l => l.Whole))
            {
                Model.AddNoOverlap(_loads[r].Select(l => l.Interval));
                continue;
            }

            var cumulative = Model.AddCumulative(_problem.Resources[r].Capacity);
            foreach (var (interval, amount, _) in _loads[r])
                cumulative.AddDemand(interval, amount);
        }

        AddAllHands();
    }

    /// <summary>People of several classes taken together: adds nothing new, but bounds the whole at once.</summary>
    private void AddAllHands()
    {
        var classes = _problem.Tasks.SelectMany(t => t.Crew).SelectMany(c => c.Eligible).Distinct().ToArray();
        if (classes.Length < 2)
            return;
        var all = Model.AddCumulative(classes.Sum(c => _problem.Resources[c].Capacity));
        for (var t = 0; t < _problem.Tasks.Count; t++)
        {
            if (_problem.Tasks[t] is { Hands: > 0, Duration: > 0 } task)
                all.AddDemand(_intervals[t], task.Hands);
        }
    }

    private void AddLink(TaskLink link)
    {
        if (link.Least == 0)
            Model.Add(Starts[link.After] >= End(link.Before));
        else
            AddCurve(link, Curve(link.Least, earliest: true), earliest: true);
        if (link.Most is { } most)
            AddCurve(link, Curve(most, earliest: false), earliest: false);
    }

    private LagCurve Curve(long lag, bool earliest)
    {
        if (!_curves.TryGetValue((lag, earliest), out var curve))
        {
            curve = earliest ? LagCurve.Earliest(_problem.Axis, lag, _horizon) : LagCurve.Latest(_problem.Axis, lag, _horizon);
            _curves[(lag, earliest)] = curve;
        }

        return curve;
    }

    private void AddCurve(TaskLink link, LagCurve curve, bool earliest)
    {
        var pieces = curve.Pieces;
        var shortest = pieces.Min(p => p.At(earliest ? p.To : p.From) - (earliest ? p.To : p.From));
        if (earliest)
            Model.Add(Starts[link.After] >= End(link.Before) + shortest);
        for (var i = 0; i < pieces.Count; i++)
        {
            var piece = pieces[i];
            var reached = i == 0 ? null : EndsAtOrAfter(link.Before, piece.From);
            var passed = i + 1 == pieces.Count ? null : EndsAtOrAfter(link.Before, pieces[i + 1].From);
            if (earliest)
            {
                if (piece.Flat)
                    Enforce(Model.Add(Starts[link.After] >= piece.Value), reached, null);
                else if (piece.Value > shortest || pieces.Count == 1)
                    Enforce(Model.Add(Starts[link.After] >= End(link.Before) + piece.Value), reached, passed);
            }
            else if (piece.Flat)
            {
                Enforce(Model.Add(Starts[link.After] <= piece.Value), null, passed);
            }
            else
            {
                Enforce(Model.Add(Starts[link.After] <= End(link.Before) + piece.Value), reached, passed);
            }
        }
    }

    private static void Enforce(Constraint constraint, BoolVar? reached, BoolVar? passed)
    {
        var literals = new List<ILiteral>();
        if (reached is not null)
            literals.Add(reached);
        if (passed is not null)
            literals.Add(passed.Not());
        if (literals.Count > 0)
            constraint.OnlyEnforceIf([.. literals]);
    }

    private BoolVar EndsAtOrAfter(int task, long from)
    {
        if (_endsAtOrAfter.TryGetValue((task, from), out var known))
            return known;
        var literal = Model.NewBoolVar($"end{task}_{from}");
        Model.Add(End(task) >= from).OnlyEnforceIf(literal);
        Model.Add(End(task) < from).OnlyEnforceIf(literal.Not());
        return _endsAtOrAfter[(task, from)] = literal;
    }
}
