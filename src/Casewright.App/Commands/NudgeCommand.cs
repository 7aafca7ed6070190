using System.CommandLine;
using System.Globalization;
using Casewright.App.Commands.Tables;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Nudges;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;

namespace Casewright.App.Commands;

/// <summary><c>nudge</c>: looks for the smallest changes of a job that save something, by planning each of them.</summary>
public static class NudgeCommand
{
    private const int UsualMost = 24;

    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var most = new Option<int>("--most") { Description = "Most changes to plan.", DefaultValueFactory = _ => UsualMost };
        most.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 1000)
                result.AddError("--most is a number from 1 to 1000.");
        });
        var json = new Option<bool>("--json") { Description = "Print the nudges as JSON." };
        var take = new Option<int?>("--take") { Description = "Write the job with nudge number N of the list to the file of --out." };
        var file = new Option<FileInfo?>("--out") { Description = "File for the job of --take; it must not exist yet." };
        var command = new Command("nudge", "Find the smallest changes of dimension that save a sheet, a joint, a day or money, by planning each of them.") { job, most, json, take, file };
        command.Validators.Add(result =>
        {
            if (result.GetValue(take) is null != result.GetValue(file) is null)
                result.AddError("--take and --out go together: which nudge, and the file that its job is written to.");
        });
        command.SetAction((result, cancellation) => Task.Run(
            () => Run(
                new(result.GetValue(job)!, result.GetValue(most), result.GetValue(json), result.GetValue(take), result.GetValue(file)),
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
        Outcome<NudgeList> outcome;
        try
        {
            outcome = NudgeSearch.Search(job, request.Most, PlanningEffort.Quick, new NudgeLine(line), cancellation);
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
            ProblemText.Write(errors, "The job as it is stated has no plan, so there is nothing to compare with:", outcome.Problems);
            return ExitCode.NoPlan;
        }

        if (request.Json)
            output.Write(ComparisonFile.Write(job, outcome.Value.Nudges, outcome.Value.Tried));
        else
            Write(output, job, outcome.Value);
        return request is { Take: { } number, Out: { } file } ? Take(outcome.Value, number, file, request.Json ? errors : output, errors) : ExitCode.Done;
    }

    private static void Write(TextWriter output, Job job, NudgeList list)
    {
        if (list.Nudges.Count == 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{list.Tried} small changes were planned; none saves anything."));
            return;
        }

        var table = new TextTable("Change", "sheets", "joints", "hours", "days", job.Currency);
        for (var i = 0; i < list.Nudges.Count; i++)
        {
            var nudge = list.Nudges[i];
            table.Add(
                string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {nudge.Change}"),
                Signed(nudge.Sheets),
                Signed(nudge.Splices),
                Signed(nudge.Hours, 1),
                Signed(nudge.Days),
                Signed(nudge.Money, MoneyText.Decimals(job.Currency)));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{job.Name}: {list.Tried} small changes planned; what they save (and cost, with a minus):"));
        output.WriteLine();
        table.Write(output);
        output.WriteLine();
        for (var i = 0; i < list.Nudges.Count; i++)
        {
            foreach (var mended in list.Nudges[i].Mends)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1}. mends: {mended}"));
            foreach (var cost in list.Nudges[i].Costs)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i + 1}. costs: {cost}"));
        }
    }

    private static int Take(NudgeList list, int number, FileInfo file, TextWriter output, TextWriter errors)
    {
        if (number < 1 || number > list.Nudges.Count)
        {
            errors.WriteLine(string.Create(CultureInfo.InvariantCulture, $"There is no nudge number {number}; the list has {list.Nudges.Count}."));
            return ExitCode.JobWrong;
        }

        var nudge = list.Nudges[number - 1];
        try
        {
            using var stream = new FileStream(file.FullName, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(JobFile.Write(nudge.Job));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{file}: the job with the nudge could not be written. {exception.Message}");
            return ExitCode.Files;
        }

        output.WriteLine($"The job with '{nudge.Change}' is written to {file}.");
        return ExitCode.Done;
    }

    private static string Signed(decimal value, int places = 0) => value == 0
        ? "-"
        : value.ToString((value > 0 ? "+" : "") + "0" + (places > 0 ? "." + new string('0', places) : ""), CultureInfo.InvariantCulture);

    private sealed record Request(FileInfo Job, int Most, bool Json, int? Take, FileInfo? Out);

    private sealed class NudgeLine(ProgressLine line) : IProgress<NudgeProgress>
    {
        public void Report(NudgeProgress value) =>
            line.Say(string.Create(CultureInfo.InvariantCulture, $"Change {value.Tried + 1} of at most {value.Most}: {value.Words}"));
    }
}
