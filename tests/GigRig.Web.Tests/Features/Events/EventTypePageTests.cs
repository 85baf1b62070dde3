using Bunit;
using GigRig.Domain.Events;
using GigRig.Web.Features.Events;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Events;

public sealed class EventTypePageTests : PageTest
{
    [Fact]
    public async Task A_changed_name_and_weight_are_stored()
    {
        var stored = await Library.Events.AddAsync(ReadyEventTypes.JamNight, Cancel);
        var page = RenderEvent(stored.Id.ToString());
        page.WaitForElement("[data-field=name]").Change("Monday jam");
        page.Find("[data-field='needs/3/weight']").Change("55");
        page.FindAll("button").Single(button => button.TextContent.Trim() == "Save").Click();

        page.WaitForAssertion(() => Assert.Equal(GigRigUrls.Events, Address));
        var saved = Assert.Single(await Library.Events.AllAsync(Cancel)).Item;
        Assert.Equal(("Monday jam", 55), (saved.Name, saved.Needs[3].Weight));
    }

    [Fact]
    public async Task A_role_is_taken_out_of_a_sound()
    {
        var stored = await Library.Events.AddAsync(ReadyEventTypes.JamNight, Cancel);
        var page = RenderEvent(stored.Id.ToString());
        page.WaitForElement("[data-field=name]");
        // In one go on the renderer's own turn: late measurements may draw the page again between finding and clicking.
        await page.InvokeAsync(() => page.FindAll("[aria-label='Take Boost out of this sound']").Single().Click());
        await page.InvokeAsync(() => page.FindAll("button").Single(button => button.TextContent.Trim() == "Save").Click());

        page.WaitForAssertion(() => Assert.Equal(GigRigUrls.Events, Address));
        Assert.DoesNotContain(new("boost"), (await Library.Events.FindAsync(stored.Id, Cancel))!.Item.Sounds[1].Roles);
    }

    [Fact]
    public void What_is_not_there_is_said_to_be_not_there()
    {
        var page = RenderEvent("nonsense");

        page.WaitForAssertion(() => Assert.Contains("No such event type", page.Markup));
    }

    private IRenderedComponent<EventTypePage> RenderEvent(string id) =>
        Render<EventTypePage>(p => p.Add(page => page.Id, id));
}
