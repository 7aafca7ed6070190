using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Casewright.Bench.Pages;

/// <summary>Measures the pages in a real browser: an edit until the drawing shows it and until its sheets are planned, start, weight, memory.</summary>
public static class PagesBench
{
    /// <summary>How it is called.</summary>
    public const string Usage = "pages --program casewright.dll [--examples FOLDER] [--edits N] [--plans N] [--browser PATH]";

    private const int Jobs = 20;

    /// <summary>Takes the time, in ms, from the moment a field is taken until the drawing changes, and until the next frame is painted.</summary>
    private const string EditScript = """
        (value) => new Promise((done) => {
          const label = [...document.querySelectorAll('label')].find((l) => l.textContent.trim() === 'Base height');
          const field = document.getElementById(label.htmlFor);
          const start = performance.now();
          const seen = new MutationObserver(() => { seen.disconnect(); requestAnimationFrame(() => setTimeout(() => done(performance.now() - start))); });
          seen.observe(document.querySelector('.elevation svg'), { attributes: true, subtree: true, childList: true });
          field.value = value;
          field.dispatchEvent(new Event('change', { bubbles: true }));
        })
        """;

    /// <summary>Runs the benchmark.</summary>
    /// <returns>0 when everything was measured; 2 for wrong arguments or without a browser.</returns>
    public static int Run(string[] args)
    {
        var program = Option(args, "--program");
        var browser = Option(args, "--browser") ?? "/usr/bin/chromium";
        var examples = Option(args, "--examples") ?? "examples";
        if (program is null || !File.Exists(program) || !File.Exists(browser) || !Directory.Exists(examples))
        {
            Console.Error.WriteLine($"pages: needs the program ({program ?? "--program"}), a browser ({browser}) and the examples ({examples}).");
            return 2;
        }

        var (edits, plans) = (int.Parse(Option(args, "--edits") ?? "15", CultureInfo.InvariantCulture), int.Parse(Option(args, "--plans") ?? "5", CultureInfo.InvariantCulture));
        Measure(program, browser, examples, edits, plans).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task Measure(string program, string browser, string examples, int edits, int plans)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var chromium = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = browser,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        using var served = new ServedProgram(program);
        Console.WriteLine($"start until it answers, s: {(await served.Start()).TotalSeconds:0.00}");
        var page = await chromium.NewPageAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        page.SetDefaultTimeout(600_000);

        var weight = 0L;
        page.Response += async (_, response) => Interlocked.Add(ref weight, await Size(response));
        var clock = Stopwatch.StartNew();
        await page.GotoAsync(served.Url);
        await page.Locator(".elevation svg .case").First.WaitForAsync();
        Console.WriteLine($"first page until the wall is drawn, s: {clock.Elapsed.TotalSeconds:0.00}");
        await Planned(page);
        await Task.Delay(500);
        Console.WriteLine($"weight of the first visit, KiB: {Interlocked.Exchange(ref weight, 0) / 1024}");
        await page.GetByRole(AriaRole.Button, new() { Name = "In the round" }).ClickAsync();
        await page.Locator(".round-canvas").WaitForAsync();
        await Task.Delay(2000);
        Console.WriteLine($"added by the view in the round, KiB: {Interlocked.Exchange(ref weight, 0) / 1024}");

        foreach (var name in new[] { "display-wall", "archive" })
            await MeasureJob(page, served, Path.Combine(examples, name + ".json"), edits, plans);
        Console.WriteLine($"memory with these jobs open, MiB: {served.MemoryMiB()}");
        await OpenMany(page, served.Url);
        Console.WriteLine($"memory with {Jobs} jobs open, MiB: {served.MemoryMiB()}");

        // The program is told to let go after one minute; the browser's connection to it is given up some minutes after a window is closed.
        await page.GotoAsync("about:blank");
        await Task.Delay(TimeSpan.FromMinutes(6));
        Console.WriteLine($"memory six minutes after the last window was closed, MiB: {served.MemoryMiB()}");
    }

    private static async Task MeasureJob(IPage page, ServedProgram served, string file, int edits, int plans)
    {
        await page.GotoAsync(served.Url + "/jobs");
        await page.Locator("input[type=file]").SetInputFilesAsync(file);
        await page.Locator(".elevation svg .case").First.WaitForAsync();
        await Planned(page);
        var drawn = new List<double>();
        for (var i = 0; i < edits; i++)
            drawn.Add(await page.EvaluateAsync<double>(EditScript, string.Create(CultureInfo.InvariantCulture, $"{101 + (i % 7)} mm")));
        await Planned(page);
        var planned = new List<double>();
        var processor = new List<double>();
        for (var i = 0; i < plans; i++)
        {
            var before = served.ProcessorTime();
            var clock = Stopwatch.StartNew();
            await page.EvaluateAsync<double>(EditScript, string.Create(CultureInfo.InvariantCulture, $"{90 + i} mm"));
            await Planned(page);
            planned.Add(clock.Elapsed.TotalSeconds);
            processor.Add((served.ProcessorTime() - before).TotalSeconds);
        }

        var name = Path.GetFileNameWithoutExtension(file);
        Console.WriteLine($"{name}: edit until redrawn, ms, median of {edits}: {Median(drawn):0}, longest {drawn.Max():0}");
        Console.WriteLine($"{name}: edit until sheets, checks, timetable and price are planned anew, s, median of {plans}: {Median(planned):0.0}, longest {planned.Max():0.0}");
        Console.WriteLine($"{name}: processor time of the program for it, s, median: {Median(processor):0.0}, longest {processor.Max():0.0}");
    }

    private static async Task OpenMany(IPage page, string url)
    {
        await page.GotoAsync(url + "/jobs");
        var source = page.Locator(".jobs li").Last;
        for (var count = await page.Locator(".jobs li").CountAsync(); count < Jobs; count++)
        {
            await source.GetByRole(AriaRole.Button, new() { Name = "Copy" }).ClickAsync();
            await page.Locator(".jobs li").Nth(count).WaitForAsync();
        }

        var addresses = await page.Locator(".jobs a:not(.export)").EvaluateAllAsync<string[]>("links => links.map(l => l.getAttribute('href'))");
        foreach (var address in addresses)
        {
            await page.GotoAsync(url + address);
            await Planned(page);
        }
    }

    private static async Task Planned(IPage page)
    {
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
        await page.Locator(".planning").WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    private static async Task<long> Size(IResponse response)
    {
        try
        {
            var sizes = await response.Request.SizesAsync();
            return sizes.ResponseBodySize + sizes.ResponseHeadersSize;
        }
        catch (PlaywrightException)
        {
            return 0;
        }
    }

    private static double Median(List<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count % 2 == 1 ? sorted[sorted.Count / 2] : (sorted[(sorted.Count / 2) - 1] + sorted[sorted.Count / 2]) / 2;
    }

    private static string? Option(string[] args, string name) => Array.IndexOf(args, name) is >= 0 and var at && at + 1 < args.Length ? args[at + 1] : null;
}
