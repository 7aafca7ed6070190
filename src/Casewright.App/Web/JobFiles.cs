using System.Text;
using Casewright.App.Packets;
using Casewright.App.Web.Sessions;
using Casewright.Model.Files;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Kit;

namespace Casewright.App.Web;

/// <summary>
/// The files of a job that the pages offer: the job file, the packet of its present plan whole or by documents, and its pages as
/// pictures. The revision stands in every address, so that a browser never shows an older paper from its cache.
/// </summary>
public static class JobFiles
{
    private const int LeastDots = 30;
    private const int MostDots = 300;

    /// <summary>Adds their addresses.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/job/{id:guid}/job.json", (Guid id, JobSessions sessions) => sessions.Open(id) is { } session
            ? Results.File(Encoding.UTF8.GetBytes(JobFile.Write(session.State.Job)), "application/json", FileName(session.State.Job.Name, "job.json"))
            : Results.NotFound());

        app.MapGet("/job/{id:guid}/files/{revision:long}/{paper}/{file}", (Guid id, long revision, string paper, string file, string? inline, string? docs, JobSessions sessions, PlanPapers papers) =>
        {
            if (PapersOf(id, revision, paper, sessions, papers) is not { } found)
                return Results.NotFound();
            var (plan, drawn) = found;
            var made = file switch
            {
                "packet.pdf" when docs is not null => drawn.Of(KindsOf(docs)),
                "schemes.pdf" => sessions.Open(id)?.Schemes is { Result.Value: { } list } side && side.Revision == revision ? drawn.OfSchemes(list.Schemes) : null,
                _ => drawn.All().FirstOrDefault(f => f.Name == file),
            };
            if (made is null)
                return Results.NotFound();
            using var buffer = new MemoryStream();
            made.Write(buffer);
            return Results.File(buffer.ToArray(), made.ContentType, inline is null ? FileName(plan.Job.Name, file) : null);
        });
        app.MapGet("/job/{id:guid}/files/{revision:long}/{paper}/calculations/{check}", (Guid id, long revision, string paper, string check, string? inline, JobSessions sessions, PlanPapers papers) =>
        {
            if (PapersOf(id, revision, paper, sessions, papers) is not { } found || found.Papers.Calculation(check) is not { } made)
                return Results.NotFound();
            using var buffer = new MemoryStream();
            made.Write(buffer);
            return Results.File(buffer.ToArray(), made.ContentType, inline is null ? FileName(found.Plan.Job.Name, made.Name) : null);
        });

        app.MapGet("/job/{id:guid}/pages/{revision:long}/{paper}/{number:int}/{dots:int}.png", (Guid id, long revision, string paper, int number, int dots, HttpContext context, JobSessions sessions, PlanPapers papers) =>
            Picture(context, PapersOf(id, revision, paper, sessions, papers)?.Papers.Pages.FirstOrDefault(p => p.Number == number)?.Scene, dots));

        app.MapGet("/job/{id:guid}/card/{revision:long}/{paper}/{dots:int}.png", (Guid id, long revision, string paper, int dots, string splice, HttpContext context, JobSessions sessions, PlanPapers papers) =>
            Picture(context, PapersOf(id, revision, paper, sessions, papers)?.Papers.Pages.FirstOrDefault(p => p.Document == DocumentKind.SpliceCards && p.Key == splice)?.Scene, dots));
    }

    private static (Plan Plan, PacketFiles Papers)? PapersOf(Guid id, long revision, string paper, JobSessions sessions, PlanPapers papers) =>
        sessions.Open(id)?.State is { PlanIsCurrent: true, Plan: { } plan } state && state.Revision == revision && PacketFiles.PaperOf(paper, plan.Job.Units) is { } size
            ? (plan, papers.Of(plan, size))
            : null;

    private static IResult Picture(HttpContext context, Scene? scene, int dots)
    {
        if (scene is null || dots is < LeastDots or > MostDots)
            return Results.NotFound();
        context.Response.Headers.CacheControl = "private, max-age=600";
        return Results.Bytes(PngRenderer.ToBytes(scene, dots), "image/png");
    }

    private static HashSet<DocumentKind> KindsOf(string docs) =>
        [.. docs.Split(',').Select(d => Enum.TryParse<DocumentKind>(d, ignoreCase: true, out var kind) && Enum.IsDefined(kind) ? kind : (DocumentKind?)null).OfType<DocumentKind>()];

    private static string FileName(string job, string file) =>
        string.Concat(job.Select(c => char.IsLetterOrDigit(c) ? c : '-')).Trim('-') + "-" + file;
}
