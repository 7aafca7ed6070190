using Casewright.App.Web;
using Casewright.App.Web.Sessions;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>The pages, served on a free port of the loopback address, and a real browser to open them in.</summary>
public sealed class ServedPages : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";

    // Patience, not speed, is asked: other tests plan whole jobs on the same two cores.
    private const float Patience = 180_000;

    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-browser").FullName;
    private WebApplication? _app;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Keys of the steps, in their order.</summary>
    public static IReadOnlyList<string> Steps { get; } = ["measure", "design", "cut", "checks", "timetable", "money", "papers", "make"];

    /// <summary>Address of the pages, without a slash at the end.</summary>
    public string Url => _app!.Urls.First();

    /// <summary>The sessions behind the pages.</summary>
    public JobSessions Sessions => _app!.Services.GetRequiredService<JobSessions>();

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Chromium))
            return;
        _app = PageHost.Build(0, JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System));
        await _app.StartAsync();
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(Patience / 3);
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_app is not null)
            await _app.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Puts the starter job on record.</summary>
    public Guid AddStarter() => Sessions.Add(Starter(), "new job").Id;

    /// <summary>Puts a job on record whose uprights outrun the sheet.</summary>
    public Guid AddTall()
    {
        var job = Starter();
        return Sessions.Add(job with { Walls = [.. job.Walls.Select(w => w with { Height = Length.FromMillimetres(2900) })] }, "new job").Id;
    }

    /// <summary>An example of the repository.</summary>
    public static Job Example(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        return JobFile.Read(File.ReadAllText(Path.Combine(folder!.FullName, "examples", name + ".json"))).Value!;
    }

    /// <summary>An empty window.</summary>
    public async Task<IPage> Blank()
    {
        if (_browser is null)
            Assert.Skip("chromium is not installed (Debian package chromium)");
        var page = await _browser.NewPageAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        page.SetDefaultTimeout(Patience);
        return page;
    }

    /// <summary>Opens a window; what goes wrong in it is added to <paramref name="faults"/>.</summary>
    public async Task<IPage> Open(string path, List<string> faults, ColorScheme scheme = ColorScheme.Light)
    {
        if (_browser is null)
            Assert.Skip("chromium is not installed (Debian package chromium)");
        var page = await _browser.NewPageAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 }, ColorScheme = scheme });
        page.SetDefaultTimeout(Patience);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                faults.Add(message.Text);
        };
        page.PageError += (_, error) => faults.Add(error);
        await page.GotoAsync(Url + path);
        return page;
    }

    private static Job Starter() => JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!;
}
