using Bunit;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

public sealed class BulkBarTests : PageTest
{
    [Fact]
    public async Task What_is_lent_says_to_whom_and_till_when_and_is_undone()
    {
        await Library.Gear.AddAsync(A.Device("Meadow"), new Ownership(), Cancel);
        await Library.Gear.AddAsync(A.Device("Tower"), new Ownership(), Cancel);
        var page = Render<GearListPage>();
        page.WaitForElement("input[aria-label='Tick Meadow']").Change(true);
        page.WaitForElement(".gr-bulk select").Change("LentOut");
        page.WaitForElement(".gr-bulk input[maxlength='200']").Change("Ada");
        page.Find(".gr-bulk input[type=date]").Change("2020-03-06");
        Press(page, "Set status");

        page.WaitForAssertion(() => Assert.Contains("Lent out to Ada, was due 6 Mar 2020", page.Find(".gr-away").TextContent));
        Assert.Single(page.FindAll(".gr-away"));

        Press(page, "Undo");
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".gr-away")));
        Assert.All(await Library.Gear.DevicesAsync(Cancel), device => Assert.Equal(new Ownership(), device.Item.Ownership));
    }

    [Fact]
    public async Task Many_are_deleted_and_brought_back_at_once()
    {
        await Library.Gear.AddAsync(A.Device("Meadow"), new Ownership(), Cancel);
        await Library.Gear.AddAsync(A.Device("Tower"), new Ownership(), Cancel);
        var page = Render<GearListPage>();
        page.WaitForElement("input[aria-label='Tick all that are shown']").Change(true);
        page.WaitForElement(".gr-bulk .gr-danger").Click();

        page.WaitForAssertion(() => Assert.Contains("No gear yet", page.Markup));
        Assert.Equal(["Deleted 2 things."], Messages);

        Press(page, "Bring back all 2");
        page.WaitForAssertion(() => Assert.Contains("Meadow", page.Find("table").TextContent));
        Assert.Equal(2, (await Library.Gear.DevicesAsync(Cancel)).Count);
    }

    [Fact]
    public async Task A_tag_that_is_too_long_says_so_and_changes_nothing()
    {
        await Library.Gear.AddAsync(A.Device("Meadow"), new Ownership(), Cancel);
        var page = Render<GearListPage>();
        page.WaitForElement("input[aria-label='Tick Meadow']").Change(true);
        page.WaitForElement(".gr-bulk input[maxlength='400']").Change(new string('x', 41));
        Press(page, "Add tags");

        page.WaitForAssertion(() => Assert.Contains("give at most 40", Assert.Single(Messages)));
        Assert.Empty((await Library.Gear.DevicesAsync(Cancel))[0].Item.Ownership.Tags);
    }

    [Fact]
    public async Task A_duplicate_shows_in_the_list()
    {
        await Library.Gear.AddAsync(A.Device("Meadow"), new Ownership(), Cancel);
        var page = Render<GearListPage>();
        page.WaitForElement("button[aria-label='Duplicate Meadow']").Click();

        page.WaitForAssertion(() => Assert.Contains("Meadow (copy)", page.Find("table").TextContent));
    }

    private static void Press(IRenderedComponent<GearListPage> page, string caption) =>
        page.InvokeAsync(() => page.FindAll("button").Single(button => button.TextContent.Trim() == caption).Click());
}
