using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Colours and units as the musician wants them, from the first paint on.</summary>
public sealed class DisplayTests(Chromium chromium) : BrowserTest(chromium)
{
    private const string Ground = "getComputedStyle(document.body).backgroundColor";

    [Fact]
    public async Task Without_a_choice_the_colours_are_those_of_the_device()
    {
        var dark = await NewVisitorAsync(colours: ColorScheme.Dark);
        await Page.OpenAsync(GigRigUrls.Home);
        await dark.OpenAsync(GigRigUrls.Home);

        Assert.NotEqual(await Page.EvaluateAsync<string>(Ground), await dark.EvaluateAsync<string>(Ground));
    }

    [Fact]
    public async Task A_chosen_dark_is_there_at_once_and_stays_before_any_script_ran()
    {
        await Page.OpenAsync(GigRigUrls.Home);
        var light = await Page.EvaluateAsync<string>(Ground);
        await ChooseAsync("Dark colours");
        await Expect(Page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
        // Even a transition of no length takes a frame.
        await Page.WaitForFunctionAsync($"light => {Ground} !== light", light);
        var dark = await Page.EvaluateAsync<string>(Ground);

        await Page.RouteAsync("**/*.js", route => route.AbortAsync());
        await Page.ReloadAsync();

        Assert.Equal(dark, await Page.EvaluateAsync<string>(Ground));
    }

    [Fact]
    public async Task Lengths_are_shown_in_the_chosen_unit_also_on_the_next_visit()
    {
        await Page.LookAroundAsync();
        await Page.OpenAsync(GigRigUrls.Gear);
        await Expect(Page.GetByRole(AriaRole.Table)).ToContainTextAsync("460 × 140 mm");

        await ChooseAsync("Lengths in inches");
        await Expect(Page.GetByRole(AriaRole.Table)).ToContainTextAsync("18.11 × 5.51 in");

        await Page.OpenAsync(GigRigUrls.Gear);
        await Expect(Page.GetByRole(AriaRole.Table)).ToContainTextAsync("18.11 × 5.51 in");
    }

    private async Task ChooseAsync(string what)
    {
        await Page.GetByRole(AriaRole.Button, new() { Name = "Display: colours and units" }).ClickAsync();
        await Page.GetByText(what, new() { Exact = true }).ClickAsync();
    }
}
