using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Nothing typed is ever lost, whatever happens to the page or the app.</summary>
public sealed class UnsavedEntriesTests(Chromium chromium) : BrowserTest(chromium)
{
    private ILocator Name => Page.GetByLabel("Name", new() { Exact = true });

    [Fact]
    public async Task An_entry_survives_leaving_the_page_and_can_be_discarded()
    {
        await TypeNameAsync("Half a board");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Events" }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = "Event types", Exact = true })).ToBeVisibleAsync();

        await Page.OpenAsync(GigRigUrls.NewGear("board"));
        await Expect(Name).ToHaveValueAsync("Half a board");

        await Page.GetByRole(AriaRole.Button, new() { Name = "Discard it" }).ClickAsync();
        await Expect(Name).ToHaveValueAsync("");
        await Page.ReloadAsync();
        await Expect(Name).ToHaveValueAsync("");
    }

    [Fact]
    public async Task An_entry_survives_a_power_cut_of_the_app()
    {
        await TypeNameAsync("Half a board");

        await App.RestartAsync();

        await Page.GetByRole(AriaRole.Button, new() { Name = "Load again" }).ClickAsync();
        await Expect(Name).ToHaveValueAsync("Half a board");
        await Expect(Page.GetByText("What you had typed here and not saved is back.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_pasted_table_survives_a_reload_until_it_was_discarded_or_added()
    {
        // Larger than one message of the page's connection may be (32 kB, the default of SignalR).
        var rows = string.Join('\n', Enumerable.Range(1, 2000).Select(number => $"Box {number};compact;overdrive;9"));
        var area = Page.GetByLabel("Pasted rows");
        await Page.OpenAsync(GigRigUrls.GearTable);
        await area.FillAsync(rows);

        await Page.ReloadAsync();
        await Expect(Page.GetByText("What you had pasted here and not added is back.")).ToBeVisibleAsync();
        await Expect(area).ToHaveValueAsync(rows);
        await Page.Button("Discard it").ClickAsync();
        await Expect(area).ToHaveValueAsync("");

        await area.FillAsync("Meadow;compact;overdrive;9");
        await Page.ReloadAsync();
        await Expect(Page.Button("Discard it")).ToBeVisibleAsync();
        await Page.Button("Look at it").ClickAsync();
        await Page.Button("Add 1 thing").ClickAsync();
        await Expect(Page.GetByText("Added 1 thing.")).ToBeVisibleAsync();
        await Page.ReloadAsync();
        await Page.WaitForSelectorAsync(".gr-shell[data-interactive=true]");
        await Expect(area).ToHaveValueAsync("");
    }

    private async Task TypeNameAsync(string name)
    {
        await Page.OpenAsync(GigRigUrls.NewGear("board"));
        await Name.FillAsync(name);
        await Name.BlurAsync();
        await Page.WaitForFunctionAsync("() => Object.values(localStorage).some(text => text.includes('Half a board'))");
    }
}
