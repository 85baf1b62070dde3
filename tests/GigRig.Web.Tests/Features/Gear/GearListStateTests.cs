using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

public sealed class GearListStateTests : IAsyncLifetime
{
    private Library library = null!;
    private GearListState state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        await library.Gear.AddAsync(A.Device("Meadow").Doing("drive.low"), new Ownership(), Cancel);
        await library.Gear.AddAsync(A.Device("Tower").Doing("delay"), new Ownership(GearStatus.LentOut, "With Ada"), Cancel);
        await library.Gear.AddAsync(A.Device("Sold long ago").Doing("delay"), new Ownership(GearStatus.Gone), Cancel);
        await library.Gear.AddAsync(A.Board(), new Ownership(), Cancel);
        await library.Gear.AddAsync(A.Amp().WithChannels("clean", "drive.high"), new Ownership(), Cancel);
        state = new(library.Gear, library.Batch, library.Roles, library.Rigs, library.Time);
        await state.LoadAsync();
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public void All_kinds_are_in_the_list_but_what_is_not_owned_any_more() => ShouldShow(new(), "Meadow", "Tower", "board", "amp");

    [Fact]
    public void What_is_gone_shows_when_asked_for() => ShouldShow(new(Status: GearStatus.Gone), "Sold long ago");

    [Fact]
    public void A_role_is_met_by_narrower_ones() => ShouldShow(new(Role: "drive"), "Meadow", "amp");

    [Fact]
    public void A_kind_narrows_the_list() => ShouldShow(new(Kind: "board"), "board");

    [Theory]
    [InlineData("mead")]
    [InlineData("overdrive")]
    [InlineData(" low gain ")]
    public void Text_finds_names_and_what_players_call_a_role(string text) => ShouldShow(new(Text: text), "Meadow");

    [Fact]
    public void Text_finds_notes() => ShouldShow(new(Text: "ada"), "Tower");

    [Fact]
    public async Task A_deleted_thing_leaves_the_list_and_can_be_brought_back()
    {
        var meadow = state.Shown(new(Text: "Meadow")).Single();
        await state.DeleteAsync(meadow);
        ShouldShow(new(), "Tower", "board", "amp");
        Assert.Equal([meadow], state.Deleted.Latest);

        await state.RestoreAsync(meadow);
        ShouldShow(new(), "Meadow", "Tower", "board", "amp");
        Assert.Empty(state.Deleted.Latest);
    }

    [Fact]
    public async Task A_thing_changed_meanwhile_is_not_deleted()
    {
        var meadow = (await library.Gear.DevicesAsync(Cancel)).Single(device => device.Item.Thing.Name == "Meadow");
        await library.Gear.SaveAsync(meadow with { Item = meadow.Item with { Ownership = new(Note: "new strings") } }, Cancel);

        await Assert.ThrowsAsync<StaleVersionException>(() => state.DeleteAsync(state.Shown(new(Text: "Meadow")).Single()));

        ShouldShow(new(Text: "new strings"), "Meadow");
    }

    private void ShouldShow(GearFilter filter, params string[] names) => Assert.Equal(names, state.Shown(filter).Select(row => row.Name));
}
