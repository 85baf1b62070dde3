using Bunit;
using GigRig.Domain.Events;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Start;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Start;

public sealed class StartPageTests : PageTest
{
    [Fact]
    public async Task Looking_around_fills_the_library_and_goes_on_to_planning()
    {
        await PressAsync("Look around with a demo library");

        Assert.Equal(GigRigUrls.Plan, Address);
        Assert.InRange((await Library.Gear.DevicesAsync(Cancel)).Count, 20, 30);
        Assert.Equal(ReadyEventTypes.All.Count, (await Library.Events.AllAsync(Cancel)).Count);
    }

    [Fact]
    public async Task Starting_empty_brings_event_types_alone_and_goes_on_to_adding_gear()
    {
        await PressAsync("Start empty");

        Assert.Equal(GigRigUrls.Gear, Address);
        Assert.Empty(await Library.Gear.DevicesAsync(Cancel));
        Assert.Equal(["Jam night", "Van tour", "Wedding function"], (await Library.Events.AllAsync(Cancel)).Select(type => type.Item.Name).Order());
    }

    [Fact]
    public async Task With_event_types_alone_a_board_and_boxes_come_next()
    {
        await Library.WithAsync(ReadyEventTypes.JamNight);
        var page = Render<StartPage>();

        page.WaitForAssertion(() => Assert.Contains("Add a board", page.Markup));
        Assert.Contains("Add your boxes", page.Markup);
        Assert.DoesNotContain("demo", page.Markup);
    }

    [Fact]
    public async Task With_all_there_is_planning_comes_next()
    {
        await Library.WithAsync(ReadyEventTypes.JamNight);
        await Library.WithAsync(A.Board());
        await Library.WithAsync(A.Device("echo"));
        var page = Render<StartPage>();

        var link = page.WaitForElement("a[aria-label='Plan Jam night']");
        Assert.Equal(GigRigUrls.PlanFor((await Library.Events.AllAsync(Cancel))[0].Id), link.GetAttribute("href"));
    }

    [Fact]
    public async Task The_demo_gear_is_taken_away_with_one_press()
    {
        await PressAsync("Look around with a demo library");
        var page = Render<StartPage>();
        page.WaitForAssertion(() => Assert.Contains("The demo gear is in your library", page.Markup));
        page.FindAll("button").Single(button => button.TextContent.Trim() == "Take it away").Click();

        page.WaitForAssertion(() => Assert.DoesNotContain("The demo gear is in your library", page.Markup));
        Assert.Empty(await Library.Gear.DevicesAsync(Cancel));
        Assert.Equal(["Took the demo gear away."], Messages);
    }

    private Task PressAsync(string caption)
    {
        var page = Render<StartPage>();
        page.WaitForAssertion(() => Assert.Contains(caption, page.Markup));
        return page.FindAll("button").Single(button => button.TextContent.Trim() == caption).ClickAsync(new());
    }
}
