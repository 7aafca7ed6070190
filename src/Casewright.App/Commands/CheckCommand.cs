using System.CommandLine;
using Casewright.App.Packets;
using Casewright.Engine.Checks;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Kit;

namespace Casewright.App.Commands;

/// <summary><c>check</c>: plans a job and prints what the checks found, or how one of them was reckoned, without writing a packet.</summary>
public static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var all = new Option<bool>("--all") { Description = "Print passes too." };
        var calculation = new Option<string?>("--calculation")
        {
            Description = "Print how a check was reckoned instead: its id, such as shelf-sag, or one finding of it, such as shelf-sag:C1-F1.",
        };
        var sheet = new Option<FileInfo?>("--out") { Description = "Write that calculation as a PDF." };
        var command = new Command("check", "Plan a job and print what the checks found; no packet is written.") { job, all, calculation, sheet };
        command.SetAction((result, cancellation) => Task.FromResult(Run(
            new(result.GetValue(job)!, result.GetValue(all), result.GetValue(calculation), result.GetValue(sheet)),
            result.InvocationConfiguration.Output, result.InvocationConfiguration.Error, cancellation)));
        return command;
    }

    private sealed record Request(FileInfo Job, bool All, string? Calculation, FileInfo? Sheet);

    private static int Run(Request request, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        if (request is { Sheet: not null, Calculation: null })
        {
            errors.WriteLine("--out goes with --calculation: say which check, such as --calculation shelf-sag.");
            return ExitCode.JobWrong;
        }

        var job = JobArgument.Read(request.Job, errors, out var exitCode);
        if (job is null)
            return exitCode;
        var planning = PlanningRun.Run(job, errors, cancellation);
        if (planning is null)
            return ExitCode.Cancelled;
        if (planning.Plan is not { } plan)
            return ExitCode.Of(planning);
        if (request.Calculation is { } wanted)
            return Calculate(plan, wanted, request.Sheet, output, errors) ?? ExitCode.Of(planning);
        FindingText.Write(output, plan.Findings, request.All);
        return ExitCode.Of(planning);
    }

    // Null when the calculation was told.
    private static int? Calculate(Plan plan, string wanted, FileInfo? sheet, TextWriter output, TextWriter errors)
    {
        var (check, subject) = wanted.Split(':', 2) is [var id, var of] ? (id, of) : (wanted, null);
        var findings = plan.Findings.Where(f => f.Check == check && (subject is null || f.Subject == subject)).ToList();
        if (findings.Count == 0)
        {
            errors.WriteLine(Unknown(plan, check, subject));
            return ExitCode.JobWrong;
        }

        if (sheet is null)
        {
            CalculationText.Write(output, plan, CalculationSheets.Foremost(findings));
            return null;
        }

        try
        {
            using var stream = sheet.Create();
            Packet.OfCalculations(plan, new PaperSettings(PacketFiles.PaperOf(null, plan.Job.Units)!.Value, DateOnly.FromDateTime(DateTime.Now)), check, subject)!.WritePdf(stream);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{sheet.FullName} could not be written: {exception.Message}");
            return ExitCode.Files;
        }

        output.WriteLine($"Written: {sheet.FullName}");
        return null;
    }

    private static string Unknown(Plan plan, string check, string? subject)
    {
        var subjects = plan.Findings.Where(f => f.Check == check).Select(f => f.Subject).Distinct(StringComparer.Ordinal).ToList();
        return subjects.Count > 0
            ? $"{check} says nothing of {subject}. It looked at {string.Join(", ", subjects)}."
            : $"There is no check {check}. Checks are {string.Join(", ", CheckCatalogue.All.Select(c => c.Sheet.Id).Concat(plan.Findings.Select(f => f.Check)).Distinct(StringComparer.Ordinal))}.";
    }
}
