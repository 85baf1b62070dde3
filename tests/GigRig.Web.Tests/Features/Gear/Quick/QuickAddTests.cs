using Bunit;
using GigRig.Domain.Gear;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Quick;

public sealed class QuickAddTests : PageTest
{
    [Fact]
    public async Task One_line_adds_a_box_and_says_what_was_guessed()
    {
        var page = Render<GearListPage>();
        Type(page, "name", "Meadow");
        Type(page, "size", "61 x 111");
        Type(page, "roles", "overdrive");
        Type(page, "draw", "9");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Added Meadow", page.Find(".gr-quickdone").TextContent.ReplaceLineEndings(" ")));
        Assert.Contains("plug sides", page.Find(".gr-quickdone").TextContent);
        // 15 mm of plug on either side of 61 mm, 13 mm behind 111 mm; at the rear all three lie within 15 mm.
        Assert.Contains("91 × 124 mm", page.Markup);
        Assert.Contains("61 × 126 mm", page.Markup);
        Assert.Contains("30 mm less across, 2 mm more front to rear", page.Markup);
        var stored = Assert.Single(await Library.Gear.DevicesAsync(Cancel)).Item;
        Assert.Equal([Guess.Height, Guess.Mass, Guess.Jacks, Guess.Switches, Guess.Voltage], stored.Ownership.Guesses);
        page.WaitForAssertion(() => Assert.Contains("guessed: height, mass", page.Find("table").TextContent));
        Assert.Equal("", page.Find("[data-field=name]").GetAttribute("value") ?? "");
    }

    [Fact]
    public async Task A_line_with_a_fault_stays_and_says_what_is_wrong()
    {
        var page = Render<GearListPage>();
        Type(page, "name", "Meadow");
        Type(page, "size", "huge");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("\"huge\" is neither a size nor a usual one", page.Markup));
        Assert.Equal("Meadow", page.Find("[data-field=name]").GetAttribute("value"));
        Assert.Empty(await Library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task The_kind_stays_for_the_next_line()
    {
        var page = Render<GearListPage>();
        page.WaitForElement("input[value=board]").Change("board");
        Type(page, "name", "Plank");
        Type(page, "size", "60 x 30 cm");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Added Plank", page.Find(".gr-quickdone").TextContent.ReplaceLineEndings(" ")));
        Assert.True(page.Find("input[value=board]").HasAttribute("checked"));
        Assert.Single(await Library.Gear.BoardsAsync(Cancel));
    }

    [Fact]
    public async Task Leads_come_in_by_length_and_their_guessed_plugs_end_when_typed()
    {
        var page = Render<GearListPage>();
        page.WaitForElement("input[value=lead]").Change("lead");
        Type(page, "name", "Patch");
        Type(page, "size", "6 x 15 cm");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Guessed: kind of lead, plugs", page.Find(".gr-quickdone").TextContent.ReplaceLineEndings(" ")));
        Assert.Contains("Taken as a patch lead", page.Find(".gr-quickdone").TextContent);
        var stored = Assert.Single(await Library.Gear.LeadsAsync(Cancel));
        Assert.Equal(6, stored.Item.Thing.Count);

        var item = Render<GearItemPage>(p => p.Add(item => item.Kind, "lead").Add(item => item.Id, stored.Id.ToString()));
        item.WaitForElement("button[aria-label='Kind of lead: that is right']").Click();
        item.WaitForAssertion(() => Assert.Contains("angled at both ends", item.Markup));
        item.FindAll("button").Single(button => button.TextContent.Trim() == "Save").Click();
        item.WaitForAssertion(() => Assert.Equal(GigRigUrls.Gear, Address));
        Assert.Equal([Guess.Plugs], Assert.Single(await Library.Gear.LeadsAsync(Cancel)).Item.Ownership.Guesses);
    }

    [Fact]
    public async Task Editing_a_guessed_field_ends_its_guess_and_confirming_ends_another()
    {
        await Library.Gear.AddAsync(new Domain.Guessing.KnownOfDevice("Meadow").Fill(new("m")).Device, new Ownership { Guesses = [Guess.Height, Guess.Mass, Guess.Draw] }, Cancel);
        var id = Assert.Single(await Library.Gear.DevicesAsync(Cancel)).Id;
        var page = Render<GearItemPage>(p => p.Add(item => item.Kind, "device").Add(item => item.Id, id.ToString()));
        page.WaitForElement("[data-field=mass]").Change("410");
        page.WaitForElement("button[aria-label='Draw: that is right']").Click();
        page.FindAll("button").Single(button => button.TextContent.Trim() == "Save").Click();

        page.WaitForAssertion(() => Assert.Equal(GigRigUrls.Gear, Address));
        Assert.Equal([Guess.Height], Assert.Single(await Library.Gear.DevicesAsync(Cancel)).Item.Ownership.Guesses);
    }

    private static void Type(IRenderedComponent<GearListPage> page, string field, string text) => page.WaitForElement($".gr-quickrow [data-field='{field}']").Change(text);
}
