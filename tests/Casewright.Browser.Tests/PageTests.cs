using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>The pages as a person meets them, in a real browser.</summary>
public sealed class PageTests(ServedPages pages) : IClassFixture<ServedPages>
{
    public static TheoryData<ColorScheme> Themes => [ColorScheme.Light, ColorScheme.Dark];

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Every_step_opens_without_an_error_and_without_a_grave_barrier(ColorScheme theme)
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults, theme);
        var id = pages.AddStarter();
        foreach (var step in new[] { "jobs", "new" }.Concat(ServedPages.Steps))
        {
            await page.GotoAsync(step is "jobs" or "new" ? $"{pages.Url}/{step}" : $"{pages.Url}/job/{id}/{step}");
            if (step is not ("jobs" or "new"))
                await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
            await page.Locator("h1").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
            var barriers = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").Select(Told);
            Assert.True(!barriers.Any(), $"{step}, {theme}: {string.Join("; ", barriers)}");
        }

        Assert.Empty(faults);
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task A_surveyed_wall_is_drawn_and_a_reading_typed_changes_its_opening(ColorScheme theme)
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults, theme);
        var id = pages.AddStarter();
        await page.GotoAsync($"{pages.Url}/job/{id}/measure");
        await page.GetByRole(AriaRole.Button, new() { Name = "Survey this wall" }).First.ClickAsync();
        await page.GetByLabel("Floor, Along the wall, new line").FillAsync("600 mm");
        await page.GetByLabel("Floor, Along the wall, new line").PressAsync("Tab");
        await page.GetByLabel("Floor, at the wall, new line").FillAsync("1006 mm");
        await page.GetByLabel("Floor, at the wall, new line").PressAsync("Tab");
        await page.GetByLabel("Floor, at the wall, line 1").WaitForAsync();

        Assert.Equal(6, pages.Sessions.Open(id)!.State.Job.Walls[0].Survey!.Floor[0].Back!.Value.Millimetres - 1000);
        await page.Locator("svg.room").First.WaitForAsync();
        var barriers = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").Select(Told);
        Assert.True(!barriers.Any(), string.Join("; ", barriers));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_first_job_goes_from_a_few_questions_to_a_packet()
    {
        List<string> faults = [];
        var page = await pages.Open("/new", faults);

        await page.GetByLabel("Name of the job").FillAsync("Garden room");
        await page.GetByLabel("Tightest width of the wall").FillAsync("2.4 m");
        await page.GetByLabel("Tightest width of the wall").PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the wall" }).ClickAsync();
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Papers" }).ClickAsync();
        var link = await page.GetByRole(AriaRole.Link, new() { Name = "Download the packet" }).GetAttributeAsync("href");
        var packet = await page.APIRequest.GetAsync(pages.Url + link);

        Assert.Equal(200, packet.Status);
        Assert.Equal("%PDF", System.Text.Encoding.ASCII.GetString((await packet.BodyAsync())[..4]));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_base_dragged_up_changes_its_height_and_undo_brings_it_back()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        var session = pages.Sessions.Open(id)!;
        var before = session.State.Job.Runs[0].Base.Height;
        await page.GotoAsync($"{pages.Url}/job/{id}/design");
        var handle = page.Locator("[data-drag^='base|'] .knob");
        await handle.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var box = (await handle.BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));

        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, y - 10, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await Until(() => session.State.Job.Runs[0].Base.Height > before);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Until(() => session.State.Job.Runs[0].Base.Height == before);

        Assert.Empty(faults);
    }

    [Fact]
    public async Task Two_windows_on_one_job_show_each_others_edits()
    {
        List<string> faults = [];
        var one = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        var two = await pages.Open($"/job/{id}/design", faults);
        await one.GotoAsync($"{pages.Url}/job/{id}/design");

        await one.GetByLabel("Depth", new() { Exact = true }).FillAsync("333 mm");
        await one.GetByLabel("Depth", new() { Exact = true }).PressAsync("Tab");

        await Assertions.Expect(two.GetByLabel("Depth", new() { Exact = true })).ToHaveValueAsync("333");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_length_that_cannot_be_read_is_refused_beside_the_field_and_changes_nothing()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        await page.GotoAsync($"{pages.Url}/job/{id}/design");

        await page.GetByLabel("Depth", new() { Exact = true }).FillAsync("a cubit");
        await page.GetByLabel("Depth", new() { Exact = true }).PressAsync("Tab");

        await Assertions.Expect(page.Locator(".field.wrong .note")).ToContainTextAsync("Accepted");
        Assert.Equal(1, pages.Sessions.Open(id)!.State.Revision);
    }

    private static string Told(AxeResultItem item) => $"{item.Id}: {item.Help} ({string.Join(", ", item.Nodes.Take(2).Select(n => n.Html))})";

    private static async Task Until(Func<bool> met)
    {
        for (var i = 0; i < 1800; i++)
        {
            if (met())
                return;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Fail("It did not happen within three minutes.");
    }
}
