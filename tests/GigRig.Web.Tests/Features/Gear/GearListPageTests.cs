using Bunit;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

public sealed class GearListPageTests : PageTest
{
    [Fact]
    public void An_empty_library_says_what_to_do_next()
    {
        var page = Render<GearListPage>();

        page.WaitForAssertion(() => Assert.Contains("No gear yet", page.Markup));
        Assert.Contains("Add gear", page.Markup);
    }

    [Fact]
    public async Task Things_are_listed_with_what_they_do_and_their_facts()
    {
        await Library.Gear.AddAsync(A.Device("Meadow").Sized(70, 122).Drawing(9).Doing("drive.low"), new Ownership(), Cancel);
        var page = Render<GearListPage>();

        page.WaitForAssertion(() => Assert.Contains("Meadow", page.Markup));
        Assert.Contains("Low gain drive", page.Markup);
        Assert.Contains("70 × 122 mm · 9 V, 9 mA", page.Markup);
    }

    [Fact]
    public async Task What_the_address_narrows_to_is_all_that_shows()
    {
        await Library.Gear.AddAsync(A.Device("Meadow").Doing("drive.low"), new Ownership(), Cancel);
        await Library.Gear.AddAsync(A.Device("Tower").Doing("delay"), new Ownership(), Cancel);
        Navigation.NavigateTo(GigRigUrls.Gear + "?role=delay");
        var page = Render<GearListPage>();

        page.WaitForAssertion(() => Assert.Contains("Tower", page.Markup));
        Assert.DoesNotContain("Meadow", page.Find("table").TextContent);
    }

    [Fact]
    public async Task A_deleted_thing_is_offered_back_twice()
    {
        await Library.Gear.AddAsync(A.Device("Meadow"), new Ownership(), Cancel);
        var page = Render<GearListPage>();
        page.WaitForElement("button[aria-label='Delete Meadow']").Click();

        page.WaitForAssertion(() => Assert.Contains("Deleted just now", page.Markup));
        Assert.Equal(["Deleted Meadow."], Messages);

        page.FindAll("button").Single(button => button.TextContent.Trim() == "Bring back").Click();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("button[aria-label='Delete Meadow']")));
        Assert.Single(await Library.Gear.DevicesAsync(Cancel));
    }
}
