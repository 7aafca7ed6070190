using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>Every page at every width: nothing wider than the screen, touch targets large enough, and a picture of each to look at.</summary>
public sealed class ScreenTests(ServedPages pages) : IClassFixture<ServedPages>
{
    /// <summary>Where the pictures go; never into the repository.</summary>
    private static readonly string s_folder = Environment.GetEnvironmentVariable("CASEWRIGHT_SCREENS") ?? Path.Combine(Path.GetTempPath(), "casewright-screens");

    public static TheoryData<int, int> Screens => new() { { 1440, 900 }, { 1024, 768 }, { 768, 1024 }, { 390, 844 } };

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Every_page_fits_its_screen(int width, int height)
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        await page.SetViewportSizeAsync(width, height);
        Directory.CreateDirectory(s_folder);
        foreach (var path in new[] { "/jobs", "/new" }.Concat(ServedPages.Steps.Select(s => $"/job/{id}/{s}")))
        {
            await page.GotoAsync(pages.Url + path);
            await page.Locator("h1").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
            if (path.StartsWith("/job/", StringComparison.Ordinal))
                await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
            var name = path.Split('/')[^1];
            await page.ScreenshotAsync(new() { Path = Path.Combine(s_folder, $"{name}-{width}.png") });
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth") <= 0, $"{name} is wider than {width}.");
            Assert.Empty(await page.EvaluateAsync<string[]>(SmallButtons));
        }

        Assert.Empty(faults);
    }

    /// <summary>Buttons, fields and what opens lower than 44 px; links inside a sentence are exempt, as in WCAG 2.2, 2.5.5 and 2.5.8.</summary>
    private const string SmallButtons = """
        [...document.querySelectorAll('button, input, select, summary, .button, .tap, .subject')]
          .map((e) => [e, (/^(radio|checkbox)$/.test(e.type) && e.closest('label')) || e])
          .filter(([e, box]) => { const r = box.getBoundingClientRect(); return r.width > 2 && r.height > 2 && r.height < 43.5 && e.type !== 'range'; })
          .map(([e, box]) => `${e.tagName} ${e.className} ${box.textContent.trim().slice(0, 30)} ${box.getBoundingClientRect().height}`)
        """;
}
