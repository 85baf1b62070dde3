using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Somebody who starts with an empty library and types everything in.</summary>
public sealed class FromNothingTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task A_board_a_box_and_an_event_type_typed_in_are_enough_to_plan()
    {
        await Page.OpenAsync(GigRigUrls.NewGear("board"));
        await TypeAsync("Name", "Small plank");
        await TypeAsync("Width", "40 cm");
        await TypeAsync("Depth", "5 1/2\"");
        await TypeAsync("Mass", "1200");
        await SaveAsync("Small plank");

        await Page.OpenAsync(GigRigUrls.NewGear("device"));
        await TypeAsync("Name", "Bench tuner");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Compact" }).ClickAsync();
        await PickRoleAsync("tuner");
        await Page.GetByLabel("It needs power").UncheckAsync();
        await SaveAsync("Bench tuner");

        await Page.OpenAsync(GigRigUrls.NewEventType);
        await TypeAsync("Name", "Sound check");
        await PickRoleAsync("tuner");
        await SaveAsync("Sound check");

        await Page.OpenAsync(GigRigUrls.Plan);
        await Page.Button("Propose a rig").ClickAsync();

        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();
        await Expect(Page.Locator("main")).ToContainTextAsync("1 box");
        Assert.Empty(ConsoleErrors());
    }

    private async Task TypeAsync(string label, string text)
    {
        var entry = Page.GetByLabel(label, new() { Exact = true });
        await entry.FillAsync(text);
        await entry.BlurAsync();
    }

    private async Task PickRoleAsync(string text)
    {
        await Page.GetByLabel("Role", new() { Exact = true }).FillAsync(text);
        await Page.Locator(".mud-popover-open .mud-list-item").First.ClickAsync();
    }

    private async Task SaveAsync(string name)
    {
        await Page.Button("Save").ClickAsync();
        await Expect(Page.GetByText($"Saved {name}.")).ToBeVisibleAsync();
    }
}
