namespace Casewright.Engine.Cutting.Reduction;

/// <summary>The problem without kerfs, trims, hopeless options and duplicate sizes. See <see cref="ProblemReducer"/>.</summary>
internal sealed record ReducedProblem
{
    public required CuttingProblem Source { get; init; }

    public required SheetKind[] Sheets { get; init; }

    public required PieceKind[] Kinds { get; init; }

    public required ReducedDemand[] Demands { get; init; }

    /// <summary>Number of sight lines of every group.</summary>
    public required int[] SightLines { get; init; }

    public required PriceLattice Prices { get; init; }

    /// <summary>Turns of direction; <see cref="int.MaxValue"/> without limit.</summary>
    public required int Stages { get; init; }

    /// <summary>Longest rip plus kerf; <see cref="long.MaxValue"/> without limit.</summary>
    public required long LongestRip { get; init; }

    /// <summary>Whether this is solid stock, cut in length only.</summary>
    public bool IsBoards { get; init; }

    public FirstCut FirstCut => Source.Rules.FirstCut;

    /// <summary>Whether no demand leaves a choice.</summary>
    public bool OptionsFixed => Array.TrueForAll(Demands, d => d.Options.Length == 1);

    /// <summary>The same stock and kinds with given numbers of pieces and no choice left.</summary>
    public ReducedProblem WithPieces(int[] pieces, int[] sheetUse) => this with
    {
        Demands = [.. pieces.Index().Where(p => p.Item > 0).Select(p => new ReducedDemand(p.Index, p.Item, [new ReducedOption(0, [p.Index], 0, -1)], -1))],
        SightLines = [],
        Sheets = [.. Sheets.Select((s, i) => s.Available == int.MaxValue ? s : s with { Available = s.Available - sheetUse[i] })],
    };

    /// <summary>Most pieces of every kind that any choice of options can ask for.</summary>
    public int[] MostPieces()
    {
        var most = new int[Kinds.Length];
        foreach (var demand in Demands)
        {
            foreach (var kind in demand.Options.SelectMany(o => o.Kinds).Distinct())
                most[kind] += demand.Count * demand.Options.Max(o => o.Kinds.Count(k => k == kind));
        }

        return most;
    }

    /// <summary>The pieces to cut when every copy of demand d takes the option counts given.</summary>
    public int[] PiecesOf(int[][] optionCounts)
    {
        var pieces = new int[Kinds.Length];
        for (var d = 0; d < Demands.Length; d++)
        {
            for (var o = 0; o < optionCounts[d].Length; o++)
            {
                foreach (var kind in Demands[d].Options[o].Kinds)
                    pieces[kind] += optionCounts[d][o];
            }
        }

        return pieces;
    }

    /// <summary>Cost of the options in steps.</summary>
    public long ExtraCostOf(int[][] optionCounts)
    {
        var cost = 0L;
        for (var d = 0; d < Demands.Length; d++)
        {
            for (var o = 0; o < optionCounts[d].Length; o++)
                cost += optionCounts[d][o] * Demands[d].Options[o].ExtraCost;
        }

        return cost;
    }
}
