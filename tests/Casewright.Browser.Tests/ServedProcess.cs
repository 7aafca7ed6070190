using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Casewright.Browser.Tests;

/// <summary>The program in a process of its own, which can be killed without warning.</summary>
public sealed class ServedProcess : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-killed").FullName;
    private readonly int _port = FreePort();
    private Process? _process;

    /// <summary>Address of the pages, without a slash at the end.</summary>
    public string Url => $"http://127.0.0.1:{_port}";

    /// <summary>Starts the program and waits until it answers.</summary>
    public async Task Start(CancellationToken stop)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "casewright.dll");
        _process = Process.Start(new ProcessStartInfo("dotnet", [program, "serve", "--port", _port.ToString(System.Globalization.CultureInfo.InvariantCulture), "--store", Path.Combine(_folder, "jobs.db")])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = _folder,
        })!;
        var line = await _process.StandardOutput.ReadLineAsync(stop);
        Assert.Contains(Url, line ?? "", StringComparison.Ordinal);
    }

    /// <summary>Kills it as a power cut would: no shutdown runs.</summary>
    public void Kill()
    {
        _process!.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
        _process = null;
    }

    public void Dispose()
    {
        if (_process is not null)
            Kill();
        Directory.Delete(_folder, recursive: true);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
