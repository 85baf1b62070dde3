using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Two thousand boxes, as a hire firm or a hoarder may have.</summary>
public sealed class BigLibraryTests(Chromium chromium) : BrowserTest(chromium)
{
    private const int Boxes = 2000;

    /// <summary>A screen of rows and some either side.</summary>
    private const int MostRowsInThePage = 60;

    protected override Func<IServiceProvider, Task> Fill => library => library.GetRequiredService<GearBatchStore>().AddAsync(
        Enumerable.Range(1, Boxes).Select(i => ((object)A.Device($"Box {i:0000}").Doing(i % 2 == 0 ? "delay" : "boost"), new Ownership { Tags = i % 100 == 0 ? ["tour"] : [] })));

    [Fact]
    public async Task The_page_holds_a_screen_of_rows_wherever_one_scrolls()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        await Expect(Page.Link("Box 0001")).ToBeVisibleAsync();
        Assert.InRange(await RowsAsync(), 5, MostRowsInThePage);
        Assert.Equal("2001", await Page.GetByRole(Microsoft.Playwright.AriaRole.Table, new() { Name = "Your gear" }).GetAttributeAsync("aria-rowcount"));

        await Page.EvaluateAsync("scrollTo(0, document.body.scrollHeight)");
        await Expect(Page.Link("Box 2000")).ToBeVisibleAsync();
        await Expect(Page.Link("Box 0001")).ToHaveCountAsync(0);
        Assert.InRange(await RowsAsync(), 5, MostRowsInThePage);
    }

    [Fact]
    public async Task A_filter_keeps_its_name_and_what_it_shows_is_changed_and_undone_at_once()
    {
        await Page.OpenAsync(GigRigUrls.Gear + "?tag=tour");
        await Expect(Page.GetByText("20 things shown")).ToBeVisibleAsync();
        await Page.GetByLabel("Name for this filter").FillAsync("On tour");
        await Page.Button("Save filter").ClickAsync();
        await Expect(Page.Link("On tour")).ToBeVisibleAsync();

        await Page.OpenAsync(GigRigUrls.Gear);
        await Page.Link("On tour").ClickAsync();
        await Expect(Page.GetByText("20 things shown")).ToBeVisibleAsync();

        await Page.GetByLabel("Tick all that are shown").CheckAsync();
        await Page.GetByRole(Microsoft.Playwright.AriaRole.Region, new() { Name = "Change what is ticked" }).GetByLabel("Status").SelectOptionAsync("InRepair");
        await Page.Button("Set status").ClickAsync();
        await Expect(Page.GetByText("20 things: In repair.")).ToBeVisibleAsync();
        await Expect(Page.Locator(".gr-away")).Not.ToHaveCountAsync(0);

        await Page.Button("Undo").ClickAsync();
        await Expect(Page.Locator(".gr-away")).ToHaveCountAsync(0);
        Assert.Empty(ConsoleErrors());
    }

    private Task<int> RowsAsync() => Page.Locator(".gr-gear tbody tr[aria-rowindex]").CountAsync();
}
