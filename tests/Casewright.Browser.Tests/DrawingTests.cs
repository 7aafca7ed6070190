using Casewright.Engine.Splicing;
using Casewright.Model.Measure;
using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>Working on the drawing: the splice line and its closed heights, figures typed over dimensions, one choice on every page.</summary>
public sealed class DrawingTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task A_splice_line_dragged_shows_where_it_may_not_go_and_comes_to_rest_where_it_may()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddTall();
        var session = pages.Sessions.Open(id)!;
        await page.GotoAsync($"{pages.Url}/job/{id}/design");
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
        var box = (await page.Locator(".elevation .splice .sight").First.BoundingBoxAsync())!;
        var (x, y) = (box.X + 20, box.Y + (box.Height / 2));

        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, y + 40, new() { Steps = 4 });
        await page.Locator(".elevation .zone").First.WaitForAsync();
        await page.Locator(".held-tag").WaitForAsync();
        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2");

        var run = session.State.Job.Runs[0];
        var stated = run.Splices.Height;
        Assert.NotNull(stated);
        Assert.Null(JointHeights.Of(session.State.Job, session.State.Casework!, run.Id)!.WhyNot(stated.Value));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_figure_typed_over_a_dimension_changes_it_in_any_unit()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        var session = pages.Sessions.Open(id)!;
        await page.GotoAsync($"{pages.Url}/job/{id}/design");
        var first = session.State.Casework!.Cases[0];

        await page.GetByRole(AriaRole.Button, new() { Name = $"width of case {first.Id}" }).ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = $"width of case {first.Id}" }).FillAsync("2' 4 1/2\"");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2");

        // 28 1/2 in are 723.9 mm.
        Assert.Equal(Length.FromMillimetres(723.9m), session.State.Casework!.Cases[0].Width);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_part_chosen_on_the_wall_is_chosen_on_its_sheet_and_its_splice_card_is_there()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddTall();
        await page.GotoAsync($"{pages.Url}/job/{id}/design?at=C1-L");
        await page.Locator(".foot .tally:not(.stale)").WaitForAsync();
        await Assertions.Expect(page.Locator(".side h1")).ToHaveTextAsync("C1-L");

        await page.GetByRole(AriaRole.Link, new() { Name = "Splice & cut" }).ClickAsync();

        await Assertions.Expect(page.Locator(".layoutview .piece.chosen").First).ToBeVisibleAsync();
        var card = page.Locator(".card img").First;
        await card.ScrollIntoViewIfNeededAsync();
        await Assertions.Expect(card).ToHaveJSPropertyAsync("complete", true);
        Assert.True(await card.EvaluateAsync<int>("i => i.naturalWidth") > 300);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_piece_ticked_off_is_ticked_in_another_window_and_after_loading_again()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        await page.GotoAsync($"{pages.Url}/job/{id}/make");
        await page.Locator(".tick input").First.CheckAsync();
        await Assertions.Expect(page.Locator(".tick.done")).ToHaveCountAsync(1);

        var other = await pages.Open($"/job/{id}/make", faults);
        await page.ReloadAsync();

        await Assertions.Expect(other.Locator(".tick.done")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".tick.done")).ToHaveCountAsync(1);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_check_leads_to_its_calculation_sheet()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        await page.GotoAsync($"{pages.Url}/job/{id}/checks");
        var link = page.GetByRole(AriaRole.Link, new() { Name = "Calculation sheet" }).First;
        await link.WaitForAsync();
        var address = await link.GetAttributeAsync("href");

        var sheet = await page.RunAndWaitForPopupAsync(() => link.ClickAsync());
        var answer = await page.APIRequest.GetAsync(pages.Url + address);

        Assert.EndsWith(address!, sheet.Url, StringComparison.Ordinal);
        Assert.Equal(200, answer.Status);
        Assert.Equal("%PDF", System.Text.Encoding.ASCII.GetString((await answer.BodyAsync())[..4]));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_sawn_piece_that_is_spoiled_is_to_be_sawn_again_and_the_rest_is_planned_around_what_is_cut()
    {
        List<string> faults = [];
        var page = await pages.Open("/jobs", faults);
        var id = pages.AddStarter();
        var session = pages.Sessions.Open(id)!;
        await page.GotoAsync($"{pages.Url}/job/{id}/make");
        await page.Locator(".tick input").First.CheckAsync();
        await Assertions.Expect(page.Locator(".tick.done")).ToHaveCountAsync(1);

        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("is spoiled or lost") }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("revision 2");

        await Assertions.Expect(page.Locator(".tick.done")).ToHaveCountAsync(0);
        Assert.Single(Assert.Single(session.State.Job.Sawn!.Sheets).Pieces, p => p.Lost);
        Assert.Empty(faults);
    }
}
