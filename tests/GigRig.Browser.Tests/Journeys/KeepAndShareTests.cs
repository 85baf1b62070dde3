using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>The whole way: from the demo library to a link in somebody else's hands, with a power cut in between.</summary>
public sealed class KeepAndShareTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task A_saved_rig_survives_a_power_cut_and_its_link_works_until_it_is_revoked()
    {
        await Page.LookAroundAsync();
        await Page.ProposeAsync("Wedding function");
        await SaveRigAsync("Barn wedding");

        await App.RestartAsync();

        await Page.OpenAsync(GigRigUrls.Rigs);
        await Page.Link("Barn wedding").ClickAsync();
        await Expect(Page.Heading("Barn wedding")).ToBeVisibleAsync();
        await Expect(Page.Heading("Hook-up")).ToBeVisibleAsync();

        var link = await MakeLinkAsync();
        var stranger = await NewVisitorAsync(width: 390, script: false);
        Assert.Equal(200, (await stranger.GotoAsync(link))!.Status);
        await Expect(stranger.Heading("Barn wedding")).ToBeVisibleAsync();
        Assert.Empty(await stranger.Context.CookiesAsync());

        await Page.Button("Revoke the link for Band").ClickAsync();
        await Page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Revoke" }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.List, new() { Name = "Links to this rig" })).ToContainTextAsync("revoked");
        Assert.Equal(404, (await stranger.ReloadAsync())!.Status);
        Assert.DoesNotContain("Barn wedding", await stranger.ContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_deleted_rig_can_be_brought_back()
    {
        await Page.LookAroundAsync();
        await Page.ProposeAsync("Jam night");
        await SaveRigAsync("Cellar jam");
        await Page.OpenAsync(GigRigUrls.Rigs);

        await Page.Button("Delete Cellar jam").ClickAsync();
        await Expect(Page.Link("Cellar jam")).ToHaveCountAsync(0);

        await Page.Button("Bring back Cellar jam").ClickAsync();
        await Expect(Page.Link("Cellar jam")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_banned_box_stays_home_in_the_next_proposal()
    {
        await Page.LookAroundAsync();
        await Page.ProposeAsync("Wedding function");
        var chorus = Page.GetByRole(AriaRole.Row).Filter(new() { HasText = "Slow tide chorus" }).Filter(new() { Has = Page.GetByRole(AriaRole.Button) });
        await Expect(chorus).ToContainTextAsync("on the board");

        await chorus.GetByRole(AriaRole.Button, new() { Name = "Ban Slow tide chorus" }).ClickAsync();
        await Page.Button("Propose again").ClickAsync();

        await Expect(chorus).ToContainTextAsync("stays home");
        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();
    }

    private async Task SaveRigAsync(string name)
    {
        await Page.GetByLabel("Name of the rig").FillAsync(name);
        await Page.Button("Save rig").ClickAsync();
        await Expect(Page.Heading(name)).ToBeVisibleAsync();
    }

    private async Task<string> MakeLinkAsync()
    {
        await Page.Button("Make a link").ClickAsync();
        return await Page.GetByLabel("Link", new() { Exact = true }).InputValueAsync();
    }
}
