using System.Globalization;
using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;

namespace Casewright.Engine.Cutting;

/// <summary>One solution of one problem, step by step: first answer, quick bounds, search, proof.</summary>
internal sealed class CuttingRun
{
    private readonly ReducedProblem _problem;
    private readonly WorkBudget _budget;
    private readonly Incumbent _incumbent;
    private const int MostColumns = 4000;
    private const int MostEasyColumns = 800;
    private readonly SearchRandom _random;
    private readonly PatternPool _pool;
    private bool _stockRunsOut;
    private bool _boundedByNumber;
    private double _numberOfSheets;
    private double[] _pieceValues = [];
    private double[][] _optionHints = [];

    public CuttingRun(ReducedProblem problem, WorkBudget budget, ICuttingProgress? progress)
    {
        _problem = problem;
        _budget = budget;
        _incumbent = new Incumbent(problem, budget, progress);
        _random = new SearchRandom(problem.Source.Seed);
        _pool = new PatternPool(problem);
    }

    public CuttingOutcome Run() => Search() is null ? new CuttingOutcome(null, [Obstacle()]) : Finish();

    /// <summary>Searches; null when nothing was found.</summary>
    public Incumbent? Search()
    {
        var first = FirstOptions();
        for (var order = 0; order < 5; order++)
            Construct(first, order);
        QuickBounds();
        if (!_incumbent.IsProven)
            Improve(first);
        return _incumbent.Exists ? _incumbent : null;
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
        var costByArea = AreaBound.Of(_problem, [.. _problem.Sheets.Select(s => s.Cost)], withExtraCost: true);
        var sheetsByArea = AreaBound.Of(_problem, [.. _problem.Sheets.Select(_ => 1L)], withExtraCost: false);
        _incumbent.Raise(costByArea, (int)sheetsByArea);
    }

    // Search, bound and integer programme in turn, until the answer is proven or the effort is used up.
    private void Improve(int[][] options)
    {
        var search = Search(options, PiecesDiffer ? 0.5 : 0.06);
        if (_incumbent.IsProven || _budget.IsSpent)
            return;
        Bound();
        if (_problem.OptionsFixed && !PiecesDiffer)
            Dive(options, 0, _budget.PartSpent + (_problem.IsBoards ? 0.3 : 0.15));
        for (var round = 1; !_stockRunsOut && !_incumbent.IsProven && !_budget.IsSpent; round++)
        {
            if (Choose(round) && !_problem.OptionsFixed)
                options = _incumbent.OptionCounts;
            BoundByNumber();
            if (_incumbent.IsProven || _budget.IsSpent)
                break;
            var part = _budget.PartSpent + Math.Max(0.25 * (1 - _budget.PartSpent), 0.1);
            if (!PiecesDiffer)
                Dive(options, 0.1 * (round % 5), _budget.PartSpent + (0.5 * (part - _budget.PartSpent)));
            if (_problem.OptionsFixed)
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
        var search = new RuinAndRecreate(_problem, options, _random, _budget) { Pool = _pool, OptionHints = _optionHints };
        search.Construct(0);
        Continue(search, partOfBudget);
        return search;
    }

    private void Continue(RuinAndRecreate search, double partOfBudget)
    {
        while (!_incumbent.IsProven && search.Reach(_incumbent.Exists ? _incumbent.Cost - 1 : long.MaxValue, long.MaxValue, partOfBudget))
            _incumbent.Offer(search.State);
    }

    private void Bound()
    {
        foreach (var (sheet, layout) in _incumbent.Layouts)
            _pool.Add(sheet, layout);
        var pricers = new SheetPricers(_problem);
        var costs = new ColumnGeneration(_problem, _pool, _budget, pricers, [.. _problem.Sheets.Select(s => s.Cost)], withExtraCost: true);
        costs.Run(_incumbent.Cost, _budget.PartSpent + (_problem.OptionsFixed ? 0.15 : 0.4));
        _pieceValues = costs.PieceValues;
        _optionHints = costs.OptionValues;
        _numberOfSheets = costs.PatternValues.Sum();
        if (!_incumbent.Exists)
            CheckStock(pricers);
        _incumbent.Raise(costs.Bound, Alike ? (int)costs.Bound : 0);
        if (_incumbent.IsProven)
            BoundSheets();
    }

    private bool Alike => Array.TrueForAll(_problem.Sheets, s => s.Cost == 1) && _problem.Demands.All(d => Array.TrueForAll(d.Options, o => o.ExtraCost == 0));

    // No answer cuts fewer sheets, whatever it costs.
    private void BoundSheets()
    {
        if (Alike || _incumbent.SheetBound >= _incumbent.Sheets)
            return;
        var sheets = new ColumnGeneration(_problem, _pool, _budget, new SheetPricers(_problem), [.. _problem.Sheets.Select(_ => 1L)], withExtraCost: false);
        sheets.Run(_incumbent.Exists ? _incumbent.Sheets : long.MaxValue, _budget.PartSpent + 0.1);
        _incumbent.Raise(0, (int)sheets.Bound);
    }

    // The number of sheets is whole: whatever it is, it lies at or below, or at or above, the number of the linear program.
    // Worth the work only where the answer lies within a sheet of the bound.
    private void BoundByNumber()
    {
        var below = (int)Math.Floor(_numberOfSheets + 1e-6);
        if (_boundedByNumber || Alike || !_incumbent.Exists || _numberOfSheets - below < 1e-6 || _incumbent.Cost - _incumbent.CostBound > _problem.Sheets.Max(s => s.Cost))
            return;
        _boundedByNumber = true;
        long[] costs = [.. _problem.Sheets.Select(s => s.Cost)];
        var pricers = new SheetPricers(_problem);
        var fewer = new ColumnGeneration(_problem, _pool, _budget, pricers, costs, withExtraCost: true, (0, below));
        fewer.Run(_incumbent.Cost, _budget.PartSpent + 0.07);
        var more = new ColumnGeneration(_problem, _pool, _budget, pricers, costs, withExtraCost: true, (below + 1, int.MaxValue));
        more.Run(_incumbent.Cost, _budget.PartSpent + 0.07);
        _incumbent.Raise(Math.Min(fewer.Bound, more.Bound), 0);
    }

    private double ReducedCost(PatternColumn column) =>
        _problem.Sheets[column.Sheet].Cost - column.Kinds.Index().Sum(k => _pieceValues[k.Item] * column.Counts[k.Index]);

    // With every sheet free, an answer costs nothing, unless there are too few sheets.
    private void CheckStock(SheetPricers pricers)
    {
        var stock = new ColumnGeneration(_problem, _pool, _budget, pricers, new long[_problem.Sheets.Length], withExtraCost: false);
        stock.Run(1, _budget.PartSpent + 0.1);
        _stockRunsOut = stock.Bound > 0;
    }

    // Takes the layouts of most promise at the values of the linear program.
    private bool Choose(int round)
    {
        var promising = _pool.Columns.Index()
            .OrderBy(c => ReducedCost(c.Item)).ThenBy(c => c.Index).Take(MostColumns).Select(c => c.Item).ToList();
        var goal = _incumbent.Exists ? _incumbent.Cost - 1 : long.MaxValue;
        var effort = Math.Min(30, (_problem.OptionsFixed ? 0.1 : 0.2) * (_budget.TimeLeft is { } time ? time.TotalSeconds : _budget.Left / 1e6));
        var program = new PoolProgram(_problem, promising, goal);
        program.MinimizeCost();
        var chosen = program.Solve(effort, _budget, _problem.Source.Seed + round);
        return chosen is { } answer && _incumbent.Offer(answer.Layouts, answer.OptionCounts);
    }

    // The option of least area and labour, the first of equals, from sheets that do not run out where there is such an option;
    // for a sight line group, on the line of the least sum.
    private int[][] FirstOptions()
    {
        var lines = Enumerable.Range(0, _problem.SightLines.Length).Select(group => Enumerable.Range(0, _problem.SightLines[group]).MinBy(line =>
            _problem.Demands.Where(d => d.Group == group).Sum(d => d.Count * WorthOf(d, BestOption(d, line)))));
        int[] chosen = [.. lines];
        return [.. _problem.Demands.Select(d =>
        {
            var counts = new int[d.Options.Length];
            counts[BestOption(d, d.Group < 0 ? -1 : chosen[d.Group])] = d.Count;
            return counts;
        })];
    }

    private int BestOption(ReducedDemand demand, int line) => Enumerable.Range(0, demand.Options.Length)
        .MinBy(o => line >= 0 && demand.Options[o].SightLine >= 0 && demand.Options[o].SightLine != line ? double.PositiveInfinity : WorthOf(demand, o));

    private double WorthOf(ReducedDemand demand, int option) => demand.Options[option].ExtraCost + demand.Options[option].Kinds.Sum(WorthOf);

    private double WorthOf(int kind)
    {
        var fitting = _problem.Sheets.Where(s => _problem.Kinds[kind].Fits(s.SizeX, s.SizeY)).ToArray();
        var open = fitting.Where(s => s.Available == int.MaxValue).ToArray();
        var least = (open.Length > 0 ? open : fitting).Min(s => (s.Cost + 1) / s.Area) * _problem.Kinds[kind].Area;
        return open.Length > 0 ? least : 100 * least;
    }

    private CuttingOutcome Finish()
    {
        // Benchmarks count sheets only; a job gets layouts that are good to cut.
        var layouts = _budget.TimeLeft is null ? Ease() : _incumbent.Layouts;
        var sorted = layouts.Select(l => (l.Sheet, Layout: LayoutTidier.Tidy(l.Layout))).ToList();
        var solution = SolutionWriter.Write(
            _problem, SheetOrder.Sort(_problem, sorted), _incumbent.OptionCounts, _incumbent.CostBound, _incumbent.SheetBound, _incumbent.IsProven, _budget.Spent);
        return new CuttingOutcome(solution, []);
    }

    // Among answers of equal cost, takes the one that asks least of the person at the saw.
    private IReadOnlyList<(int Sheet, LayoutTree Layout)> Ease()
    {
        if (_pieceValues.Length == 0)
            Bound();
        BoundSheets();
        var present = _incumbent.Layouts;
        foreach (var (sheet, layout) in present)
            _pool.Add(sheet, layout);
        var columns = _pool.Columns.Index().OrderBy(c => ReducedCost(c.Item)).ThenBy(c => c.Index).Take(MostEasyColumns).Select(c => c.Item).ToList();
        columns.AddRange(present.Select(l => PatternColumn.Of(l.Sheet, Counted(l.Layout), l.Layout)));
        LayoutCharacter[] characters = [.. columns.Select(c => LayoutCharacter.Of(LayoutTidier.Tidy(c.Layout), _problem.Sheets[c.Sheet]))];
        var program = new PoolProgram(_problem, columns, _incumbent.Cost);
        program.MinimizeEffort(characters, [.. columns.Select((_, c) => c >= columns.Count - present.Count ? 1 : 0)]);
        var chosen = program.Solve(Math.Min(2, 0.2 * _problem.Source.WorkLimit / 1e6), _budget, _problem.Source.Seed);
        if (chosen is not { } answer || Settings(answer.Layouts) > Settings(present) || !_incumbent.Exchange(answer.Layouts, answer.OptionCounts))
            return present;
        return answer.Layouts;
    }

    private int Settings(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts) =>
        layouts.SelectMany(l => LayoutCharacter.Of(LayoutTidier.Tidy(l.Layout), _problem.Sheets[l.Sheet]).Settings).Distinct().Count();

    private int[] Counted(LayoutTree layout)
    {
        var counts = new int[_problem.Kinds.Length];
        layout.Count(counts);
        return counts;
    }

    /// <summary>Why nothing was found.</summary>
    public CuttingObstacle Obstacle()
    {
        var sheets = string.Join(", ", _problem.Sheets.Where(s => s.Available < int.MaxValue).Select(s => string.Create(
            CultureInfo.InvariantCulture, $"{s.Available} of {_problem.Source.Sheets[s.Index].Id}")));
        return _stockRunsOut
            ? new CuttingObstacle(ObstacleKind.StockRunsOut, _problem.Source.Sheets[_problem.Sheets[0].Index].Id, $"The sheets on hand cannot hold all parts: {sheets}.")
            : new CuttingObstacle(ObstacleKind.NothingFound, _problem.Source.Sheets[_problem.Sheets[0].Index].Id, $"No way was found to cut all parts from the sheets on hand: {sheets}.");
    }
}
