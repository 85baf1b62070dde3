using Bunit;
using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Shared;
using GigRig.Web.Tests.Hosting;
using MudBlazor;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

public sealed class RigPageTests : PageTest
{
    [Fact]
    public async Task It_shows_drawing_hook_up_audio_order_and_pack_list()
    {
        var page = Open(await Library.SaveAsync("Friday", "bring strings"));

        Assert.All(
            ["Friday", "Pocket tuner", "outlet 1", "instrument", "instrument lead", "Never lift or cut the protective earth"],
            words => Assert.Contains(words, page.Markup));
        Assert.Equal("bring strings", page.Find(".rig-note").TextContent);
        Assert.Empty(page.FindAll(".rig-violations"));
    }

    [Fact]
    public void A_rig_that_is_not_there_says_so()
    {
        var page = Render<RigPage>(p => p.Add(c => c.Id, Guid.NewGuid()));

        page.WaitForAssertion(() => Assert.Contains("No rig here", page.Markup));
    }

    [Fact]
    public async Task What_breaks_a_rule_by_now_is_said_in_the_rules_words()
    {
        var page = Open(await Library.SaveBrokenAsync("Friday"));

        Assert.Contains("Pocket tuner", page.Find(".rig-violations li").TextContent);
    }

    [Fact]
    public async Task It_is_said_in_the_owners_unit()
    {
        var saved = await Library.SaveBrokenAsync("Friday");
        var page = Render<RigPage>(p => p.Add(c => c.Id, saved.Id).AddCascadingValue(new UnitPreference(LengthUnit.Inches, _ => Task.CompletedTask)));
        page.WaitForAssertion(() => page.Find(".rig-violations"));

        // 45 mm at 440 mm on a board of 460 mm by 140 mm; 25.4 mm an inch.
        Assert.Contains("sticks out 0.98 in over the right edge of the 18.11 in by 5.51 in board", page.Find(".rig-violations").TextContent);
    }

    [Fact]
    public async Task Name_and_note_are_kept()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Open(saved);

        await page.FindAll(".rig-form input")[0].InputAsync("Saturday");
        await page.Find(".rig-form textarea").InputAsync("bring strings");
        await page.FindAll("form.rig-form")[0].SubmitAsync();

        var stored = (await Library.Rigs.FindAsync(saved.Id, Cancel))!.Item;
        Assert.Equal(("Saturday", "bring strings"), (stored.Name, stored.Note));
        page.WaitForAssertion(() => Assert.Equal("Saturday", page.Find("h1").TextContent));
    }

    [Fact]
    public async Task A_rig_renamed_elsewhere_is_not_overwritten()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Open(saved);
        await Library.Rigs.RenameAsync(saved.Id, saved.Version, "Theirs", "", Cancel);

        await page.FindAll(".rig-form input")[0].InputAsync("Mine");
        await page.FindAll("form.rig-form")[0].SubmitAsync();

        Assert.Contains("was changed meanwhile", Assert.Single(Messages));
        Assert.Equal("Theirs", (await Library.Rigs.FindAsync(saved.Id, Cancel))!.Item.Name);
    }

    [Fact]
    public async Task Deleting_goes_back_to_the_list_and_can_be_undone()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Open(saved);

        await page.FindAll("button").Single(button => button.TextContent.Trim() == "Delete").ClickAsync();

        Assert.Equal(GigRigUrls.Rigs, Address);
        Assert.Null(await Library.Rigs.FindAsync(saved.Id, Cancel));
        Assert.Contains("Deleted Friday", Assert.Single(Messages));
    }

    [Fact]
    public async Task A_link_is_shown_once_and_opens_the_rig_until_it_is_revoked()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Open(saved);
        var dialogs = Render<MudDialogProvider>();

        await page.FindAll("form.rig-form")[1].SubmitAsync();
        page.WaitForAssertion(() => page.Find(".rig-fresh"));
        var url = page.Find(".rig-fresh input").GetAttribute("value")!;
        var reader = Library.Reader;
        Assert.Equal("Friday", (await reader.FindAsync(url[(url.LastIndexOf('/') + 1)..], Cancel))!.Name);

        var revoking = page.Find("button[aria-label='Revoke the link for Band']").ClickAsync();
        dialogs.WaitForAssertion(() => dialogs.Find(".mud-message-box"));
        await dialogs.FindAll("button").Single(button => button.TextContent.Trim() == "Revoke").ClickAsync();
        await revoking;

        page.WaitForAssertion(() => Assert.Contains("revoked", page.Find(".rig-links").TextContent));
        Assert.Empty(page.FindAll(".rig-fresh"));
        Assert.Null(await reader.FindAsync(url[(url.LastIndexOf('/') + 1)..], Cancel));
    }

    [Fact]
    public async Task The_copy_in_one_file_has_what_is_ticked_at_the_moment_it_is_asked_for()
    {
        var saved = await Library.SaveAsync("Friday");
        var page = Open(saved);
        var notes = page.FindAll(".rig-shows input")[1];
        await notes.ChangeAsync(true);
        await page.FindAll(".rig-shows input")[1].ChangeAsync(false);
        await page.FindAll(".rig-shows input")[0].ChangeAsync(true);

        await page.FindAll("button").Single(button => button.TextContent.Trim() == "Download as one file").ClickAsync();

        Assert.Equal(GigRigUrls.RigCopy(saved.Id, notes: false, values: false, places: true), JSInterop.VerifyInvoke("gigrigDisplay.download").Arguments[0]);
    }

    private IRenderedComponent<RigPage> Open(Stored<SavedRig> saved)
    {
        var page = Render<RigPage>(p => p.Add(c => c.Id, saved.Id));
        page.WaitForAssertion(() => page.Find("h1"));
        return page;
    }
}
