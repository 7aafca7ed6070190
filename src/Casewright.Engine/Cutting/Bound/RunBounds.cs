using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;
using Casewright.Engine.Cutting.Search;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>The bounds of one run, and what the linear program says of pieces, options and layouts.</summary>
internal sealed class RunBounds(ReducedProblem problem, WorkBudget budget, PatternPool pool, Incumbent incumbent)
{
    private bool _byNumber;
    private double _numberOfSheets;
    private double[] _pieceValues = [];

    /// <summary>How much the linear program uses every option; empty before it was solved.</summary>
    public double[][] OptionHints { get; private set; } = [];

    /// <summary>Whether there is proven to be too little stock.</summary>
    public bool StockRunsOut { get; private set; }

    /// <summary>The linear program over costs; null before it was solved.</summary>
    public ColumnGeneration? Costs { get; private set; }

    /// <summary>Bounds that are there at once.</summary>
    public void Quick()
    {
        var sheets = DualFeasibleBound.Sheets(problem, budget);
        var cost = (sheets * problem.Sheets.Min(s => s.Cost)) + problem.Demands.Sum(d => d.Count * d.Options.Min(o => o.ExtraCost));
        incumbent.Raise(cost, sheets);
        var costByArea = AreaBound.Of(problem, [.. problem.Sheets.Select(s => s.Cost)], withExtraCost: true);
        var sheetsByArea = AreaBound.Of(problem, [.. problem.Sheets.Select(_ => 1L)], withExtraCost: false);
        incumbent.Raise(costByArea, (int)sheetsByArea);
    }

    /// <summary>The bound of the linear program.</summary>
    public void OfCosts()
    {
        foreach (var (sheet, layout) in incumbent.Layouts)
            pool.Add(sheet, layout);
        var pricers = new SheetPricers(problem);
        Costs = new ColumnGeneration(problem, pool, budget, pricers, [.. problem.Sheets.Select(s => s.Cost)], withExtraCost: true);
        Costs.Run(incumbent.Cost, budget.PartSpent + (problem.OptionsFixed ? 0.15 : 0.4));
        _pieceValues = Costs.PieceValues;
        OptionHints = Costs.OptionValues;
        _numberOfSheets = Costs.PatternValues.Sum();
        if (!incumbent.Exists)
            CheckStock(pricers);
        incumbent.Raise(Costs.Bound, Alike ? (int)Costs.Bound : 0);
    }

    /// <summary>No answer cuts fewer sheets, whatever it costs.</summary>
    public void OfSheets()
    {
        if (Alike || incumbent.SheetBound >= incumbent.Sheets)
            return;
        var sheets = new ColumnGeneration(
            problem, pool, budget, new SheetPricers(problem), [.. problem.Sheets.Select(_ => 1L)], withExtraCost: false);
        sheets.Run(incumbent.Exists ? incumbent.Sheets : long.MaxValue, budget.PartSpent + 0.1);
        incumbent.Raise(0, (int)sheets.Bound);
    }

    /// <summary>
    /// The number of sheets is whole: whatever it is, it lies at or below, or at or above, the number of the linear program.
    /// Worth the work only where the answer lies within a sheet of the bound, and once.
    /// </summary>
    public void ByNumber()
    {
        var below = (int)Math.Floor(_numberOfSheets + 1e-6);
        if (_byNumber || Alike || !incumbent.Exists || _numberOfSheets - below < 1e-6)
            return;
        if (incumbent.Cost - incumbent.CostBound > problem.Sheets.Max(s => s.Cost))
            return;
        _byNumber = true;
        var fewer = ByNumber(0, below);
        var more = ByNumber(below + 1, int.MaxValue);
        incumbent.Raise(Math.Min(fewer, more), 0);
    }

    /// <summary>The layouts of most promise at the values of the linear program, those of equal promise in the order met.</summary>
    public List<PatternColumn> MostPromising(int count) =>
        [.. pool.Columns.Index().OrderBy(c => ReducedCost(c.Item)).ThenBy(c => c.Index).Take(count).Select(c => c.Item)];

    private bool Alike => Array.TrueForAll(problem.Sheets, s => s.Cost == 1)
        && problem.Demands.All(d => Array.TrueForAll(d.Options, o => o.ExtraCost == 0));

    private long ByNumber(int least, int most)
    {
        var costs = new ColumnGeneration(
            problem, pool, budget, new SheetPricers(problem), [.. problem.Sheets.Select(s => s.Cost)], withExtraCost: true, (least, most));
        costs.Run(incumbent.Cost, budget.PartSpent + 0.07);
        return costs.Bound;
    }

    private double ReducedCost(PatternColumn column) => _pieceValues.Length == 0
        ? 0
        : problem.Sheets[column.Sheet].Cost - column.Kinds.Index().Sum(k => _pieceValues[k.Item] * column.Counts[k.Index]);

    // With every sheet free, an answer costs nothing, unless there are too few sheets.
    private void CheckStock(SheetPricers pricers)
    {
        var stock = new ColumnGeneration(problem, pool, budget, pricers, new long[problem.Sheets.Length], withExtraCost: false);
        stock.Run(1, budget.PartSpent + 0.1);
        StockRunsOut = stock.Bound > 0;
    }
}
