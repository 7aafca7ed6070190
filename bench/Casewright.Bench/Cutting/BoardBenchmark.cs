using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Model.Collections;

namespace Casewright.Bench.Cutting;

/// <summary>Runs the cutting of boards over instances of one dimension with known optima.</summary>
internal sealed class BoardBenchmark(CuttingOptions options)
{
    /// <summary>Whether a folder holds instances of one dimension.</summary>
    public static bool Handles(string folder) => File.Exists(Path.Combine(folder, "instances.csv"));

    public int Run()
    {
        var items = CuttingInstances.Rows(Path.Combine(options.Folder, "items.csv")).ToLookup(r => r["instance"], StringComparer.Ordinal);
        using var csv = options.Csv is { } path ? new StreamWriter(path) : null;
        csv?.WriteLine(CuttingRow.Header);
        var rows = new List<(CuttingRow Row, int Optimum)>();
        var index = 0;
        foreach (var instance in CuttingInstances.Rows(Path.Combine(options.Folder, "instances.csv")))
        {
            if ((options.Sets is { } sets && !sets.Contains(instance["set"], StringComparer.Ordinal)) || (options.Pattern is { } pattern && !pattern.IsMatch(instance["instance"])))
                continue;
            if (index++ % options.Every != options.Offset)
                continue;
            var row = Run(instance, [.. items[instance["instance"]]]);
            rows.Add((row, int.Parse(instance["optimal_bars"], CultureInfo.InvariantCulture)));
            csv?.WriteLine(row.ToString());
            csv?.Flush();
        }

        foreach (var set in rows.GroupBy(r => r.Row.Set, StringComparer.Ordinal))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{set.Key,-16} instances {set.Count(),4}  used {set.Sum(r => r.Row.Used),6}  optimal {set.Sum(r => r.Optimum),6}  reached {set.Count(r => r.Row.Used == r.Optimum),4}  proven {set.Count(r => r.Row.Proven),4}  seconds {set.Sum(r => r.Row.Seconds):0}"));
        }

        return rows.TrueForAll(r => r.Row.Verified) ? 0 : 1;
    }

    private CuttingRow Run(Dictionary<string, string> instance, List<Dictionary<string, string>> items)
    {
        var stock = long.Parse(instance["stock_length"], CultureInfo.InvariantCulture);
        var demands = items.Select((r, i) => new CuttingDemand(
            i.ToString(CultureInfo.InvariantCulture), int.Parse(r["copies"], CultureInfo.InvariantCulture),
            [new CuttingOption("whole", [new CuttingPiece(long.Parse(r["length"], CultureInfo.InvariantCulture), 1, false)])])).ToValueList();
        var problem = new BoardProblem([new BoardType("bar", stock, 1, null, [])], demands, WorkLimit: options.Work);
        var start = Environment.CpuUsage.TotalTime;
        var outcome = options.Seconds is { } limit ? BoardCutting.SolveWithin(problem, TimeSpan.FromSeconds(limit)) : BoardCutting.Solve(problem);
        var seconds = (Environment.CpuUsage.TotalTime - start).TotalSeconds;
        var solution = outcome.Solution!;
        return new CuttingRow(
            instance["set"], instance["instance"], solution.BoardsUsed, solution.Cost, solution.LowerBound, solution.Proven, seconds, Holds(problem, solution, stock));
    }

    // Every part once, and nothing cut beyond the bar or twice from the same place.
    private static bool Holds(BoardProblem problem, BoardSolution solution, long stock)
    {
        var cut = solution.Boards.SelectMany(b => b.Pieces).GroupBy(p => p.Demand).ToDictionary(g => g.Key, g => g.Select(p => p.Copy).Distinct().Count());
        var all = problem.Demands.Index().All(d => cut.GetValueOrDefault(d.Index) == d.Item.Count);
        return all && solution.Boards.All(board =>
        {
            var at = 0L;
            foreach (var piece in board.Pieces.OrderBy(p => p.X))
            {
                if (piece.X < at || piece.Length != problem.Demands[piece.Demand].Options[0].Pieces[0].Length)
                    return false;
                at = piece.X + piece.Length;
            }

            return at <= stock;
        });
    }
}
