using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>
/// Options to begin with: those of least area and labour, the first of equals, out of sheets that do not run out where there is
/// such an option; for a sight line group, on the line of the least sum.
/// </summary>
internal sealed class FirstOptions
{
    private const double Scarce = 100;
    private const double Preferred = 1e15;
    private readonly ReducedProblem _problem;
    private readonly double[] _worth;
    private readonly double _preferenceWeight;

    private FirstOptions(ReducedProblem problem, bool preferred)
    {
        _problem = problem;
        _preferenceWeight = preferred ? Preferred : 0;
        _worth = [.. problem.Kinds.Select(WorthOf)];
    }

    /// <summary>Copies of every option, by demand.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="preferred">Whether preference goes before area and labour.</param>
    public static int[][] Of(ReducedProblem problem, bool preferred = false)
    {
        var first = new FirstOptions(problem, preferred);
        int[] lines = [.. Enumerable.Range(0, problem.SightLines.Length).Select(first.LineOf)];
        return [.. problem.Demands.Select(d =>
        {
            var counts = new int[d.Options.Length];
            counts[first.Best(d, d.Group < 0 ? -1 : lines[d.Group])] = d.Count;
            return counts;
        })];
    }

    private int LineOf(int group) => Enumerable.Range(0, _problem.SightLines[group])
        .MinBy(line => _problem.Demands.Where(d => d.Group == group).Sum(d => d.Count * WorthOn(d, Best(d, line), line)));

    private int Best(ReducedDemand demand, int line) => Enumerable.Range(0, demand.Options.Length).MinBy(o => WorthOn(demand, o, line));

    private double WorthOn(ReducedDemand demand, int option, int line)
    {
        var taken = demand.Options[option];
        return line >= 0 && taken.SightLine >= 0 && taken.SightLine != line
            ? double.PositiveInfinity
            : taken.ExtraCost + taken.Kinds.Sum(k => _worth[k]) + (_preferenceWeight * taken.Preference);
    }

    private double WorthOf(PieceKind kind)
    {
        var fitting = _problem.Sheets.Where(s => kind.Fits(s.SizeX, s.SizeY)).ToArray();
        var open = fitting.Where(s => s.Available == int.MaxValue).ToArray();
        var least = (open.Length > 0 ? open : fitting).Min(s => (s.Cost + 1) / s.Area) * kind.Area;
        return open.Length > 0 ? least : Scarce * least;
    }
}
