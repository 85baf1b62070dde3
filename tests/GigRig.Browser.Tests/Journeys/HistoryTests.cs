using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>What a rig was, what became of it, and the way back.</summary>
public sealed class HistoryTests(Chromium chromium) : BrowserTest(chromium)
{
    private Guid rigId;

    protected override Func<IServiceProvider, Task>? Fill => async library =>
    {
        var rigs = library.GetRequiredService<RigStore>();
        var problem = A.Draft().With(A.Device("Lantern"), A.Device("Well")).Problem();
        var first = await rigs.AddAsync("Barn dance", "", problem, A.Rig().Placing("Lantern", 0, 0).Placing("Well", 100, 0));
        rigId = first.Id;
        await rigs.SaveAsync(first with { Item = first.Item with { Rig = A.Rig().Placing("Lantern", 40, 0) } });
    };

    [Fact]
    public async Task What_changed_is_listed_and_the_old_rig_can_be_had_back()
    {
        await Page.OpenAsync(GigRigUrls.Rig(rigId));
        await Page.Link("History").ClickAsync();
        await Page.Heading("Barn dance, history").WaitForAsync();
        Assert.Empty(await Axe.FaultsAsync(Page, "the history"));

        await Page.Locator(".rig-versions a", new() { HasText = "What changed since" }).ClickAsync();
        await Expect(Page.Locator(".swap-part").First).ToContainTextAsync("Well");
        await Expect(Page.Locator("main")).ToContainTextAsync("from 0 mm from the left, 0 mm from the front to 40 mm from the left");
        Assert.Empty(await Axe.FaultsAsync(Page, "the swap list"));

        await Page.GoBackAsync();
        await Page.Locator(".rig-versions a", new() { HasText = "Look at it" }).ClickAsync();
        await Page.Heading("Barn dance, as it was").WaitForAsync();
        Assert.Empty(await Axe.FaultsAsync(Page, "an old version"));
        await Page.Button("Go back to this version").ClickAsync();

        await Expect(Page.Heading("Barn dance")).ToBeVisibleAsync();
        await Expect(Page.Locator(".scene-legend li")).ToHaveCountAsync(2);
        await Page.Link("History").ClickAsync();
        await Expect(Page.Locator(".rig-versions li")).ToHaveCountAsync(3);
    }
}
