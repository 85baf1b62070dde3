using Bunit;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using GigRig.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components.Web;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class BoardPageTests : PageTest
{
    private Guid id;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        id = (await Library.Rigs.AddAsync("Friday", "", Draft.Problem(), Laid)).Id;
    }

    [Fact]
    public void Everything_on_the_board_can_be_reached_with_one_stop_of_the_tab_key()
    {
        var page = Open();

        Assert.Equal(["0", "-1"], page.FindAll("[data-thing]").Select(thing => thing.GetAttribute("tabindex")));
        Assert.Equal("1: tuner, at 10, 0 mm", page.Find("[data-thing=tuner]").GetAttribute("aria-label"));
    }

    [Fact]
    public async Task A_typed_place_counts_is_said_and_marks_what_it_breaks()
    {
        var page = Open();

        await Field(page, "From left, echo").ChangeAsync(new() { Value = "5.2 cm" });

        page.WaitForAssertion(() => Assert.Contains("overlap by 3 mm", page.Find("[role=status]").TextContent));
        Assert.Equal("52 mm", Field(page, "From left, echo").GetAttribute("value"));
        Assert.Equal(2, page.FindAll(".bench-row-faulty").Count);
        Assert.Contains("overlap by 3 mm", page.Find("[data-thing=echo]").GetAttribute("aria-label"));
        Assert.Equal("translate(52 20)", page.Find("[data-thing=echo]").GetAttribute("transform"));
        Assert.Single(page.FindAll(".bench-clashes rect"));
    }

    [Fact]
    public async Task What_is_no_length_is_said_at_the_field_and_moves_nothing()
    {
        var page = Open();

        await Field(page, "From left, echo").ChangeAsync(new() { Value = "far" });

        Assert.Contains("\"far\" is not a length", page.Find(".bench-length-error").TextContent);
        Assert.Equal("far", Field(page, "From left, echo").GetAttribute("value"));
        Assert.Contains("at 100, 0 mm", page.Find("[data-thing=echo]").GetAttribute("aria-label"));
    }

    [Fact]
    public async Task The_list_does_what_the_drawing_does()
    {
        var page = Open();

        await Press(page, "Turn echo");
        page.WaitForAssertion(() => Assert.Contains("turned 90°", page.Find("[data-thing=echo]").GetAttribute("aria-label")));
        await Press(page, "Lock tuner");
        page.WaitForAssertion(() => Assert.True(Field(page, "From left, tuner").HasAttribute("disabled")));
        await Press(page, "Add fuzz");
        page.WaitForAssertion(() => Assert.Equal(3, page.FindAll(".bench-row").Count));
        await Press(page, "Lay echo aside");
        page.WaitForAssertion(() => page.Find("button[aria-label='Put back: echo']"));
        await Press(page, "Remove fuzz");
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".bench-row")));
        for (var i = 0; i < 5; i++)
            await page.Find("button[aria-label^='Undo']").ClickAsync(new MouseEventArgs());

        page.WaitForAssertion(() => Assert.Equal("2: echo, at 100, 0 mm", page.Find("[data-thing=echo]").GetAttribute("aria-label")));
        Assert.True(page.Find("button[aria-label='Undo']").HasAttribute("disabled"));
    }

    [Fact]
    public async Task A_thing_is_swapped_for_one_from_the_shelf()
    {
        var page = Open();

        await Press(page, "Swap echo");
        Assert.Equal(["tuner", "fuzz", "hall"], page.FindAll(".bench-swap option").Select(option => option.TextContent));
        await page.Find(".bench-swap select").ChangeAsync(new() { Value = "hall" });
        await page.Find(".bench-swap").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("2: hall, at 88, 0 mm", page.Find("[data-thing=hall]").GetAttribute("aria-label")));
    }

    [Fact]
    public async Task What_the_browser_says_it_put_down_is_moved_there()
    {
        var page = Open();
        var drawing = page.FindComponent<BenchDrawing>().Instance;

        await page.InvokeAsync(() => drawing.PutDown("echo", 200, 10));
        page.WaitForAssertion(() => Assert.Contains("at 200, 10 mm", page.Find("[data-thing=echo]").GetAttribute("aria-label")));

        await page.InvokeAsync(() => drawing.PutDown("nobody", 0, 0));
        await page.InvokeAsync(() => drawing.PutDown("echo", int.MinValue, int.MaxValue));
        Assert.Contains("at 200, 10 mm", page.Find("[data-thing=echo]").GetAttribute("aria-label"));
    }

    [Fact]
    public async Task Saving_keeps_the_rig_and_a_stale_one_is_asked_about()
    {
        var page = Open();
        var dialogs = Render<MudBlazor.MudDialogProvider>();
        await Field(page, "From left, echo").ChangeAsync(new() { Value = "200" });
        await Press(page, "Save");
        page.WaitForAssertion(() => Assert.Equal("Saved.", Assert.Single(Messages)));
        var stored = (await Library.Rigs.FindAsync(id, Cancel))!;
        Assert.Equal(2, stored.Version);

        await Library.Rigs.RenameAsync(id, stored.Version, "Saturday", "", Cancel);
        await Field(page, "From left, echo").ChangeAsync(new() { Value = "210" });
        await Press(page, "Save");
        dialogs.WaitForAssertion(() => Assert.Contains("Saved elsewhere meanwhile", dialogs.Markup));
        await dialogs.FindAll("button").Single(button => button.TextContent.Trim() == "Keep mine as a copy").ClickAsync();

        page.WaitForAssertion(() => Assert.NotEqual(GigRigUrls.RigBoard(id), Address));
        Assert.Equal(["Friday (copy)", "Saturday"], (await Library.Rigs.AllAsync(Cancel)).Select(rig => rig.Item.Name).Order());
    }

    [Fact]
    public void A_rig_that_is_not_there_says_so()
    {
        var page = Render<BoardPage>(p => p.Add(c => c.Id, Guid.NewGuid()));

        page.WaitForAssertion(() => Assert.Equal("No rig here", page.Find("h1").TextContent));
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<BoardPage> page, string label) => page.Find($"input[aria-label='{label}']");

    private static Task Press(IRenderedComponent<BoardPage> page, string name) =>
        page.FindAll("button").Single(button => button.GetAttribute("aria-label") == name || button.TextContent.Trim() == name).ClickAsync(new MouseEventArgs());

    private IRenderedComponent<BoardPage> Open()
    {
        var page = Render<BoardPage>(p => p.Add(c => c.Id, id));
        page.WaitForAssertion(() => page.Find(".bench-scene"));
        return page;
    }
}
