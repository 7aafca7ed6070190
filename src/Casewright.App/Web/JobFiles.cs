using System.Text;
using Casewright.App.Packets;
using Casewright.App.Web.Sessions;
using Casewright.Model.Files;

namespace Casewright.App.Web;

/// <summary>The files of a job that the pages offer: the job file, and the packet of its present plan.</summary>
public static class JobFiles
{
    /// <summary>Adds their addresses.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/job/{id:guid}/job.json", (Guid id, JobSessions sessions) => sessions.Open(id) is { } session
            ? Results.File(Encoding.UTF8.GetBytes(JobFile.Write(session.State.Job)), "application/json", FileName(session.State.Job.Name, "job.json"))
            : Results.NotFound());

        // The revision stands in the address so that a browser never shows an older packet from its cache.
        app.MapGet("/job/{id:guid}/files/{revision:long}/{paper}/{file}", (Guid id, string paper, string file, string? inline, JobSessions sessions) =>
            Answer(sessions.Open(id), paper, inline, files => files.All().FirstOrDefault(f => f.Name == file)));
        app.MapGet("/job/{id:guid}/files/{revision:long}/{paper}/calculations/{check}", (Guid id, string paper, string check, string? inline, JobSessions sessions) =>
            Answer(sessions.Open(id), paper, inline, files => files.Calculation(check)));
    }

    private static IResult Answer(JobSession? session, string paper, string? inline, Func<PacketFiles, PacketFile?> choose)
    {
        if (session?.State is not { PlanIsCurrent: true, Plan: { } plan })
            return Results.NotFound();
        if (PacketFiles.PaperOf(paper, plan.Job.Units) is not { } size)
            return Results.NotFound();
        if (choose(new(plan, size, DateOnly.FromDateTime(DateTime.Now))) is not { } made)
            return Results.NotFound();
        using var buffer = new MemoryStream();
        made.Write(buffer);
        return Results.File(buffer.ToArray(), made.ContentType, inline is null ? FileName(plan.Job.Name, made.Name) : null);
    }

    private static string FileName(string job, string file) =>
        string.Concat(job.Select(c => char.IsLetterOrDigit(c) ? c : '-')).Trim('-') + "-" + file;
}
