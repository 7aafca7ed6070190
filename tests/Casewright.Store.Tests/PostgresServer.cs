using System.Diagnostics;
using Npgsql;

namespace Casewright.Store.Tests;

/// <summary>A PostgreSQL server of its own for the tests, in a folder of its own, reached by a socket in it only.</summary>
public sealed class PostgresServer : IDisposable
{
    private const string User = "bench";

    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-pg").FullName;
    private readonly string? _programs = ProgramsFolder();

    public PostgresServer()
    {
        if (_programs is null)
        {
            Reason = "PostgreSQL (initdb, pg_ctl) is not installed.";
            return;
        }

        // The server refuses to run as root: root hands the folder to a user without rights.
        if (Environment.IsPrivilegedProcess)
            Run("chown", ["-R", "nobody", _folder]);
        var data = Path.Combine(_folder, "data");
        Reason = RunProgram("initdb", ["-D", data, "-U", User, "-A", "trust", "-N"])
            ?? RunProgram("pg_ctl", ["-D", data, "-w", "-o", $"-c listen_addresses='' -k {_folder}", "-l", Path.Combine(_folder, "log"), "start"])
            ?? "";
        IsUp = Reason.Length == 0;
    }

    /// <summary>Whether it runs.</summary>
    public bool IsUp { get; }

    /// <summary>Why it does not run; empty when it does.</summary>
    public string Reason { get; }

    /// <summary>Connection string without a database.</summary>
    public string Connection => $"Host={_folder};Username={User};Timeout=30";

    public void Dispose()
    {
        if (IsUp)
        {
            NpgsqlConnection.ClearAllPools();
            RunProgram("pg_ctl", ["-D", Path.Combine(_folder, "data"), "-m", "immediate", "stop"]);
        }

        Directory.Delete(_folder, recursive: true);
    }

    private static string? ProgramsFolder()
    {
        var onPath = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var debian = Directory.Exists("/usr/lib/postgresql") ? Directory.GetDirectories("/usr/lib/postgresql").Order().Select(version => Path.Combine(version, "bin")) : [];
        return onPath.Concat(debian).FirstOrDefault(folder => File.Exists(Path.Combine(folder, "initdb")) && File.Exists(Path.Combine(folder, "pg_ctl")));
    }

    private string? RunProgram(string name, string[] arguments)
    {
        var program = Path.Combine(_programs!, name);
        return Environment.IsPrivilegedProcess ? Run("runuser", ["-u", "nobody", "--", program, .. arguments]) : Run(program, arguments);
    }

    // Output is not read through a pipe: the server started here would hold it open.
    private string? Run(string program, string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = _folder, RedirectStandardOutput = false });
        process!.WaitForExit();
        return process.ExitCode == 0 ? null : $"{Path.GetFileName(program)} {string.Join(' ', arguments)} ended with {process.ExitCode}.";
    }
}
