using System.CommandLine;
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

    /// <summary>The command.</summary>
    public static Command Build()
    {
        var command = new Command("serve", "Serve the pages on the loopback address and name the URL.") { Port, Jobs };
        command.SetAction((result, cancellation) =>
            Run(result.GetValue(Port), result.GetValue(Jobs)?.FullName, result.InvocationConfiguration.Output, result.InvocationConfiguration.Error, cancellation));
        return command;
    }

    /// <summary>Serves until it is stopped.</summary>
    public static async Task<int> Run(int port, string? storePath, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        var path = storePath ?? Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "casewright", "jobs.db");
        var store = JobStore.OpenSqlite(path, TimeProvider.System);
        await using var app = PageHost.Build(port, store);
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

        await output.WriteLineAsync($"Casewright is at {app.Urls.First()}  (jobs are kept in {path}; Ctrl+C stops it)");
        await app.WaitForShutdownAsync(cancellation);
        return ExitCode.Done;
    }
}
