using Bunit;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

public sealed class GearItemPageTests : PageTest
{
    public static TheoryData<string> Kinds { get; } = new(GearKind.All.Select(kind => kind.Word));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_can_be_added(string kind)
    {
        var page = RenderItem(kind, GigRigUrls.New);

        page.WaitForAssertion(() => Assert.Contains($"New {GearKind.Find(kind)!.One.ToLowerInvariant()}", page.Find("h1").TextContent));
    }

    [Fact]
    public async Task A_device_typed_in_is_stored_and_the_list_comes_back()
    {
        var page = RenderItem("off-board", GigRigUrls.New);
        Type(page, "name", "Clip-on tuner");
        Type(page, "mass", "30");
        page.FindAll("button").Single(button => button.GetAttribute("aria-label") == "Take this function away").Click();
        Press(page, "Save");

        page.WaitForAssertion(() => Assert.Equal(GigRigUrls.Gear, Address));
        Assert.Equal("Clip-on tuner", Assert.Single(await Library.Gear.OffBoardAsync(Cancel)).Item.Thing.Name);
        Assert.Equal(["Saved Clip-on tuner."], Messages);
    }

    [Fact]
    public void An_entry_that_will_not_do_says_so_while_one_types_on()
    {
        var page = RenderItem("device", GigRigUrls.New);
        Type(page, "width", "broad");

        page.WaitForAssertion(() => Assert.Contains("\"broad\" is not a length", page.Find(".mud-input-helper-text.mud-input-error").TextContent));
    }

    [Fact]
    public async Task Saving_with_faults_stays_on_the_page_and_counts_them()
    {
        var page = RenderItem("instrument", GigRigUrls.New);
        page.WaitForElement("h1");
        Press(page, "Save");

        page.WaitForAssertion(() => Assert.Contains("2 entries need another look", page.Markup));
        Assert.Empty(await Library.Gear.InstrumentsAsync(Cancel));
    }

    [Fact]
    public async Task A_change_made_elsewhere_asks_what_shall_count()
    {
        var stored = await Library.Gear.AddAsync(new Instrument(new("i"), "Old one", "bass"), new Ownership(), Cancel);
        var dialogs = Render<MudBlazor.MudDialogProvider>();
        var page = RenderItem("instrument", stored.Id.ToString());
        page.WaitForElement("[data-field=name]");
        await Library.Gear.SaveAsync(stored with { Item = stored.Item with { Thing = new(new("i"), "Changed elsewhere", "bass") } }, Cancel);
        Type(page, "name", "Mine");
        Press(page, "Save");

        dialogs.WaitForAssertion(() => Assert.Contains("Changed in the meantime", dialogs.Markup));
        dialogs.FindAll("button").Single(button => button.TextContent.Trim() == "Save mine").Click();

        page.WaitForAssertion(() => Assert.Equal(GigRigUrls.Gear, Address));
        Assert.Equal("Mine", Assert.Single(await Library.Gear.InstrumentsAsync(Cancel)).Item.Thing.Name);
    }

    [Theory]
    [InlineData("device", "3f2504e0-4f89-41d3-9a0c-0305e82c3301")]
    [InlineData("device", "nonsense")]
    [InlineData("spaceship", "new")]
    public void What_is_not_there_is_said_to_be_not_there(string kind, string id)
    {
        var page = RenderItem(kind, id);

        page.WaitForAssertion(() => Assert.Contains("No such thing", page.Markup));
    }

    [Fact]
    public void What_was_typed_before_and_not_saved_comes_back()
    {
        JSInterop.Setup<string?>("gigrigDrafts.find", _ => true).SetResult("""{"Name":"Half typed","Kind":"lute","Version":0}""");
        var page = RenderItem("instrument", GigRigUrls.New);

        page.WaitForAssertion(() => Assert.Contains("What you had typed here and not saved is back", page.Markup));
        Assert.Equal("Half typed", page.Find("[data-field=name]").GetAttribute("value"));
    }

    private IRenderedComponent<GearItemPage> RenderItem(string kind, string id) =>
        Render<GearItemPage>(p => p.Add(page => page.Kind, kind).Add(page => page.Id, id));

    private static void Type(IRenderedComponent<GearItemPage> page, string field, string text) => page.WaitForElement($"[data-field='{field}']").Change(text);

    private static void Press(IRenderedComponent<GearItemPage> page, string caption) =>
        page.FindAll("button").Single(button => button.TextContent.Trim() == caption).Click();
}
