using System.Diagnostics;
using System.Globalization;

namespace Casewright.Engine.Tests.Checks.FiniteElements;

/// <summary>Results printed for one set of nodes: three components for each.</summary>
internal sealed record NodeValues(IReadOnlyDictionary<int, (double X, double Y, double Z)> Values)
{
    public double SumX => Values.Values.Sum(v => v.X);
}

/// <summary>Solves a deck with the free finite-element program CalculiX, where it is installed (Debian package calculix-ccx).</summary>
internal static class Calculix
{
    private static readonly Lazy<string?> Program = new(() => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator).Select(p => Path.Combine(p, "ccx")).FirstOrDefault(File.Exists));

    public static bool Absent => Program.Value is null;

    public const string WhyAbsent = "The finite-element program ccx is not installed (Debian package calculix-ccx).";

    /// <summary>Printed results by "U set" and "RF set".</summary>
    public static IReadOnlyDictionary<string, NodeValues> Solve(Deck deck)
    {
        var folder = Directory.CreateTempSubdirectory("casewright-fe-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "deck.inp"), deck.ToString());
            var start = new ProcessStartInfo(Program.Value!, "-i deck") { WorkingDirectory = folder.FullName, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
            start.Environment["OMP_NUM_THREADS"] = "1";
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEndAsync();
            var errors = process.StandardError.ReadToEnd();
            process.WaitForExit();
            var results = Path.Combine(folder.FullName, "deck.dat");
            Assert.True(process.ExitCode == 0 && File.Exists(results), output.GetAwaiter().GetResult() + errors);
            return Read(File.ReadLines(results));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Dictionary<string, NodeValues> Read(IEnumerable<string> lines)
    {
        var results = new Dictionary<string, Dictionary<int, (double, double, double)>>(StringComparer.Ordinal);
        Dictionary<int, (double, double, double)>? current = null;
        foreach (var line in lines)
        {
            var cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (line.Contains("for set", StringComparison.Ordinal))
            {
                var name = cells[Array.IndexOf(cells, "set") + 1];
                results[(cells[0] == "displacements" ? "U " : "RF ") + name] = current = [];
            }
            else if (current is not null && cells.Length == 4)
                current[int.Parse(cells[0], CultureInfo.InvariantCulture)] = (Number(cells[1]), Number(cells[2]), Number(cells[3]));
        }

        return results.ToDictionary(r => r.Key, r => new NodeValues(r.Value), StringComparer.Ordinal);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
