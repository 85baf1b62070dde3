using Bunit;
using GigRig.Domain.Events;
using GigRig.Web.Features.Events;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Events;

public sealed class EventListPageTests : PageTest
{
    [Fact]
    public async Task A_ready_one_is_added_with_one_press()
    {
        var page = Render<EventListPage>();
        page.WaitForElement("button[aria-label='Add Jam night']").Click();

        page.WaitForAssertion(() => Assert.Single(page.FindAll("button[aria-label='Delete Jam night']")));
        Assert.Equal(ReadyEventTypes.JamNight, Assert.Single(await Library.Events.AllAsync(Cancel)).Item);
    }

    [Fact]
    public async Task A_card_says_what_the_night_asks_for()
    {
        await Library.Events.AddAsync(ReadyEventTypes.VanTour, Cancel);
        var page = Render<EventListPage>();

        var card = page.WaitForElement(".gr-eventcard").TextContent;
        Assert.Contains("Tuner, Clean sound, High gain drive, Boost", card);
        Assert.Contains("Delay, Modulation, Equaliser, Gate", card);
        Assert.Contains("at most 30 kg", card);
    }

    [Fact]
    public async Task A_copy_opens_for_editing()
    {
        await Library.Events.AddAsync(ReadyEventTypes.VanTour, Cancel);
        var page = Render<EventListPage>();
        page.WaitForElement("button[aria-label='Copy Van tour']").Click();

        page.WaitForAssertion(() => Assert.StartsWith(GigRigUrls.Events + "/", Address));
        Assert.Contains("Van tour (copy)", (await Library.Events.AllAsync(Cancel)).Select(type => type.Item.Name));
    }

    [Fact]
    public async Task A_deleted_one_is_offered_back()
    {
        await Library.Events.AddAsync(ReadyEventTypes.VanTour, Cancel);
        var page = Render<EventListPage>();
        page.WaitForElement("button[aria-label='Delete Van tour']").Click();

        page.WaitForAssertion(() => Assert.Contains("Deleted just now", page.Markup));
        Assert.Equal(["Deleted Van tour."], Messages);
        Assert.Empty(await Library.Events.AllAsync(Cancel));
    }
}
