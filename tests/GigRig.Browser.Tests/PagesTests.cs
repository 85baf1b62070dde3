using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;

namespace GigRig.Browser.Tests;

/// <summary>Every page, looked at in both themes, wide and narrow.</summary>
public sealed class PagesTests(Chromium chromium) : BrowserTest(chromium)
{
    private static readonly string[] Urls =
    [
        GigRigUrls.Home, GigRigUrls.Gear, GigRigUrls.NewGear("device"), GigRigUrls.NewGear("board"), GigRigUrls.NewGear("supply"), GigRigUrls.NewGear("amp"),
        GigRigUrls.Events, GigRigUrls.NewEventType,
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
        foreach (var url in Urls)
        {
            await page.OpenAsync(url);
            faults.AddRange(await Axe.FaultsAsync(page, url));
            if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth") is > 0 and var over)
                faults.Add($"{url}: scrolls sideways by {over} px");
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }
}
