using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>From the wall to the device, and from the pickup to the first buffer.</summary>
public sealed class HookUpTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task Abroad_the_page_warns_of_the_wrong_voltage_and_packs_the_adapter()
    {
        await Page.LookAroundAsync();
        await Page.OpenAsync(GigRigUrls.Events);
        await Page.Link("Wedding function").ClickAsync();
        await Page.GetByLabel("Mains voltage there").FillAsync("120");
        await Page.GetByLabel("Mains voltage there").PressAsync("Tab");
        await Page.Locator(".mud-select", new() { HasText = "Mains sockets there" }).Last.ClickAsync();
        await Page.GetByRole(AriaRole.Option, new() { Name = "B", Exact = true }).ClickAsync();
        await Page.Button("Save").ClickAsync();
        await Page.WaitForURLAsync(url => url.EndsWith(GigRigUrls.Events, StringComparison.Ordinal));

        await Page.ProposeAsync("Wedding function");
        await Page.Button("Save rig").ClickAsync();
        await Page.Heading("Hook-up").WaitForAsync();

        var mains = Page.GetByRole(AriaRole.Table, new() { Name = "Mains: 2 mains sockets" });
        await Expect(mains.GetByRole(AriaRole.Row, new() { Name = "Two-channel combo" })).ToContainTextAsync("Do not plug it in: 120 V is too little for it.");
        await Expect(mains.GetByRole(AriaRole.Row, new() { Name = "Five-way supply" })).ToContainTextAsync("voltage fits; an adapter from plug F to socket B that carries the protective earth");
        await Expect(Page.GetByText("2 × mains plug adapter, F to B")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task The_tone_of_the_long_lead_opens_and_is_told_in_numbers_as_well_as_drawn(int width, ColorScheme colours)
    {
        var page = await NewVisitorAsync(width, 844, colours);
        await page.LookAroundAsync();
        await page.ProposeAsync("Wedding function");
        await page.Button("Save rig").ClickAsync();
        await page.Heading("Hook-up").WaitForAsync();

        await page.Heading("Tone of the long lead").ClickAsync();

        var numbers = page.GetByRole(AriaRole.Table, new() { Name = "Where pickup and leads resonate" });
        await Expect(numbers.GetByRole(AriaRole.Row, new() { Name = "As wired" })).ToContainTextAsync("kHz");
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "Response of the pickup" })).ToBeVisibleAsync();
        Assert.Empty(await Axe.FaultsAsync(page, "the tone of the long lead"));
    }
}
