using Bunit;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

public sealed class RigListPageTests : PageTest
{
    [Fact]
    public void An_empty_list_says_how_to_get_a_rig()
    {
        var page = Render<RigListPage>();

        page.WaitForAssertion(() => Assert.Contains("No rig saved yet", page.Markup));
    }

    [Fact]
    public async Task Each_rig_is_drawn_and_leads_to_its_page()
    {
        var saved = await Library.SaveAsync("Friday");

        var page = Listed();

        Assert.Equal("Small board seen from above, 1 device", page.Find("article svg title").TextContent);
        Assert.Equal(GigRigUrls.Rig(saved.Id), page.Find("article h2 a").GetAttribute("href"));
        Assert.Contains("night on Small board, 1 box", page.Find("article").TextContent);
    }

    [Fact]
    public async Task A_rig_that_breaks_rules_is_not_shown_as_clean()
    {
        await Library.SaveAsync("Friday");
        Assert.Empty(Listed().FindAll(".rig-card-broken"));

        await Library.SaveBrokenAsync("Saturday");

        Assert.Contains("1 rule is broken", Listed().Find(".rig-card-broken").TextContent);
    }

    [Fact]
    public async Task A_deleted_rig_can_be_brought_back()
    {
        await Library.SaveAsync("Friday");
        await Library.SaveAsync("Saturday");
        var page = Listed();

        await page.Find("button[aria-label='Delete Friday']").ClickAsync();
        page.WaitForAssertion(() => Assert.Equal(["Saturday"], Names(page)));
        Assert.Equal("Deleted Friday.", Assert.Single(Messages));
        await page.Find(".gr-deleted button").ClickAsync();

        page.WaitForAssertion(() => Assert.Equal(["Friday", "Saturday"], Names(page).Order()));
        Assert.Empty(page.FindAll(".gr-deleted"));
    }

    [Fact]
    public async Task A_rig_changed_elsewhere_is_not_deleted()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Listed();
        await Library.Rigs.RenameAsync(saved.Id, saved.Version, "Friday, late", "", Cancel);

        await page.Find("button[aria-label='Delete Friday']").ClickAsync();

        page.WaitForAssertion(() => Assert.Equal(["Friday, late"], Names(page)));
        Assert.Contains("was changed meanwhile", Assert.Single(Messages));
    }

    [Fact]
    public async Task Long_lists_come_a_page_at_a_time()
    {
        for (var i = 1; i <= RigListState.PageSize + 1; i++)
            await Library.SaveAsync($"Night {i}");
        var page = Listed();
        Assert.Equal(RigListState.PageSize, Names(page).Count());

        await page.FindAll("button").Single(button => button.TextContent.StartsWith("Show more", StringComparison.Ordinal)).ClickAsync();

        page.WaitForAssertion(() => Assert.Equal(RigListState.PageSize + 1, Names(page).Count()));
    }

    private static IEnumerable<string> Names(IRenderedComponent<RigListPage> page) => page.FindAll("article h2").Select(name => name.TextContent);

    private IRenderedComponent<RigListPage> Listed()
    {
        var page = Render<RigListPage>();
        page.WaitForAssertion(() => page.Find("article"));
        return page;
    }
}
