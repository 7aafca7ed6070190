using System.Reflection;
using Casewright.App.Web.Sessions;
using Casewright.Store;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;

namespace Casewright.App.Web;

/// <summary>Serves the pages on the loopback address.</summary>
public static class PageHost
{
    /// <summary>Builds the server.</summary>
    /// <param name="port">Port on 127.0.0.1; 0 takes a free one.</param>
    /// <param name="store">The jobs.</param>
    public static WebApplication Build(int port, JobStore store)
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
        builder.Services.AddSingleton(new JobSessions(store));

        var app = builder.Build();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseAntiforgery();
        app.MapStaticAssets();
        MapEmbedded(app, "/fonts/{name}", typeof(Papers.Drawing.Scene).Assembly, "fonts/", "font/ttf");
        MapEmbedded(app, "/lib/{name}", typeof(PageHost).Assembly, "lib/", "text/javascript");
        JobFiles.Map(app);
        app.MapRazorComponents<Components.App>().AddInteractiveServerRenderMode();
        return app;
    }

    private static void MapEmbedded(WebApplication app, string pattern, Assembly assembly, string prefix, string type) => app.MapGet(pattern, (string name, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "public, max-age=86400";
        return assembly.GetManifestResourceStream(prefix + name) is { } stream ? Results.Stream(stream, type) : Results.NotFound();
    });
}
