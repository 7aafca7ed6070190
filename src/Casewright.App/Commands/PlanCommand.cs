using System.CommandLine;
using System.Globalization;
using Casewright.App.Packets;
using Casewright.Engine;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Schemes;
using Casewright.Model.Files;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;

namespace Casewright.App.Commands;

/// <summary><c>plan</c>: plans a job and writes its packet.</summary>
public static class PlanCommand
{
    /// <summary>The command.</summary>
    public static Command Build()
    {
        var job = JobArgument.Build();
        var folder = new Option<DirectoryInfo?>("--out") { Description = "Folder for the packet: new, empty or holding an earlier packet. Default: out/ and the name of the job file." };
        var paper = new Option<string?>("--paper") { Description = "letter or a4; by default letter for jobs in inches." };
        paper.AcceptOnlyFromAmong("letter", "a4");
        var json = new Option<bool>("--json") { Description = "Print plan.json to the standard output; a packet is written only when --out is given." };
        var calculations = new Option<bool>("--calculations") { Description = "Add a calculation sheet for every stop and caution to the packet." };
        var schemes = new Option<bool>("--schemes") { Description = "Plan the other ways to build it too, and put them side by side into plan.json and the quote." };
        var layouts = new Option<bool>("--layouts") { Description = "Also look for sheet layouts of the same cost but another character, and tell of them in the rip schedule." };
        var command = new Command("plan", "Plan a job and write its packet: papers, drawings, lists and plan.json.") { job, folder, paper, json, calculations, schemes, layouts };
        command.SetAction((result, cancellation) => Task.Run(
            () => Run(
                new(result.GetValue(job)!, result.GetValue(folder), result.GetValue(paper), result.GetValue(json), result.GetValue(calculations), result.GetValue(schemes), result.GetValue(layouts)),
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
        var planning = PlanningRun.Run(job, errors, cancellation);
        if (planning is null)
            return ExitCode.Cancelled;
        if (planning.Plan is not { } stated)
            return ExitCode.Of(planning);
        if ((request.Schemes ? Compared(planning, stated, errors, cancellation) : stated) is not { } plan)
            return ExitCode.Cancelled;

        if (request.Layouts)
        {
            if (WithLayouts(plan, cancellation) is not { } told)
            {
                errors.WriteLine("Stopped; nothing was written.");
                return ExitCode.Cancelled;
            }

            plan = told;
        }

        if (request.Json)
            output.Write(PlanFile.Write(plan));
        if (request.Json && request.Folder is null)
            return ExitCode.Of(planning);
        try
        {
            var written = WritePacket(plan, request, cancellation);
            WriteSummary(request.Json ? errors : output, plan, written);
        }
        catch (OperationCanceledException)
        {
            errors.WriteLine("Stopped; nothing was written.");
            return ExitCode.Cancelled;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"The packet could not be written: {exception.Message}");
            return ExitCode.Files;
        }

        return ExitCode.Of(planning);
    }

    /// <summary>The plan with the ways to build the job; null when the user cancelled.</summary>
    private static Plan? Compared(PlanningResult planning, Plan plan, TextWriter errors, CancellationToken cancellation)
    {
        using var line = new ProgressLine(errors);
        try
        {
            var outcome = SchemeStage.Compare(plan.Job, PlanningEffort.Usual, new SchemeLine(line), planning, cancellation);
            return plan with { Schemes = outcome.Value?.Schemes ?? [] };
        }
        catch (OperationCanceledException)
        {
            line.Clear();
            errors.WriteLine("Stopped; nothing was written.");
            return null;
        }
    }

    /// <summary>The plan with other layouts of its cost, where there are some; null when it was stopped.</summary>
    private static Plan? WithLayouts(Plan plan, CancellationToken cancellation)
    {
        try
        {
            var found = CuttingStage.Alternatives(plan.Job, new Casework(plan.Cases, plan.Parts, []), cancellation: cancellation);
            return found.Succeeded && CutAlternative.Figures(found.Value) is { Count: > 1 } several ? plan with { Layouts = several } : plan;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    private static Packet WritePacket(Plan plan, Request request, CancellationToken cancellation)
    {
        var folder = request.Folder?.FullName ?? Path.Combine("out", Path.GetFileNameWithoutExtension(request.Job.Name));
        using var packet = PacketFolder.Begin(folder);
        var paper = PacketFiles.PaperOf(request.Paper, plan.Job.Units)!.Value;
        foreach (var file in new PacketFiles(plan, paper, DateOnly.FromDateTime(DateTime.Now), request.Calculations).All())
        {
            cancellation.ThrowIfCancellationRequested();
            packet.Write(file.Name, file.Write);
        }

        cancellation.ThrowIfCancellationRequested();
        packet.Commit();
        return new(folder, packet.Written);
    }

    private static void WriteSummary(TextWriter writer, Plan plan, Packet packet)
    {
        var bounds = plan.Cutting.Bounds;
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{plan.Job.Name}: {plan.Cases.Count} cases, {plan.Parts.Count} parts, {bounds.Sheets} sheets ({SheetWords(plan)}), {plan.Cutting.Boards.Count} boards, {plan.Cutting.Splices.Count} splices."));
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Stock to buy {plan.Cutting.ToBuy:0.00} {plan.Job.Currency}; "
            + $"findings: {Count(plan, Severity.Stop)} stop, {Count(plan, Severity.Caution)} caution, {Count(plan, Severity.NotChecked)} not checked."));
        if (plan.Schemes.Count > 0 && plan.Schemes.Select(s => s.Figures).Distinct().Count() == 1)
            writer.WriteLine("Ways to build it: all come to the same, for no part outruns the usual sheet.");
        else if (plan.Schemes.Where(s => s is { Feasible: true, Figures.Net: not null }).MinBy(s => s.Figures!.Net) is { } cheapest)
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Ways to build it: {plan.Schemes.Count(s => s.Feasible)} of {plan.Schemes.Count} can be built; the cheapest is '{SchemeNames.Of(cheapest.Kind)}'."));
        foreach (var layouts in plan.Layouts)
        {
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  {(layouts.Chosen ? "Followed" : "Of the same cost")}: {Papers.Documents.Words.Of(layouts.Aim)}: {layouts.Settings} settings, {layouts.Cuts} cuts, {layouts.Kept} offcuts kept, {layouts.KeptArea:0.00} m²{(layouts.Largest is { } most ? $", the largest {most.Length} × {most.Width}" : "")}."));
        }

        foreach (var stop in plan.Findings.Where(f => f.Severity == Severity.Stop).Take(5))
            writer.WriteLine($"  STOP {stop.Subject}: {stop.Message}");
        writer.WriteLine();
        writer.WriteLine($"Written to {packet.Folder}:");
        foreach (var file in packet.Files.Where(f => !f.Contains('/', StringComparison.Ordinal)))
            writer.WriteLine($"  {file}");
        foreach (var folder in packet.Files.Where(f => f.Contains('/', StringComparison.Ordinal)).GroupBy(f => f[..(f.IndexOf('/', StringComparison.Ordinal) + 1)], StringComparer.Ordinal))
            writer.WriteLine($"  {folder.Key}  {folder.Count()} drawings");
        writer.WriteLine($"Open first: {Path.Combine(packet.Folder, packet.Files[0])}");
    }

    private static int Count(Plan plan, Severity severity) => plan.Findings.Count(f => f.Severity == severity);

    private static string SheetWords(Plan plan)
    {
        var bounds = plan.Cutting.Bounds;
        return bounds.Sheets == bounds.SheetsLowerBound ? "none fewer possible"
            : bounds.Proven ? $"the cheapest possible; at least {bounds.SheetsLowerBound} sheets are needed at any price"
            : string.Create(CultureInfo.InvariantCulture, $"at least {bounds.SheetsLowerBound} needed; cost within {bounds.Gap * 100:0.0} % of the least possible");
    }

    private sealed record Request(FileInfo Job, DirectoryInfo? Folder, string? Paper, bool Json, bool Calculations, bool Schemes, bool Layouts);

    private sealed record Packet(string Folder, IReadOnlyList<string> Files);
}
