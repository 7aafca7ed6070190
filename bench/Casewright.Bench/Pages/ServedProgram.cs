using System.Diagnostics;
using System.Globalization;

namespace Casewright.Bench.Pages;

/// <summary>The program serving its pages, in a process of its own and with an empty store.</summary>
public sealed class ServedProgram(string program) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-bench").FullName;
    private Process? _process;

    /// <summary>Address of the pages, without a slash at the end; empty before the start.</summary>
    public string Url { get; private set; } = "";

    /// <summary>Starts it; the time until it names its address.</summary>
    /// <exception cref="InvalidOperationException">It did not start.</exception>
    public async Task<TimeSpan> Start()
    {
        var clock = Stopwatch.StartNew();
        _process = Process.Start(new ProcessStartInfo("dotnet", [program, "serve", "--port", "0", "--store", Path.Combine(_folder, "jobs.db"), "--idle", "1"]) { RedirectStandardOutput = true, UseShellExecute = false })
            ?? throw new InvalidOperationException("The program did not start.");
        var line = await _process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program named no address.");
        Url = line.Split(' ').First(w => w.StartsWith("http", StringComparison.Ordinal));
        return clock.Elapsed;
    }

    /// <summary>Memory that the process holds, in MiB.</summary>
    public string MemoryMiB()
    {
        _process!.Refresh();
        return (_process.WorkingSet64 / 1048576).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Processor time that the process has used so far, of all processors together.</summary>
    public TimeSpan ProcessorTime()
    {
        _process!.Refresh();
        return _process.TotalProcessorTime;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_process is not null)
        {
            _process.Kill();
            _process.WaitForExit();
            _process.Dispose();
        }

        Directory.Delete(_folder, recursive: true);
    }
}
