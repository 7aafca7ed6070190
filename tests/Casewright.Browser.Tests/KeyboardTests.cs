using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>Everything of a first job by keyboard alone.</summary>
public sealed class KeyboardTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task A_first_job_goes_from_the_list_to_the_packet_without_a_mouse()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);

        await TabTo(page, "New job");
        await page.Keyboard.PressAsync("Enter");
        await TabTo(page, "Name of the job");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("By keys");
        await TabTo(page, "Tightest width of the wall");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("2400");
        await TabTo(page, "Plan the wall");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();

        await TabTo(page, "base height of run A");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2");
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 1");
        await page.Keyboard.PressAsync("?");
        await Assertions.Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.GetByRole(AriaRole.Dialog)).ToBeHiddenAsync();

        await page.Keyboard.PressAsync("7");
        await page.GetByRole(AriaRole.Link, new() { Name = "Download the packet" }).WaitForAsync();
        await TabTo(page, "Download the packet");
        var packet = await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Enter"));

        Assert.EndsWith(".pdf", packet.SuggestedFilename, StringComparison.Ordinal);
        Assert.Empty(faults);
    }

    /// <summary>Presses Tab until the thing of this name has the focus.</summary>
    private static async Task TabTo(IPage page, string name)
    {
        for (var i = 0; i < 150; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var reached = await page.EvaluateAsync<string>("""
                (() => {
                  const e = document.activeElement;
                  return (e?.getAttribute('aria-label') || (e?.id && document.querySelector(`label[for="${e.id}"]`)?.textContent) || e?.textContent || '').trim();
                })()
                """);
            if (reached == name)
                return;
        }

        Assert.Fail($"Tab never came to '{name}'.");
    }
}
