using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>The program is killed in the middle of edits: whatever was entered is there when it comes back, and a figure half typed too.</summary>
public sealed class KilledServerTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task A_kill_in_the_middle_of_edits_loses_nothing_that_was_entered_and_the_page_comes_back_by_itself()
    {
        using var program = new ServedProcess();
        var page = await pages.Blank();
        await program.Start(TestContext.Current.CancellationToken);
        await page.GotoAsync(program.Url);
        await page.GetByLabel("Depth", new() { Exact = true }).FillAsync("333 mm");
        await page.GetByLabel("Depth", new() { Exact = true }).PressAsync("Tab");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2", new() { Timeout = 90_000 });
        await page.GetByLabel("Base height", new() { Exact = true }).FillAsync("");
        await page.GetByLabel("Base height", new() { Exact = true }).PressSequentiallyAsync("123 mm");

        program.Kill();
        await Assertions.Expect(page.GetByText("The program does not answer.")).ToBeVisibleAsync(new() { Timeout = 90_000 });
        await program.Start(TestContext.Current.CancellationToken);

        await Assertions.Expect(page.GetByLabel("Base height", new() { Exact = true })).ToHaveValueAsync("123 mm", new() { Timeout = 90_000 });
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2", new() { Timeout = 90_000 });
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
        await Assertions.Expect(page.GetByLabel("Base height", new() { Exact = true })).ToHaveValueAsync("123 mm", new() { Timeout = 90_000 });
        await page.GetByLabel("Base height", new() { Exact = true }).PressAsync("Enter");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 3", new() { Timeout = 90_000 });
    }
}
