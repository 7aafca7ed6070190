using System.CommandLine;
using System.Globalization;
using Casewright.Engine.Cutting.Sawn;
using Casewright.Model.Files;
using Casewright.Model.Jobs;

namespace Casewright.App.Commands;

/// <summary><c>cut</c>: records what is sawn of a job's plan, so that the rest is planned around it.</summary>
public static class CutCommand
{
    private static readonly char[] s_between = [',', ' '];

    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var done = new Option<string[]>("--done")
        {
            Description = "Ids of the sheets, boards or pieces that are sawn, as the papers of this job's plan name them: S1,S2,C3-L/a.",
            AllowMultipleArgumentsPerToken = true,
        };
        var lost = new Option<string[]>("--lost")
        {
            Description = "Ids of the pieces that are spoiled or gone and have to be made again.",
            AllowMultipleArgumentsPerToken = true,
        };
        var file = new Option<FileInfo>("--out") { Description = "File for the job with this record; it must not exist yet.", Required = true };
        var command = new Command(
            "cut", "Record what is sawn of a job's plan. The job written stays as it is where wood is cut; change it and plan it again.") { job, done, lost, file };
        command.SetAction((result, cancellation) => Task.Run(
            () => Run(
                new(result.GetValue(job)!, Ids(result.GetValue(done)), Ids(result.GetValue(lost)), result.GetValue(file)!),
                result.InvocationConfiguration.Output,
                result.InvocationConfiguration.Error,
                cancellation),
            CancellationToken.None));
        return command;
    }

    private static string[] Ids(string[]? words) =>
        [.. (words ?? []).SelectMany(w => w.Split(s_between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))];

    private static int Run(Request request, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        var job = JobArgument.Read(request.Job, errors, out var exitCode);
        if (job is null)
            return exitCode;
        if (PlanningRun.Run(job, errors, cancellation) is not { } planning)
            return ExitCode.Cancelled;
        if (planning.Plan is not { } plan)
            return ExitCode.Of(planning);
        var record = SawnRecord.Of(plan, request.Done, request.Lost);
        if (!record.Succeeded)
        {
            ProblemText.Write(errors, "This is not in the plan of the job:", record.Problems);
            return ExitCode.JobWrong;
        }

        return Write(record.Value, request, output, errors);
    }

    private static int Write(Job job, Request request, TextWriter output, TextWriter errors)
    {
        try
        {
            using var stream = new FileStream(request.Out.FullName, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(JobFile.Write(job));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{request.Out}: the job with its record could not be written. {exception.Message}");
            return ExitCode.Files;
        }

        var pieces = (job.Sawn?.Sheets ?? []).SelectMany(s => s.Pieces).Concat((job.Sawn?.Boards ?? []).SelectMany(b => b.Pieces)).ToList();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Sawn so far: sheets {job.Sawn?.Sheets.Count ?? 0}, boards {job.Sawn?.Boards.Count ?? 0}, pieces {pieces.Count}, of these lost {pieces.Count(p => p.Lost)}. The job is written to {request.Out}."));
        return ExitCode.Done;
    }

    private sealed record Request(FileInfo Job, string[] Done, string[] Lost, FileInfo Out);
}
