using System.CommandLine;

namespace Casewright.App.Commands;

/// <summary><c>check</c>: plans a job and prints what the checks found, without writing a packet.</summary>
public static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var all = new Option<bool>("--all") { Description = "Print passes too." };
        var command = new Command("check", "Plan a job and print what the checks found; nothing is written.") { job, all };
        command.SetAction((result, cancellation) => Task.FromResult(Run(
            result.GetValue(job)!, result.GetValue(all), result.InvocationConfiguration.Output, result.InvocationConfiguration.Error, cancellation)));
        return command;
    }

    private static int Run(FileInfo file, bool all, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        var job = JobArgument.Read(file, errors, out var exitCode);
        if (job is null)
            return exitCode;
        var planning = PlanningRun.Run(job, errors, cancellation);
        if (planning?.Plan is { } plan)
            FindingText.Write(output, plan.Findings, all);
        return planning is null ? ExitCode.Cancelled : ExitCode.Of(planning);
    }
}
