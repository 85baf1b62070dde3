using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;

namespace GigRig.Browser.Tests;

/// <summary>Every page, looked at with the demo library in it, in both themes, wide and narrow.</summary>
public sealed class PagesTests(Chromium chromium) : BrowserTest(chromium)
{
    /// <summary>Pages that show something without more ado; those that need a first step are in the test itself.</summary>
    private static readonly string[] Urls =
    [
        GigRigUrls.Home, GigRigUrls.Gear, GigRigUrls.GearTable, .. new[] { "device", "board", "supply", "amp", "off-board", "lead", "instrument" }.Select(GigRigUrls.NewGear),
        GigRigUrls.Events, GigRigUrls.NewEventType, GigRigUrls.Rigs, GigRigUrls.Library, GigRigUrls.Glossary, GigRigUrls.NotFound,
    ];

    [Fact]
    public async Task A_picture_without_words_would_be_seen()
    {
        await Page.OpenAsync(GigRigUrls.Home);
        await Page.EvaluateAsync("document.querySelector('main').append(document.createElement('img'))");

        Assert.Contains(await Axe.FaultsAsync(Page, GigRigUrls.Home), fault => fault.Contains("image-alt", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task No_page_has_a_fault_that_axe_can_see(int width, ColorScheme colours)
    {
        var page = await NewVisitorAsync(width, 844, colours);
        var faults = new List<string>();
        async Task LookAsync(string where)
        {
            faults.AddRange(await Axe.FaultsAsync(page, where));
            if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth") is > 0 and var over)
                faults.Add($"{where}: scrolls sideways by {over} px");
        }

        await page.OpenAsync(GigRigUrls.Home);
        await LookAsync("first start");
        await page.LookAroundAsync();
        await page.ProposeAsync("Wedding function");
        await LookAsync("a proposed rig");
        await page.Button("Save rig").ClickAsync();
        await page.Heading("Hook-up").WaitForAsync();
        await LookAsync("a saved rig");
        await page.Link("Arrange by hand").ClickAsync();
        await page.Locator("[data-thing]").First.WaitForAsync();
        await LookAsync("a board on the workbench");
        foreach (var url in Urls)
        {
            await page.GotoAsync(url);
            await page.WaitForSelectorAsync("h1");
            // The title is taken away and put back while the page comes alive.
            await page.WaitForSelectorAsync(".gr-shell:not([data-interactive=false])");
            await LookAsync(url);
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }
}
