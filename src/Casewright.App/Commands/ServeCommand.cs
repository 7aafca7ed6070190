using System.CommandLine;
using System.Data.Common;
using Casewright.App.Web;
using Casewright.App.Web.Sessions;
using Casewright.Store;

namespace Casewright.App.Commands;

/// <summary><c>serve</c>, and the program without arguments: serves the pages on the loopback address.</summary>
public static class ServeCommand
{
    /// <summary>The port when none is given.</summary>
    public const int UsualPort = 5577;

    private static readonly Option<int> Port = new("--port") { Description = "Port on 127.0.0.1; 0 takes a free one.", DefaultValueFactory = _ => UsualPort };

    private static readonly Option<FileInfo?> Jobs = new("--store") { Description = "The file that keeps all jobs; the user's data folder when not given." };

    private static readonly Option<string?> Database = new("--database")
    {
        Description = "A PostgreSQL database that keeps all jobs instead of a file, as in \"Host=shop;Database=casewright;Username=bench\"; "
            + "the password is taken from PGPASSWORD or the password file.",
    };

    private static readonly Option<int> Idle = new("--idle")
    {
        Description = "Minutes that a job stays in memory after its last window was closed, 1 to 1440; nothing is lost with it.",
        DefaultValueFactory = _ => (int)IdleJobs.Usual.TotalMinutes,
    };

    /// <summary>The command.</summary>
    public static Command Build()
    {
        var command = new Command("serve", "Serve the pages on the loopback address and name the URL.") { Port, Jobs, Database, Idle };
        Idle.Validators.Add(result =>
        {
            if (result.GetValue(Idle) is < 1 or > 1440)
                result.AddError("--idle takes minutes from 1 to 1440.");
        });
        command.SetAction((result, cancellation) =>
            Run(result.GetValue(Port), result.GetValue(Jobs)?.FullName, result.GetValue(Database), TimeSpan.FromMinutes(result.GetValue(Idle)), result.InvocationConfiguration, cancellation));
        return command;
    }

    /// <summary>Serves the jobs of the user's data folder on the usual port until it is stopped.</summary>
    public static Task<int> RunAsUsual(InvocationConfiguration console, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(console);
        return Run(UsualPort, file: null, database: null, IdleJobs.Usual, console, cancellation);
    }

    private static async Task<int> Run(int port, string? file, string? database, TimeSpan idle, InvocationConfiguration console, CancellationToken cancellation)
    {
        var (output, errors) = (console.Output, console.Error);
        if (file is not null && database is not null)
        {
            await errors.WriteLineAsync("Both --store and --database are given; the jobs are kept in one place. Give one of them.");
            return ExitCode.Files;
        }

        var path = file ?? Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "casewright", "jobs.db");
        var place = database is null ? path : "the PostgreSQL database";
        JobStore store;
        try
        {
            store = database is null ? JobStore.OpenSqlite(path, TimeProvider.System) : JobStore.OpenPostgres(database, TimeProvider.System);
        }
        catch (Exception exception) when (exception is DbException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            await errors.WriteLineAsync($"The jobs in {place} cannot be opened: {exception.Message}");
            return ExitCode.Files;
        }

        await using var app = PageHost.Build(port, store, idle);
        FirstJob.Ensure(app.Services.GetRequiredService<JobSessions>());
        try
        {
            await app.StartAsync(cancellation);
        }
        catch (IOException exception)
        {
            await errors.WriteLineAsync($"The pages cannot be served on port {port}: {exception.Message} Give another with --port, or 0 for a free one.");
            return ExitCode.Files;
        }

        await output.WriteLineAsync($"Casewright is at {app.Urls.First()}  (jobs are kept in {place}; Ctrl+C stops it)");
        await app.WaitForShutdownAsync(cancellation);
        return ExitCode.Done;
    }
}
