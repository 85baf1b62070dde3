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

    private async Task TypeNameAsync(string name)
    {
        await Page.OpenAsync(GigRigUrls.NewGear("board"));
        await Name.FillAsync(name);
        await Name.BlurAsync();
        await Page.WaitForFunctionAsync("() => Object.values(localStorage).some(text => text.includes('Half a board'))");
    }
}
