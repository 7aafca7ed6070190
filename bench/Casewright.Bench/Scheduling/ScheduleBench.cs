using System.Diagnostics;
using System.Globalization;
using Casewright.Engine.Timeline.Scheduling;

namespace Casewright.Bench.Scheduling;

/// <summary>Measures the scheduler on project scheduling instances and sets its makespans beside the published ones.</summary>
public static class ScheduleBench
{
    /// <summary>How it is called.</summary>
    public const string Usage = "schedule FOLDER [--seconds S] [--workers N] [--csv FILE]";

    private static readonly string[] Tables = ["j30-optimal.csv", "j60-best-known.csv"];

    /// <summary>Runs the benchmark.</summary>
    /// <param name="args">A folder of .sm files, searched with its subfolders; --seconds, --workers and --csv.</param>
    /// <returns>0 when every makespan is at or above what is published and passes the verifier; 1 otherwise; 2 for wrong arguments.</returns>
    public static int Run(string[] args)
    {
        if (args.Length == 0 || !Directory.Exists(args[0]))
        {
            Console.Error.WriteLine("schedule: the first argument is a folder with .sm files.");
            return 2;
        }

        var seconds = double.Parse(Option(args, "--seconds") ?? "60", CultureInfo.InvariantCulture);
        var workers = int.Parse(Option(args, "--workers") ?? "1", CultureInfo.InvariantCulture);
        var published = Published(args[0]);
        var rows = new List<Row>();
        foreach (var file in Directory.EnumerateFiles(args[0], "*.sm", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileNameWithoutExtension(file);
            var row = Measure(file, name, published.GetValueOrDefault(name), seconds, workers);
            rows.Add(row);
            Console.WriteLine(row);
        }

        if (Option(args, "--csv") is { } csv)
            File.WriteAllLines(csv, rows.Select(r => r.ToString()).Prepend("instance,makespan,bound,published,proven,seconds"));
        Console.WriteLine(Summary(rows));
        return rows.TrueForAll(r => r.Faults == 0 && !(r.Published > r.Makespan)) ? 0 : 1;
    }

    private static Row Measure(string file, string name, int? published, double seconds, int workers)
    {
        var problem = ProjectFile.Read(File.ReadAllText(file));
        var clock = Stopwatch.StartNew();
        var outcome = SchedulingSolver.Solve(problem, new() { Seconds = seconds, LevelWork = 0, Workers = workers });
        var solution = outcome.Solution ?? throw new InvalidOperationException($"{name}: no schedule was found.");
        return new(name, solution.Makespan, solution.LowerBound, published, solution.Proven, clock.Elapsed.TotalSeconds, ScheduleVerifier.Check(problem, solution).Count);
    }

    /// <summary>Best published makespans, from the tables beside the instances or one folder up.</summary>
    private static Dictionary<string, int?> Published(string folder)
    {
        var published = new Dictionary<string, int?>(StringComparer.Ordinal);
        string[] places = [folder, Path.GetDirectoryName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar)) ?? folder];
        foreach (var table in places.SelectMany(p => Tables.Select(t => Path.Combine(p, t))).Where(File.Exists))
        {
            foreach (var cells in File.ReadLines(table).Skip(1).Select(l => l.Split(',')))
                published[cells[0]] = int.Parse(cells[1], CultureInfo.InvariantCulture);
        }

        return published;
    }

    private static string Summary(List<Row> rows) => string.Create(
        CultureInfo.InvariantCulture,
        $"{rows.Count} instances, {rows.Count(r => r.Proven)} proven, {rows.Count(r => r.Makespan == r.Published)} at the published makespan, {rows.Count(r => r.Faults > 0)} refused by the verifier, {rows.Sum(r => r.Seconds):0.0} s.");

    private static string? Option(string[] args, string name) =>
        Array.IndexOf(args, name) is >= 0 and var at && at + 1 < args.Length ? args[at + 1] : null;

    private sealed record Row(string Instance, long Makespan, long Bound, int? Published, bool Proven, double Seconds, int Faults)
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"{Instance},{Makespan},{Bound},{Published},{(Proven ? "yes" : "no")},{Seconds:0.00}");
    }
}
