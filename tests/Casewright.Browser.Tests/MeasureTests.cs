using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>What the tape, the string and the probe read is entered on the page of measuring, and what cannot be true is told at its line.</summary>
public sealed class MeasureTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task A_diagonal_that_cannot_be_true_is_told_at_its_line_until_it_is_put_right()
    {
        List<string> faults = [];
        var (page, survey) = await Surveyed(faults);
        await Type(page, "Widths, Height, new line", "100 mm");
        await Type(page, "Widths, at the wall, new line", "1486 mm");
        await Type(page, "Diagonals, Height left, new line", "100 mm");
        await Type(page, "Diagonals, height right, new line", "2100 mm");
        await Type(page, "Diagonals, diagonal, new line", "2600 mm");

        // By hand: √(1486² + (2100 − 100)²) = √6 208 196 = 2491.6 mm, and 2600 is far from it.
        await Assertions.Expect(page.Locator("table.readings tr .trouble")).ToContainTextAsync("2491.6");
        Assert.Equal(Length.FromMillimetres(2600), Assert.Single(survey().Diagonals).Distance);
        await Type(page, "Diagonals, diagonal, line 1", "2491 mm");
        await Assertions.Expect(page.Locator("table.readings tr .trouble")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove line 1 of Diagonals" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Diagonals, diagonal, line 1")).ToHaveCountAsync(0);

        Assert.Empty(survey().Diagonals);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Strings_studs_outlets_and_the_way_in_are_entered_line_by_line()
    {
        List<string> faults = [];
        var (page, survey) = await Surveyed(faults);

        await page.GetByText("Face of the wall: strings and plumb lines").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "+ string" }).ClickAsync();
        await Type(page, "Height of the new string", "1200 mm");
        await Type(page, "New string, Along the wall, new line", "0");
        await Type(page, "New string, line to wall, new line", "20 mm");
        await Type(page, "New string, Along the wall, new line", "700 mm");
        await Type(page, "New string, line to wall, new line", "26 mm");
        await page.GetByLabel("String 1, line to wall, line 2").WaitForAsync();
        Assert.Equal([new(Length.Zero, Length.FromMillimetres(20)), new(Length.FromMillimetres(700), Length.FromMillimetres(26))], Assert.Single(survey().Strings).Readings);

        await page.GetByText("Studs", new() { Exact = true }).ClickAsync();
        await Type(page, "Studs at", "800; 400 mm; 47.25 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the stud at 400" }).WaitForAsync();

        // 47.25 in × 25.4 mm = 1200.15 mm.
        Assert.Equal([Length.FromMillimetres(400), Length.FromMillimetres(800), Length.FromMillimetres(1200.15m)], survey().Studs);

        await page.GetByText("What is on the wall: outlets, openings, beams, skirting").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "+ socket outlet" }).ClickAsync();
        var entry = page.GetByRole(AriaRole.Group, new() { Name = "New: socket outlet" });
        await Type(entry, "Left edge, along the wall", "300 mm");
        await Type(entry, "Lower edge, above the floor", "250 mm");
        await Type(entry, "Width", "80 mm");
        await Type(entry, "Height", "80 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove socket outlet" }).WaitForAsync();
        var outlet = Assert.Single(survey().Features);
        Assert.Equal((FeatureKind.Outlet, Length.FromMillimetres(300)), (outlet.Kind, outlet.X));

        await page.GetByRole(AriaRole.Button, new() { Name = "+ turn" }).ClickAsync();
        var turn = page.GetByRole(AriaRole.Group, new() { Name = "New: turn" });
        await Type(turn, "Clear width", "900 mm");
        await Type(turn, "Clear height", "2000 mm");
        await Type(turn, "Clear width after the turn", "950 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove turn" }).WaitForAsync();
        var route = Assert.Single(pages.Sessions.Open(_id)!.State.Job.Site.Route!);
        Assert.Equal((PassageKind.Turn, Length.FromMillimetres(950)), (route.Kind, route.NextWidth));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_figure_that_no_job_file_can_hold_is_refused_with_its_place_and_changes_nothing()
    {
        List<string> faults = [];
        var (page, survey) = await Surveyed(faults);

        await Type(page, "Level line above the highest floor point", "5 mm");

        await Assertions.Expect(page.Locator(".notice")).ToContainTextAsync("walls[0].survey.datum");
        Assert.Equal(Length.FromMillimetres(1000), survey().Datum);
        Assert.Empty(faults);
    }

    private Guid _id;

    private async Task<(IPage Page, Func<WallSurvey> Survey)> Surveyed(List<string> faults)
    {
        var page = await pages.Open("/jobs", faults);
        _id = pages.AddStarter();
        await page.GotoAsync($"{pages.Url}/job/{_id}/measure");
        await page.GetByRole(AriaRole.Button, new() { Name = "Survey this wall" }).First.ClickAsync();
        await page.GetByLabel("Floor, Along the wall, new line").WaitForAsync();
        return (page, () => pages.Sessions.Open(_id)!.State.Job.Walls[0].Survey!);
    }

    private static Task Type(IPage page, string label, string text) => Type(page.Locator("main"), label, text);

    private static async Task Type(ILocator within, string label, string text)
    {
        var field = within.GetByLabel(label, new() { Exact = true });
        await field.FillAsync(text);
        await field.PressAsync("Enter");
        // The line just entered may have gone from where it stood, and its field with it.
        await within.Page.Keyboard.PressAsync("Tab");
        await Task.Delay(150, TestContext.Current.CancellationToken);
    }
}
