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
        {
            if (sessions.Open(id)?.State is not { PlanIsCurrent: true, Plan: { } plan })
                return Results.NotFound();
            if (PacketFiles.PaperOf(paper, plan.Job.Units) is not { } size)
                return Results.NotFound();
            var made = new PacketFiles(plan, size, DateOnly.FromDateTime(DateTime.Now)).All().FirstOrDefault(f => f.Name == file);
            if (made is null)
                return Results.NotFound();
            using var buffer = new MemoryStream();
            made.Write(buffer);
            return Results.File(buffer.ToArray(), made.ContentType, inline is null ? FileName(plan.Job.Name, file) : null);
        });
    }

    private static string FileName(string job, string file) =>
        string.Concat(job.Select(c => char.IsLetterOrDigit(c) ? c : '-')).Trim('-') + "-" + file;
}
