using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;

namespace Casewright.Engine.Cutting;

/// <summary>One solution of one problem, step by step: first answer, quick bounds, search, proof.</summary>
internal sealed class CuttingRun
{
    private readonly ReducedProblem _problem;
    private readonly WorkBudget _budget;
    private readonly Incumbent _incumbent;
    private readonly SearchRandom _random;

    public CuttingRun(ReducedProblem problem, WorkBudget budget, ICuttingProgress? progress)
    {
        _problem = problem;
        _budget = budget;
        _incumbent = new Incumbent(problem, budget, progress);
        _random = new SearchRandom(problem.Source.Seed);
    }

    public CuttingOutcome Run()
    {
        var first = FirstOptions();
        for (var order = 0; order < 5; order++)
            Construct(first, order);
        QuickBounds();
        if (!_incumbent.IsProven)
            Improve(first);
        return Finish();
    }

    private void Construct(int[][] options, int order)
    {
        var search = new RuinAndRecreate(_problem, options, _random, _budget);
        if (search.Construct(order))
            _incumbent.Offer(search.State);
    }

    private void QuickBounds()
    {
        var sheets = DualFeasibleBound.Sheets(_problem, _budget);
        var cost = (sheets * _problem.Sheets.Min(s => s.Cost)) + _problem.Demands.Sum(d => d.Count * d.Options.Min(o => o.ExtraCost));
        _incumbent.Raise(cost, sheets);
    }

    private void Improve(int[][] options)
    {
        var search = new RuinAndRecreate(_problem, options, _random, _budget);
        search.Construct(0);
        while (!_incumbent.IsProven && !_budget.IsSpent)
        {
            var goal = _incumbent.Exists ? _incumbent.Cost - 1 : long.MaxValue;
            if (search.Reach(goal, long.MaxValue, 1))
                _incumbent.Offer(search.State);
        }
        Steps = search.Steps;
    }

    public static long Steps;

    // The option of least area and labour, the first of equals.
    private int[][] FirstOptions()
    {
        var sheet = _problem.Sheets[0];
        return [.. _problem.Demands.Select(d =>
        {
            var best = Enumerable.Range(0, d.Options.Length).MinBy(o => d.Options[o].ExtraCost + (sheet.Cost * d.Options[o].Kinds.Sum(k => _problem.Kinds[k].Area) / sheet.Area));
            var counts = new int[d.Options.Length];
            counts[best] = d.Count;
            return counts;
        })];
    }

    private CuttingOutcome Finish()
    {
        if (!_incumbent.Exists)
            return new CuttingOutcome(null, [new CuttingObstacle(ObstacleKind.NothingFound, _problem.Source.Sheets[0].Id, "No way was found to cut all parts from the sheets on hand.")]);
        var layouts = _incumbent.Layouts.Select(l => (l.Sheet, LayoutTidier.Tidy(l.Layout))).ToList();
        var solution = SolutionWriter.Write(
            _problem, layouts, _incumbent.OptionCounts, _incumbent.CostBound, _incumbent.SheetBound, _incumbent.IsProven, _budget.Spent);
        return new CuttingOutcome(solution, []);
    }
}
