using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Nudges;

namespace Casewright.Browser.Tests;

/// <summary>Timetable and money in a real browser: the chart, ticking work off, comparing and taking a way to build it, stopping a search.</summary>
public sealed class PromisePageTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task The_timetable_has_a_chart_and_keeps_what_is_ticked_off()
    {
        var faults = new List<string>();
        var id = pages.Sessions.Add(ServedPages.Example("display-wall"), "new job").Id;
        var page = await pages.Open($"/job/{id}/timetable", faults);
        await page.Locator(".chart svg .task").First.WaitForAsync();
        Assert.NotEqual(0, await page.Locator(".chart svg .band").CountAsync());

        await page.Locator("tbody input[type=checkbox]").First.CheckAsync();
        await page.GetByText("1 task is done and stays").WaitForAsync();
        var progress = pages.Sessions.Open(id)!.State.Job.Progress!;
        Assert.NotNull(Assert.Single(progress.Records).Finish);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Ways_to_build_it_are_compared_and_one_choice_takes_one()
    {
        var faults = new List<string>();
        var id = pages.AddStarter();
        var page = await pages.Open($"/job/{id}/money", faults);
        await page.Locator(".grid.price").WaitForAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Compare the ways to build it" }).ClickAsync();
        var stacked = page.Locator(".schemes tr", new() { HasText = "Stacked" });
        await stacked.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Take this way" }).ClickAsync(new() { Timeout = 240_000 });
        await page.GetByText("The job has changed since").First.WaitForAsync();
        Assert.Equal(2, pages.Sessions.Open(id)!.State.Job.Runs[0].Tiers.Count);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_search_for_small_changes_runs_beside_and_can_be_stopped()
    {
        var faults = new List<string>();
        var id = pages.AddStarter();
        var page = await pages.Open($"/job/{id}/money", faults);
        await page.Locator(".grid.price").WaitForAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Look for small changes" }).ClickAsync();
        await page.GetByText("of at most 24").WaitForAsync(new() { Timeout = 240_000 });
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Stop", Exact = true }).First.ClickAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Look for small changes" }).WaitForAsync();
        Assert.False(pages.Sessions.Open(id)!.Nudges.Working);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_small_change_is_taken_with_one_press_and_undone_with_another()
    {
        var faults = new List<string>();
        var id = pages.AddStarter();
        var session = pages.Sessions.Open(id)!;
        var before = session.State.Job;
        var page = await pages.Open($"/job/{id}/money", faults);
        await page.Locator(".grid.price").WaitForAsync();

        // The search of the page with fewer changes to try: the first six hold one that saves money, a shelf less deep.
        session.Nudges.Start(session.State.Revision, (_, stop) => NudgeSearch.Search(before, 6, PlanningEffort.Quick, cancellation: stop));
        var take = page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Take it" }).First;
        await take.ClickAsync(new() { Timeout = 240_000 });
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2");

        var nudge = session.Nudges.Result!.Value!.Nudges[0];
        Assert.Equal(nudge.Job, session.State.Job);
        Assert.NotEqual(before, session.State.Job);
        await Microsoft.Playwright.Assertions.Expect(take).ToBeDisabledAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 1");
        Assert.Equal(before, session.State.Job);
        Assert.Empty(faults);
    }
}
