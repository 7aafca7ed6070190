using Casewright.App.Web.Sessions;
using Casewright.Store;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;
using Microsoft.AspNetCore.ResponseCompression;

namespace Casewright.App.Web;

/// <summary>Serves the pages on the loopback address.</summary>
public static class PageHost
{
    /// <summary>Builds the server.</summary>
    /// <param name="port">Port on 127.0.0.1; 0 takes a free one.</param>
    /// <param name="store">The jobs.</param>
    /// <param name="idle">How long a job stays in memory after its last window went; null for the usual time.</param>
    public static WebApplication Build(int port, JobStore store, TimeSpan? idle = null)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(PageHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        builder.WebHost.UseUrls($"http://127.0.0.1:{port}");
        StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddResponseCompression(options => options.MimeTypes =
            [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml", "application/json", "model/gltf-binary"]);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<PlanPapers>();
        var sessions = new JobSessions(store);
        sessions.ReadSettings();
        builder.Services.AddSingleton(sessions);
        builder.Services.AddHostedService(services => new IdleJobs(sessions, services.GetRequiredService<TimeProvider>(), idle ?? IdleJobs.Usual));

        var app = builder.Build();
        app.UseResponseCompression();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseAntiforgery();
        app.MapStaticAssets();
        EmbeddedFiles.Map(app, "/fonts/{name}", typeof(Papers.Drawing.Scene).Assembly, "fonts/", "font/ttf");
        EmbeddedFiles.Map(app, "/lib/{version}/{name}", typeof(PageHost).Assembly, "lib/", "text/javascript");
        JobFiles.Map(app);
        app.MapRazorComponents<Components.App>().AddInteractiveServerRenderMode();
        return app;
    }
}
