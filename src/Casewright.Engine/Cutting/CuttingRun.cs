using System.Globalization;
using Casewright.Engine.Cutting.Boards;
using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;

namespace Casewright.Engine.Cutting;

/// <summary>One solution of one problem, step by step: first answer, quick bounds, search, proof.</summary>
internal sealed class CuttingRun
{
    private const int MostColumns = 4000;
    private readonly ReducedProblem _problem;
    private readonly WorkBudget _budget;
    private readonly Incumbent _incumbent;
    private readonly SearchRandom _random;
    private readonly PatternPool _pool;
    private readonly RunBounds _bounds;

    public CuttingRun(ReducedProblem problem, WorkBudget budget, ICuttingProgress? progress)
    {
        _problem = problem;
        _budget = budget;
        _incumbent = new Incumbent(problem, budget, progress);
        _random = new SearchRandom(problem.Source.Seed);
        _pool = new PatternPool(problem);
        _bounds = new RunBounds(problem, budget, _pool, _incumbent);
    }

    public CuttingOutcome Run() => Search() is null ? new CuttingOutcome(null, [Obstacle()]) : Finish();

    /// <summary>Searches; null when nothing was found.</summary>
    public Incumbent? Search()
    {
        var first = FirstOptions.Of(_problem);
        if (StartAnswer.Of(_problem, first) is { } start)
            first = Begin(start);
        for (var order = 0; order < 5; order++)
            Construct(first, order);
        _bounds.Quick();
        if (!_incumbent.IsProven)
            Improve(first);
        return _incumbent.Exists ? _incumbent : null;
    }

    // Takes up an earlier answer; pieces that have no place in it go where they fit, or on further sheets.
    private int[][] Begin(StartAnswer start)
    {
        var search = new RuinAndRecreate(_problem, start.OptionCounts, _random, _budget);
        search.Load(start.Layouts);
        if (search.Construct(0))
            _incumbent.Offer(search.State);
        foreach (var (sheet, layout) in start.Layouts)
            _pool.Add(sheet, layout);
        return start.OptionCounts;
    }

    private void Construct(int[][] options, int order)
    {
        var search = new RuinAndRecreate(_problem, options, _random, _budget);
        if (search.Construct(order))
            _incumbent.Offer(search.State);
    }

    // Search, bound and integer programme in turn, until the answer is proven or the effort is used up.
    private void Improve(int[][] options)
    {
        var search = _problem.Source.Start is null ? Search(options, PiecesDiffer ? 0.5 : 0.06) : null;
        if (_incumbent.IsProven || _budget.IsSpent)
            return;
        _bounds.OfCosts();
        if (_problem.OptionsFixed && !PiecesDiffer)
            Dive(options, 0, _budget.PartSpent + (_problem.IsBoards ? 0.3 : 0.15));
        var settled = long.MaxValue;
        for (var round = 1; !_bounds.StockRunsOut && !_incumbent.IsProven && !_budget.IsSpent; round++)
        {
            if (Choose(round) && !_problem.OptionsFixed)
                options = _incumbent.OptionCounts;
            if (_problem.IsBoards && round > 1 && !_incumbent.IsProven && _incumbent.Cost < settled)
            {
                settled = _incumbent.Cost;
                new BoardProof(_problem, _budget, _incumbent, _bounds).Run();
            }

            _bounds.ByNumber();
            if (_incumbent.IsProven || _budget.IsSpent)
                break;
            var part = _budget.PartSpent + Math.Max(0.25 * (1 - _budget.PartSpent), 0.1);
            if (!PiecesDiffer)
                Dive(options, 0.1 * (round % 5), _budget.PartSpent + (0.5 * (part - _budget.PartSpent)));
            if (_problem.OptionsFixed && search is not null)
                Continue(search, part);
            else
                search = Search(options, part);
        }
    }

    // Where hardly two pieces are alike, the linear program says little and the search nearly all.
    private bool PiecesDiffer => _problem.OptionsFixed && _problem.Demands.Sum(d => d.Count) < 1.5 * _problem.Kinds.Length;

    // Dives with growing daring until one succeeds.
    private void Dive(int[][] options, double daring, double partOfBudget)
    {
        var dive = new Dive(_problem, _pool, _budget, _random);
        for (; !_incumbent.IsProven && !_budget.IsSpent && _budget.PartSpent < partOfBudget; daring = Math.Min(0.9, daring + 0.1))
        {
            var goal = _incumbent.Exists ? _incumbent.Cost - 1 - _problem.ExtraCostOf(options) : long.MaxValue;
            if (dive.Run(options, goal, daring) is { } layouts)
                _incumbent.Offer(layouts, options);
        }
    }

    private RuinAndRecreate Search(int[][] options, double partOfBudget)
    {
        var search = new RuinAndRecreate(_problem, options, _random, _budget) { Pool = _pool, OptionHints = _bounds.OptionHints };
        if (ReferenceEquals(options, _incumbent.OptionCounts) || _problem.Source.Start is not null)
            search.Load(_incumbent.LayoutsFor(options));
        search.Construct(0);
        Continue(search, partOfBudget);
        return search;
    }

    private void Continue(RuinAndRecreate search, double partOfBudget)
    {
        while (!_incumbent.IsProven && search.Reach(_incumbent.Exists ? _incumbent.Cost - 1 : long.MaxValue, long.MaxValue, partOfBudget))
            _incumbent.Offer(search.State);
    }

    // Takes the layouts of most promise at the values of the linear program.
    private bool Choose(int round)
    {
        var goal = _incumbent.Exists ? _incumbent.Cost - 1 : long.MaxValue;
        var left = _budget.TimeLeft is { } time ? time.TotalSeconds : _budget.Left / 1e6;
        var program = new PoolProgram(_problem, _bounds.MostPromising(MostColumns), goal);
        program.MinimizeCost();
        var chosen = program.Solve(Math.Min(30, (_problem.OptionsFixed ? 0.1 : 0.2) * left), _budget, _problem.Source.Seed + round);
        return chosen is { } answer && _incumbent.Offer(answer.Layouts, answer.OptionCounts);
    }

    private CuttingOutcome Finish()
    {
        // Benchmarks count sheets only; a job gets layouts that are good to cut.
        if (_budget.TimeLeft is null)
            new Easing(_problem, _budget, _pool, _bounds, _incumbent).Run();
        var sorted = _incumbent.Layouts.Select(l => (l.Sheet, Layout: LayoutTidier.Tidy(l.Layout))).ToList();
        var solution = SolutionWriter.Write(
            _problem, SheetOrder.Sort(_problem, sorted), _incumbent.OptionCounts, _incumbent.CostBound, _incumbent.SheetBound,
            _incumbent.IsProven, _budget.Spent);
        return new CuttingOutcome(solution, []);
    }

    /// <summary>Why nothing was found.</summary>
    public CuttingObstacle Obstacle()
    {
        var sheets = string.Join(", ", _problem.Sheets.Where(s => s.Available < int.MaxValue).Select(s => string.Create(
            CultureInfo.InvariantCulture, $"{s.Available} of {_problem.Source.Sheets[s.Index].Id}")));
        var first = _problem.Source.Sheets[_problem.Sheets[0].Index].Id;
        return _bounds.StockRunsOut
            ? new CuttingObstacle(ObstacleKind.StockRunsOut, first, $"The sheets on hand cannot hold all parts: {sheets}.")
            : new CuttingObstacle(ObstacleKind.NothingFound, first, $"No way was found to cut all parts from the sheets on hand: {sheets}.");
    }
}
