using System.CommandLine;
using Casewright.App.Commands.Tables;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Schemes;
using Casewright.Model.Files;
using Casewright.Model.Schemes;

namespace Casewright.App.Commands;

/// <summary><c>compare</c>: plans every way to build a job and sets them side by side; one of them can be adopted as a job file.</summary>
public static class CompareCommand
{
    private static readonly Dictionary<string, SchemeKind> s_names = new(StringComparer.Ordinal)
    {
        ["designed-away"] = SchemeKind.DesignedAway,
        ["stacked"] = SchemeKind.Stacked,
        ["long-sheets"] = SchemeKind.LongSheets,
        ["spliced"] = SchemeKind.Spliced,
        ["mixed"] = SchemeKind.Mixed,
    };

    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var adopt = new Option<string?>("--adopt") { Description = "Write the job file of this scheme to the file of --out." };
        adopt.AcceptOnlyFromAmong([.. s_names.Keys]);
        var file = new Option<FileInfo?>("--out") { Description = "File for the job of --adopt; it must not exist yet." };
        var json = new Option<bool>("--json") { Description = "Print the schemes as JSON." };
        var quick = new Option<bool>("--quick") { Description = "Plan every scheme with less effort: sooner, and a little dearer than need be." };
        var command = new Command("compare", "Plan every way to build the job (designed away, stacked, long sheets, spliced, mixed) and set them side by side.") { job, adopt, file, json, quick };
        command.Validators.Add(result =>
        {
            if (result.GetValue(adopt) is null != result.GetValue(file) is null)
                result.AddError("--adopt and --out go together: which scheme, and the file that its job is written to.");
        });
        command.SetAction((result, cancellation) => Task.Run(
            () => Run(
                new(result.GetValue(job)!, result.GetValue(adopt), result.GetValue(file), result.GetValue(json), result.GetValue(quick)),
                result.InvocationConfiguration.Output,
                result.InvocationConfiguration.Error,
                cancellation),
            CancellationToken.None));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        var job = JobArgument.Read(request.Job, errors, out var exitCode);
        if (job is null)
            return exitCode;
        using var line = new ProgressLine(errors);
        var effort = request.Quick ? PlanningEffort.Quick : PlanningEffort.Usual;
        Model.Plans.Outcome<SchemeList> outcome;
        try
        {
            outcome = SchemeStage.Compare(job, effort, new SchemeLine(line), null, cancellation);
        }
        catch (OperationCanceledException)
        {
            line.Clear();
            errors.WriteLine("Stopped; nothing was written.");
            return ExitCode.Cancelled;
        }

        line.Clear();
        if (!outcome.Succeeded)
        {
            ProblemText.Write(errors, "The job cannot be built as it is stated:", outcome.Problems);
            return ExitCode.JobWrong;
        }

        var schemes = outcome.Value.Schemes;
        if (request.Json)
            output.Write(ComparisonFile.Write(job, schemes));
        else
            SchemeText.Write(output, job, outcome.Value);
        return request is { Adopt: { } name, Out: { } file }
            ? Adopt(schemes.First(s => s.Kind == s_names[name]), file, request.Json ? errors : output, errors)
            : schemes.Any(s => s.Feasible) ? ExitCode.Done : ExitCode.NoPlan;
    }

    private static int Adopt(Scheme scheme, FileInfo file, TextWriter output, TextWriter errors)
    {
        if (!scheme.Feasible)
        {
            errors.WriteLine($"The scheme '{SchemeNames.Of(scheme.Kind)}' cannot be adopted: {string.Join("; ", scheme.Why)}.");
            return ExitCode.NoPlan;
        }

        try
        {
            using var stream = new FileStream(file.FullName, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(JobFile.Write(scheme.Job));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{file}: the job of the scheme could not be written. {exception.Message}");
            return ExitCode.Files;
        }

        output.WriteLine($"The job of the scheme '{SchemeNames.Of(scheme.Kind)}' is written to {file}.");
        return ExitCode.Done;
    }

    private sealed record Request(FileInfo Job, string? Adopt, FileInfo? Out, bool Json, bool Quick);
}
