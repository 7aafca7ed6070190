using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// A lower bound from area alone, for any mix of sheets: every piece is worth its share of a kind of sheet, and no sheet holds more
/// than its own area of the worthiest pieces that fit it. Weak, but there at once, and the only one where the linear program cannot
/// be carried far.
/// </summary>
internal sealed class AreaBound
{
    private const long MostScaledCost = 1_000_000_000_000;

    private readonly ReducedProblem _problem;
    private readonly long[] _costs;
    private readonly bool _withExtraCost;
    private readonly long _scale;

    private AreaBound(ReducedProblem problem, long[] costs, bool withExtraCost)
    {
        _problem = problem;
        _costs = costs;
        _withExtraCost = withExtraCost;
        _scale = Math.Max(1, Math.Min(10_000_000, MostScaledCost / Math.Max(1, costs.Max())));
    }

    /// <summary>The bound in steps; 0 or more.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="costs">Cost of every kind of sheet, in steps.</param>
    /// <param name="withExtraCost">Whether options cost anything.</param>
    public static long Of(ReducedProblem problem, long[] costs, bool withExtraCost)
    {
        var bound = new AreaBound(problem, costs, withExtraCost);
        return (long)((bound.With(bound.BestMeasures()) + bound._scale - 1) / bound._scale);
    }

    /// <summary>What a piece of every kind is worth where the bound is greatest, in steps: values from which the linear program starts well.</summary>
    public static double[] ValuesOf(ReducedProblem problem, long[] costs, bool withExtraCost)
    {
        var bound = new AreaBound(problem, costs, withExtraCost);
        return [.. problem.Kinds.Zip(bound.BestMeasures(), (kind, sheet) => costs[sheet] * (kind.Area / problem.Sheets[sheet].Area))];
    }

    private int[] BestMeasures()
    {
        int[][] choices = [[.. _problem.Kinds.Select(CheapestFit)], .. _problem.Sheets.Select((_, s) => _problem.Kinds.Select(_ => s).ToArray())];
        return choices.MaxBy(With)!;
    }

    /// <summary>The sheet that is cheapest for its area among those without limit that the piece fits, or failing such among all that it fits.</summary>
    private int CheapestFit(PieceKind kind)
    {
        var sheets = _problem.Sheets;
        var fitting = Enumerable.Range(0, sheets.Length).Where(s => kind.Fits(sheets[s].SizeX, sheets[s].SizeY)).ToArray();
        var open = fitting.Where(s => sheets[s].Available == int.MaxValue).ToArray();
        return (open.Length > 0 ? open : fitting).DefaultIfEmpty(0).MinBy(s => _costs[s] / sheets[s].Area);
    }

    /// <summary>The bound when the area of each kind of piece is worth as much as that of the sheet named for it.</summary>
    private Int128 With(int[] measures)
    {
        var pieces = _problem.Kinds.Zip(measures, (kind, measure) => Worth(kind.SizeX, kind.SizeY, measure, roundUp: false)).ToArray();
        var sheets = _problem.Sheets.Select(sheet => _problem.Kinds.Zip(measures)
            .Where(pair => pair.First.Fits(sheet.SizeX, sheet.SizeY))
            .Select(pair => pair.Second)
            .Distinct()
            .Select(measure => Worth(sheet.SizeX, sheet.SizeY, measure, roundUp: true))
            .DefaultIfEmpty(0)
            .Max()).ToArray();
        return Int128.Max(0, LagrangeBound.Of(_problem, [.. _costs.Select(c => c * _scale)], _withExtraCost ? _scale : 0, pieces, sheets));
    }

    private long Worth(long x, long y, int measure, bool roundUp)
    {
        var sheet = _problem.Sheets[measure];
        var (worth, rest) = Int128.DivRem((Int128)_costs[measure] * _scale * x * y, (Int128)sheet.SizeX * sheet.SizeY);
        return (long)(roundUp && rest > 0 ? worth + 1 : worth);
    }
}
