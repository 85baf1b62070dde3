using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>No mouse: from the first start to a proved rig.</summary>
public sealed class KeyboardTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task The_main_actions_are_reached_and_pressed_by_keyboard()
    {
        await Page.OpenAsync(GigRigUrls.Home);
        Assert.True(await Page.TabToAsync("Look around with a demo library"));
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Heading("Plan a rig")).ToBeVisibleAsync();

        await Page.OpenAsync(GigRigUrls.Home);
        Assert.True(await Page.TabToAsync("Plan Jam night"));
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Heading("Plan a rig")).ToBeVisibleAsync();

        Assert.True(await Page.TabToAsync("Propose a rig"));
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();

        Assert.True(await Page.TabToAsync("Save rig"));
    }

    [Fact]
    public async Task What_is_wrong_with_a_form_has_the_keys_when_it_was_not_saved()
    {
        await Page.OpenAsync(GigRigUrls.NewEventType);
        await Page.GetByLabel("Name", new() { Exact = true }).FillAsync("Sound check");

        await Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).FocusAsync();
        await Page.Keyboard.PressAsync("Enter");

        await Expect(Page.GetByText("1 entry needs another look")).ToBeVisibleAsync();
        await Expect(Page.GetByLabel("Role", new() { Exact = true })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_first_stop_skips_the_navigation()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        Assert.True(await Page.TabToAsync("Skip to the content"));
        await Page.Keyboard.PressAsync("Enter");

        await Expect(Page.GetByRole(AriaRole.Main)).ToBeFocusedAsync();
        Assert.EndsWith(GigRigUrls.Gear, new Uri(Page.Url).AbsolutePath);
    }
}
