using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;

namespace Casewright.Bench.Cutting;

/// <summary>Runs the cutting engine over instances of the literature, one row an instance.</summary>
internal sealed class CuttingBenchmark(CuttingOptions options)
{
    public int Run()
    {
        var rows = new List<CuttingRow>();
        using var csv = options.Csv is { } path ? new StreamWriter(path) : null;
        csv?.WriteLine(CuttingRow.Header);
        var index = 0;
        foreach (var instance in CuttingInstances.Read(options.Folder, options.Sets))
        {
            if (options.Pattern is { } pattern && !pattern.IsMatch(instance.Name))
                continue;
            if (index++ % options.Every != options.Offset)
                continue;
            var row = Run(instance);
            rows.Add(row);
            csv?.WriteLine(row.ToString());
            csv?.Flush();
        }

        CuttingSummary.Write(Console.Out, options, rows);
        return rows.TrueForAll(r => r.Verified) ? 0 : 1;
    }

    private CuttingRow Run(CuttingInstance instance)
    {
        var problem = instance.ToProblem(options.Rotation, options.Stages, options.FirstCut, options.Work);
        var start = Environment.CpuUsage.TotalTime;
        var outcome = options.Seconds is { } limit ? SheetCutting.SolveWithin(problem, TimeSpan.FromSeconds(limit)) : SheetCutting.Solve(problem);
        var seconds = (Environment.CpuUsage.TotalTime - start).TotalSeconds;
        if (outcome.Solution is not { } solution)
            return new CuttingRow(instance.Set, instance.Name, 0, 0, 0, Proven: false, seconds, Verified: false);
        var faults = CuttingVerifier.FaultsOf(problem, solution);
        foreach (var fault in faults)
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{instance.Set} {instance.Name}: {fault}"));
        var bound = problem.Sheets.Count == 1 ? solution.SheetsLowerBound : solution.LowerBound;
        return new CuttingRow(instance.Set, instance.Name, solution.SheetsUsed, solution.Cost, bound, solution.Proven, seconds, faults.Count == 0);
    }
}

/// <summary>One line of the table.</summary>
internal sealed record CuttingRow(string Set, string Instance, int Used, decimal Cost, decimal Bound, bool Proven, double Seconds, bool Verified)
{
    public const string Header = "set,instance,used,cost,bound,proven,seconds,verified";

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Set},{Instance},{Used},{Cost},{Bound},{(Proven ? "yes" : "no")},{Seconds:0.00},{(Verified ? "yes" : "no")}");
}
