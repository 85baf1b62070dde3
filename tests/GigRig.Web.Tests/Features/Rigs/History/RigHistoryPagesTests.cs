using Bunit;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Rigs.History;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs.History;

public sealed class RigHistoryPagesTests : PageTest
{
    [Fact]
    public async Task The_history_lists_each_saved_version_once_with_ways_to_look_and_to_compare()
    {
        var rig = await MovedAsync("Friday");

        var page = Render<RigHistoryPage>(p => p.Add(c => c.Id, rig.Id));
        page.WaitForAssertion(() => page.Find("h1"));

        Assert.Equal(2, page.FindAll(".rig-versions li").Count);
        Assert.Contains("as it is now", page.FindAll(".rig-versions li")[0].TextContent);
        Assert.Equal(GigRigUrls.RigVersion(rig.Id, 1), page.FindAll(".rig-versions a")[0].GetAttribute("href"));
    }

    [Fact]
    public async Task Going_back_makes_the_rig_what_it_was_and_keeps_what_it_had_become()
    {
        var rig = await MovedAsync("Friday");
        var page = Render<RigVersionPage>(p => p.Add(c => c.Id, rig.Id).Add(c => c.Number, 1));
        page.WaitForAssertion(() => page.Find("h1"));

        await page.FindAll("button").Single(button => button.TextContent.Trim() == "Go back to this version").ClickAsync();

        Assert.Equal(GigRigUrls.Rig(rig.Id), Address);
        Assert.Equal(300, (await Library.Rigs.FindAsync(rig.Id, Cancel))!.Item.Rig.Placements[0].At.X.Value);
        Assert.Equal([3, 2, 1], (await Library.Rigs.VersionsAsync(rig.Id, Cancel)).Select(version => version.Number));
    }

    [Fact]
    public async Task Going_back_in_a_rig_that_was_changed_elsewhere_is_refused()
    {
        var rig = await MovedAsync("Friday");
        var page = Render<RigVersionPage>(p => p.Add(c => c.Id, rig.Id).Add(c => c.Number, 1));
        page.WaitForAssertion(() => page.Find("h1"));
        await Library.Rigs.RenameAsync(rig.Id, rig.Version, "Theirs", "", Cancel);

        await page.FindAll("button").Single(button => button.TextContent.Trim() == "Go back to this version").ClickAsync();

        Assert.Contains("was changed meanwhile", Assert.Single(Messages));
        Assert.Equal(10, (await Library.Rigs.FindAsync(rig.Id, Cancel))!.Item.Rig.Placements[0].At.X.Value);
    }

    [Fact]
    public async Task What_changed_since_a_version_is_listed()
    {
        var rig = await MovedAsync("Friday");
        Navigation.NavigateTo(GigRigUrls.RigSwap(rig.Id, from: 1));

        var page = Render<RigSwapPage>(p => p.Add(c => c.Id, rig.Id));

        page.WaitForAssertion(() => Assert.Contains("from 300 mm from the left, 10 mm from the front to 10 mm from the left", page.Find(".swap-part").TextContent));
    }

    [Fact]
    public async Task Another_rig_can_be_chosen_and_the_choice_is_in_the_address()
    {
        var rig = await Library.SaveAsync("Friday");
        var other = await MovedAsync("Saturday");
        Navigation.NavigateTo(GigRigUrls.RigSwap(rig.Id));
        var page = Render<RigSwapPage>(p => p.Add(c => c.Id, rig.Id));
        page.WaitForAssertion(() => Assert.Contains("Choose what to turn it into", page.Markup));

        await page.FindAll(".mud-input-control-input-container .mud-input")[1].MouseDownAsync(new());
        Popups.WaitForAssertion(() => Popups.FindAll(".mud-list-item"));
        await Popups.FindAll(".mud-list-item").Single(item => item.TextContent.Trim() == "Saturday").ClickAsync();

        Assert.Contains($"to={other.Id}", Address);
    }

    [Fact]
    public void A_rig_that_is_not_there_says_so_under_a_heading()
    {
        Assert.Equal("No rig here", Missing<RigHistoryPage>(p => p.Add(c => c.Id, Guid.NewGuid())));
        Assert.Equal("No rig here", Missing<RigVersionPage>(p => p.Add(c => c.Id, Guid.NewGuid()).Add(c => c.Number, 1)));
        Assert.Equal("No rig here", Missing<RigSwapPage>(p => p.Add(c => c.Id, Guid.NewGuid())));

        string Missing<TPage>(Action<ComponentParameterCollectionBuilder<TPage>> parameters)
            where TPage : Microsoft.AspNetCore.Components.IComponent
        {
            var page = Render(parameters);
            page.WaitForAssertion(() => page.Find("h1"));
            return page.Find("h1").TextContent;
        }
    }

    private async Task<Stored<SavedRig>> MovedAsync(string name)
    {
        var rig = await Library.SaveAsync(name);
        return await Library.Rigs.SaveAsync(rig with { Item = rig.Item with { Rig = A.Rig().Placing("tuner", 10, 10).Feeding("tuner", "1") } }, Cancel);
    }
}
