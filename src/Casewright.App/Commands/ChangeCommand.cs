using System.CommandLine;
using Casewright.App.Packets;
using Casewright.Papers.Documents;
using Casewright.Papers.Kit;

namespace Casewright.App.Commands;

/// <summary><c>change</c>: plans a job as it was ordered and as it is to be, and writes the change order.</summary>
public static class ChangeCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var old = new Argument<FileInfo>("ORDERED") { Description = "The job file that was ordered." };
        var job = new Argument<FileInfo>("CHANGED") { Description = "The job file as it is to be." };
        var file = new Option<FileInfo>("--out") { Description = "File for the change order (PDF); it must not exist yet.", Required = true };
        var why = new Option<string>("--why") { Description = "Why, in a sentence; without it a line is left to write on.", DefaultValueFactory = _ => "" };
        var command = new Command("change", "Write a change order: what is stated otherwise than ordered, why, what it costs and how many days it takes.") { old, job, file, why };
        command.SetAction((result, cancellation) => Task.Run(
            () => Run(
                new(result.GetValue(old)!, result.GetValue(job)!, result.GetValue(file)!, result.GetValue(why)!),
                result.InvocationConfiguration.Output,
                result.InvocationConfiguration.Error,
                cancellation),
            CancellationToken.None));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        if (JobArgument.Read(request.Old, errors, out var exitCode) is not { } old)
            return exitCode;
        if (JobArgument.Read(request.Job, errors, out exitCode) is not { } job)
            return exitCode;
        if (PlanningRun.Run(old, errors, cancellation) is not { } before)
            return ExitCode.Cancelled;
        if (before.Plan is not { } ordered)
            return ExitCode.Of(before);
        if (PlanningRun.Run(job, errors, cancellation) is not { } after)
            return ExitCode.Cancelled;
        if (after.Plan is not { } changed)
            return ExitCode.Of(after);
        var settings = new PaperSettings(PacketFiles.PaperOf(null, job.Units)!.Value, job.Date ?? DateOnly.FromDateTime(DateTime.Now));
        try
        {
            using var stream = new FileStream(request.Out.FullName, FileMode.CreateNew, FileAccess.Write);
            ClientPapers.OfChange(ordered, changed, request.Why, settings).WritePdf(stream);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{request.Out}: the change order could not be written. {exception.Message}");
            return ExitCode.Files;
        }

        output.WriteLine($"The change order is written to {request.Out}.");
        return ExitCode.Of(after);
    }

    private sealed record Request(FileInfo Old, FileInfo Job, FileInfo Out, string Why);
}
