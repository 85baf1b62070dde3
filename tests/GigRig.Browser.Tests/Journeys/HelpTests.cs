using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Help where it is asked for: the words, the keys, the tour.</summary>
public sealed class HelpTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task A_question_mark_shows_the_keys_which_lead_where_they_say_until_they_are_switched_off()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        var keys = Page.GetByRole(AriaRole.Dialog, new() { Name = "Keys" });

        await Page.Keyboard.PressAsync("?");
        await Expect(keys).ToBeVisibleAsync();
        Assert.Empty(await Axe.FaultsAsync(Page, "the list of keys"));
        await Page.Keyboard.PressAsync("Escape");
        await Expect(keys).ToBeHiddenAsync();

        await Page.Keyboard.PressAsync("g");
        await Page.Keyboard.PressAsync("w");
        await Expect(Page.Heading("The words")).ToBeVisibleAsync();

        await Page.Button("Keys").ClickAsync();
        await keys.GetByRole(AriaRole.Checkbox).UncheckAsync();
        await keys.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
        await Page.Keyboard.PressAsync("?");
        await Expect(keys).ToBeHiddenAsync();
        await Page.ReloadAsync();
        await Page.WaitForSelectorAsync(".gr-shell[data-interactive=true]");
        await Page.Keyboard.PressAsync("?");
        await Expect(keys).ToBeHiddenAsync();
        Assert.Empty(ConsoleErrors());
    }

    [Fact]
    public async Task Keys_do_nothing_while_something_is_typed()
    {
        await Page.OpenAsync(GigRigUrls.NewEventType);
        var name = Page.GetByLabel("Name").First;

        await name.PressSequentiallyAsync("gw?");

        await Expect(name).ToHaveValueAsync("gw?");
        await Expect(Page.GetByRole(AriaRole.Dialog, new() { Name = "Keys" })).ToBeHiddenAsync();
    }

    [Fact]
    public async Task A_word_is_explained_in_a_tab_of_its_own()
    {
        await Page.OpenAsync(GigRigUrls.NewEventType);

        var words = await Page.Context.RunAndWaitForPageAsync(() => Page.GetByRole(AriaRole.Link, new() { Name = "What does sound mean? Opens in a new tab" }).ClickAsync());

        await words.WaitForSelectorAsync(".gr-shell[data-interactive=true]");
        await Expect(words.Locator("#word-sound")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task The_tour_is_offered_once_can_be_skipped_and_stays_away()
    {
        await Page.OpenAsync(GigRigUrls.Home);

        await Page.Button("Show me").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Step 1 of 4");
        Assert.Empty(await Axe.FaultsAsync(Page, "the tour"));
        await Page.Button("Next").ClickAsync();
        await Page.Button("Skip the rest").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Dialog)).ToHaveCountAsync(0);

        await Page.OpenAsync(GigRigUrls.Home);
        await Page.Button("Start empty").WaitForAsync();
        await Expect(Page.Button("Show me")).ToHaveCountAsync(0);
    }
}
