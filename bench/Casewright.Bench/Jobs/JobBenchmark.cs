using System.Diagnostics;
using System.Globalization;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Engine.Verifying;
using Casewright.Model.Files;
using Casewright.Model.Jobs;

namespace Casewright.Bench.Jobs;

/// <summary>Plans whole jobs: sheets, bound, time to the first and to the final answer, memory.</summary>
internal sealed class JobBenchmark(JobOptions options)
{
    public int Run()
    {
        using var csv = options.Csv is { } path ? new StreamWriter(path) : null;
        csv?.WriteLine(JobRow.Header);
        Console.WriteLine(JobRow.Header);
        var rows = new List<JobRow>();
        foreach (var (name, bays, job) in Jobs())
        {
            var row = options.Cancel is { } after ? Cancelled(name, bays, job, after) : Planned(name, bays, job);
            rows.Add(row);
            Console.WriteLine(row.ToString());
            csv?.WriteLine(row.ToString());
            csv?.Flush();
        }

        if (options.Svg is { } svg)
            File.WriteAllText(svg, BayChart.Draw(rows));
        return rows.TrueForAll(r => r.Verified) ? 0 : 1;
    }

    private IEnumerable<(string Name, int Bays, Job Job)> Jobs()
    {
        string[] files = File.Exists(options.Path) ? [options.Path] : [.. Directory.GetFiles(options.Path, "*.json").Order(StringComparer.Ordinal)];
        foreach (var file in files)
        {
            var outcome = JobFile.Read(File.ReadAllBytes(file));
            if (!outcome.Succeeded)
                throw new ArgumentException($"{file}: {string.Join("; ", outcome.Problems)}");
            var job = outcome.Value;
            var name = Path.GetFileNameWithoutExtension(file);
            if (options.Bays.Count == 0)
                yield return (name, job.Runs.Sum(r => r.Division?.Bays ?? r.Columns.Count), job);
            foreach (var bays in options.Bays)
                yield return (name, bays, BayScale.Of(job, bays));
        }
    }

    private JobRow Planned(string name, int bays, Job job)
    {
        var casework = LayoutStage.Lay(job).Value ?? throw new ArgumentException($"{name} cannot be laid out");
        var watch = new Watch();
        var start = Environment.CpuUsage.TotalTime;
        var outcome = CuttingStage.Plan(job, casework, watch, options.Effort);
        var (wall, processor) = (watch.Seconds, (Environment.CpuUsage.TotalTime - start).TotalSeconds);
        var plan = outcome.Value ?? throw new ArgumentException($"{name} cannot be cut: {string.Join("; ", outcome.Problems)}");
        var verified = PlanVerifier.Verify(job, casework, plan).Count == 0;
        foreach (var material in plan.Materials)
        {
            var b = material.Bounds;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {material.Material,-14} {b.Sheets,4} sheets or boards, at least {b.SheetsLowerBound,4}; cost {b.Cost,9}, at least {b.LowerBound,9}; {watch.Of(material.Material)}"));
        }

        var bounds = plan.Bounds;
        return new JobRow(
            name, bays, bounds.Sheets, bounds.SheetsLowerBound, bounds.Cost, bounds.LowerBound, plan.Splices.Count, watch.First, wall, processor, Megabytes(), verified);
    }

    // What is measured: from the call of cancel to the end of planning.
    private JobRow Cancelled(string name, int bays, Job job, int after)
    {
        var casework = LayoutStage.Lay(job).Value ?? throw new ArgumentException($"{name} cannot be laid out");
        using var source = new CancellationTokenSource();
        var called = 0L;
        using var timer = new Timer(_ =>
        {
            Volatile.Write(ref called, Stopwatch.GetTimestamp());
            source.Cancel();
        });
        timer.Change(after, Timeout.Infinite);
        var ended = false;
        try
        {
            CuttingStage.Plan(job, casework, null, options.Effort, cancellation: source.Token);
            ended = true;
        }
        catch (OperationCanceledException)
        {
            // This is what is wanted.
        }

        var late = ended ? 0 : Stopwatch.GetElapsedTime(Volatile.Read(ref called)).TotalSeconds;
        return new JobRow(name, bays, 0, 0, 0, 0, 0, after / 1000.0, late, late, Megabytes(), Verified: true);
    }

    private static double Megabytes()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 / 1e6;
    }

    private sealed class Watch : IProgress<CutPlanProgress>
    {
        private readonly long _start = Stopwatch.GetTimestamp();
        private readonly Dictionary<string, (double From, double? First, double Last)> _materials = new(StringComparer.Ordinal);
        private double _last;

        public double Seconds => Stopwatch.GetElapsedTime(_start).TotalSeconds;

        /// <summary>Seconds until every material had an answer, the search for better ones not counted.</summary>
        public double First => _materials.Values.Sum(m => (m.First ?? m.Last) - m.From);

        public string Of(string material) => _materials.TryGetValue(material, out var m)
            ? string.Create(CultureInfo.InvariantCulture, $"from {m.From:0.00}, first {m.First:0.00}, last gain {m.Last:0.00} s")
            : "";

        public void Report(CutPlanProgress value)
        {
            var now = Seconds;
            var known = _materials.TryGetValue(value.Material, out var m) ? m : (From: _last, First: null, Last: now);
            _materials[value.Material] = (known.From, known.First ?? (value.Search.Incumbent is null ? null : now), now);
            _last = now;
        }
    }
}

/// <summary>One line of the table. With --cancel, first is when it was called and seconds how long planning went on after that.</summary>
internal sealed record JobRow(
    string Job, int Bays, int Sheets, int SheetsBound, decimal Cost, decimal Bound, int Joints, double First, double Seconds, double Processor, double Megabytes, bool Verified)
{
    public const string Header = "job,bays,sheets,sheets bound,cost,bound,joints,first,seconds,processor seconds,megabytes,verified";

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Job},{Bays},{Sheets},{SheetsBound},{Cost},{Bound},{Joints},{First:0.00},{Seconds:0.00},{Processor:0.00},{Megabytes:0},{(Verified ? "yes" : "no")}");
}
