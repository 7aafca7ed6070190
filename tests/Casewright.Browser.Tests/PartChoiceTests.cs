using Casewright.Model.Parts;
using Microsoft.Playwright;

namespace Casewright.Browser.Tests;

/// <summary>Parts are chosen on the drawing of the wall, by keys and in the round, and the choice is the same on every page.</summary>
public sealed class PartChoiceTests(ServedPages pages) : IClassFixture<ServedPages>
{
    [Fact]
    public async Task Doors_and_drawers_are_drawn_as_fronts_and_chosen_by_a_press_or_by_keys()
    {
        List<string> faults = [];
        var id = pages.Sessions.Add(ServedPages.Example("dining-dresser"), "new job").Id;
        var parts = pages.Sessions.Open(id)!.State.Casework!.Parts;
        var doors = parts.Where(p => p.Role == PartRole.Door).ToList();
        var drawer = parts.First(p => p.Role == PartRole.DrawerFront);
        var page = await pages.Open($"/job/{id}/design", faults);

        await Assertions.Expect(page.Locator(".elevation .swing")).ToHaveCountAsync(doors.Count);
        await page.Locator($".elevation [data-pick='{doors[0].Id}']").ClickAsync();
        await Assertions.Expect(page.Locator(".side h1")).ToHaveTextAsync(doors[0].Id);

        await page.Locator($".elevation [data-pick='{drawer.Id}']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".side h1")).ToHaveTextAsync(drawer.Id);

        var ofCase = parts.Where(p => p.Case == drawer.Case).Select(p => p.Id).ToList();
        await page.Keyboard.PressAsync(",");
        await Assertions.Expect(page.Locator(".side h1")).ToHaveTextAsync(ofCase[(ofCase.IndexOf(drawer.Id) - 1 + ofCase.Count) % ofCase.Count]);
        await page.Keyboard.PressAsync(".");
        await Assertions.Expect(page.Locator(".side h1")).ToHaveTextAsync(drawer.Id);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task A_press_in_the_round_chooses_what_is_seen_there_and_a_section_what_lies_behind_it()
    {
        List<string> faults = [];
        var id = pages.Sessions.Add(ServedPages.Example("dining-dresser"), "new job").Id;
        var casework = pages.Sessions.Open(id)!.State.Casework!;
        var page = await pages.Open($"/job/{id}/design", faults);
        await page.GetByRole(AriaRole.Button, new() { Name = "In the round" }).ClickAsync();
        await page.Locator("canvas.round-canvas[data-parts]").WaitForAsync();

        var first = await PressLow(page);
        await page.GetByLabel("Depth of the section").FillAsync("40");
        await page.Keyboard.PressAsync("Escape");
        var second = await PressLow(page);

        Assert.True(casework.Parts.First(p => p.Id == first).Role is PartRole.Door or PartRole.DrawerFront, first);
        Assert.False(casework.Parts.First(p => p.Id == second).Role is PartRole.Door or PartRole.DrawerFront, second);
        await page.GetByRole(AriaRole.Link, new() { Name = "Splice & cut" }).ClickAsync();
        await Assertions.Expect(page.Locator("aside .code-small").First).ToHaveTextAsync(second, new() { Timeout = 180_000 });
        Assert.Empty(faults);
    }

    /// <summary>Presses where the doors of the lower cases are seen.</summary>
    private static async Task<string> PressLow(IPage page)
    {
        var canvas = page.Locator("canvas.round-canvas");
        var box = (await canvas.BoundingBoxAsync())!;
        await canvas.ClickAsync(new() { Position = new() { X = box.Width * 0.45f, Y = box.Height * 0.68f } });
        var name = page.Locator(".side h1.code");
        await name.WaitForAsync();
        return (await name.TextContentAsync())!.Trim();
    }
}
