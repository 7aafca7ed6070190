using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>An earlier answer in terms of the reduced problem: layouts that hold only what is wanted, and an option for every copy.</summary>
internal sealed record StartAnswer(List<(int Sheet, LayoutTree Layout)> Layouts, int[][] OptionCounts)
{
    /// <summary>The earlier answer as far as it still holds; null when there is none.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="fallback">Options for copies that had none.</param>
    public static StartAnswer? Of(ReducedProblem problem, int[][] fallback)
    {
        if (problem.Source.Start is not { } start || problem.IsBoards)
            return null;
        var options = Options(problem, start, fallback);
        var reader = new LayoutReader(problem);
        var layouts = new List<(int Sheet, LayoutTree Layout)>();
        var used = new int[problem.Sheets.Length];
        foreach (var sheet in start.Sheets)
        {
            var kind = Array.FindIndex(problem.Sheets, s => s.Index == sheet.SheetType);
            if (kind < 0 || used[kind] >= problem.Sheets[kind].Available || reader.Read(problem.Sheets[kind], sheet) is not { } layout)
                continue;
            used[kind]++;
            layouts.Add((kind, layout));
        }

        return new StartAnswer(PieceExchange.Fit(problem, layouts, problem.PiecesOf(options)), options);
    }

    private static int[][] Options(ReducedProblem problem, CuttingStart start, int[][] fallback)
    {
        var lines = LinesOf(problem, start);
        var options = new int[problem.Demands.Length][];
        for (var d = 0; d < options.Length; d++)
        {
            var demand = problem.Demands[d];
            var line = demand.Group < 0 ? -1 : lines[demand.Group];
            options[d] = [.. demand.Options.Select(o => Serves(o, line) ? Counted(start, demand.Index, o.Index) : 0)];
            var left = demand.Count;
            for (var o = 0; o < options[d].Length; o++)
                left -= options[d][o] = Math.Min(options[d][o], left);
            if (left > 0)
                options[d][Substitute(demand, line, fallback[d], options[d])] += left;
        }

        return options;
    }

    // The option taken most, else the fallback where it keeps the line, else the cheapest that does.
    private static int Substitute(ReducedDemand demand, int line, int[] fallback, int[] taken)
    {
        var most = Enumerable.Range(0, taken.Length).MaxBy(o => taken[o]);
        if (taken[most] > 0)
            return most;
        return Enumerable.Range(0, taken.Length).Where(o => Serves(demand.Options[o], line))
            .OrderByDescending(o => fallback[o]).ThenBy(o => demand.Options[o].ExtraCost).First();
    }

    // The line that every group kept; where it kept none that still serves all, the first that does.
    private static int[] LinesOf(ReducedProblem problem, CuttingStart start) =>
        [.. Enumerable.Range(0, problem.SightLines.Length).Select(group => Enumerable.Range(0, problem.SightLines[group])
            .Where(line => problem.Demands.Where(d => d.Group == group).All(d => Array.Exists(d.Options, o => Serves(o, line))))
            .DefaultIfEmpty(0)
            .MaxBy(line => problem.Demands.Where(d => d.Group == group)
                .Sum(d => d.Options.Where(o => o.SightLine == line).Sum(o => Counted(start, d.Index, o.Index)))))];

    private static bool Serves(ReducedOption option, int line) => line < 0 || option.SightLine < 0 || option.SightLine == line;

    private static int Counted(CuttingStart start, int demand, int option) =>
        demand < start.OptionCounts.Count && option < start.OptionCounts[demand].Count ? Math.Max(0, start.OptionCounts[demand][option]) : 0;
}
