using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Bins, the pieces in them and the pieces still outside.</summary>
internal sealed class SearchState
{
    private readonly ReducedProblem _problem;
    private readonly Stack<Bin> _spare = [];

    public SearchState(ReducedProblem problem, int[][] optionCounts)
    {
        _problem = problem;
        Limits = new CutLimits(problem.Stages, problem.LongestRip, problem.FirstCut);
        OptionCounts = [.. optionCounts.Select(c => (int[])c.Clone())];
        Outside = problem.PiecesOf(optionCounts);
        ExtraCost = problem.ExtraCostOf(optionCounts);
        SheetUse = new int[problem.Sheets.Length];
        for (var k = 0; k < Outside.Length; k++)
            OutsideArea += Outside[k] * problem.Kinds[k].Area;
        AreaUnit = problem.Sheets.Max(s => s.Area);
    }

    public CutLimits Limits { get; }

    public List<Bin> Bins { get; } = [];

    /// <summary>Pieces outside, by kind.</summary>
    public int[] Outside { get; }

    public double OutsideArea { get; set; }

    /// <summary>Sheets in use, by kind.</summary>
    public int[] SheetUse { get; }

    public int[][] OptionCounts { get; }

    public long ExtraCost { get; set; }

    /// <summary>Cost of the sheets in use.</summary>
    public long SheetCost { get; set; }

    public long Cost => SheetCost + ExtraCost;

    /// <summary>Area of the largest sheet.</summary>
    public double AreaUnit { get; }

    public Bin TakeSpare() => _spare.TryPop(out var bin) ? bin : new Bin();

    public void GiveSpare(Bin bin) => _spare.Push(bin);

    public void AddBin(Bin bin)
    {
        Bins.Add(bin);
        SheetUse[bin.Sheet]++;
        SheetCost += _problem.Sheets[bin.Sheet].Cost;
    }

    /// <summary>Takes a bin out of the list; the last takes its place.</summary>
    public void DropBin(int index)
    {
        var bin = Bins[index];
        SheetUse[bin.Sheet]--;
        SheetCost -= _problem.Sheets[bin.Sheet].Cost;
        Bins[index] = Bins[^1];
        Bins.RemoveAt(Bins.Count - 1);
    }

    /// <summary>Copies of the bins, safe from the search going on.</summary>
    public Bin[] CopyBins()
    {
        var copies = new Bin[Bins.Count];
        for (var i = 0; i < copies.Length; i++)
        {
            copies[i] = new Bin();
            copies[i].CopyFrom(Bins[i]);
        }

        return copies;
    }
}
