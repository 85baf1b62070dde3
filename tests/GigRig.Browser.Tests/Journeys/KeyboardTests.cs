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
    public async Task A_row_that_was_added_has_the_keys_and_one_that_is_taken_away_gives_them_to_its_neighbour()
    {
        await Page.OpenAsync(GigRigUrls.NewEventType);
        var names = Page.Locator(".gr-soundrow").GetByLabel("Name", new() { Exact = true });

        await PressAsync("Add a sound");
        await Expect(names).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("Solo");
        await PressAsync("Add a sound");
        await Expect(names.Nth(1)).ToBeFocusedAsync();

        await Page.Button("Take this sound away").Nth(1).FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(names).ToHaveCountAsync(1);
        await Expect(names).ToBeFocusedAsync();
        await Expect(names).ToHaveValueAsync("Solo");

        await PressAsync("Take this sound away");
        await Expect(names).ToHaveCountAsync(0);
        await Expect(Page.Button("Add a sound")).ToBeFocusedAsync();

        async Task PressAsync(string name)
        {
            await Page.Button(name).FocusAsync();
            await Page.Keyboard.PressAsync("Enter");
        }
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
