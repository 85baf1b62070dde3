using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.Gear.Forms;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

/// <summary>Adding and editing an off-board item, the smallest kind; the others differ in their forms alone.</summary>
public sealed class GearItemStateTests : IAsyncLifetime
{
    private Library library = null!;
    private GearItemState<OffBoardItem, OffBoardForm> state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private OffBoardForm Form => state.Form;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        state = new(library.Gear, library.Roles);
        await state.LoadAsync(null, LengthUnit.Millimetres);
        (Form.Name, Form.Mass, Form.Functions[0].Role) = ("Clip-on tuner", 30, "tuner");
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task A_new_thing_is_stored()
    {
        Assert.True(await state.SaveAsync());

        Assert.Equal("Clip-on tuner", (await OnlyAsync()).Item.Thing.Name);
        Assert.False(state.IsNew);
    }

    [Fact]
    public async Task A_form_with_a_fault_stores_nothing_and_shows_it()
    {
        Form.Name = " ";

        Assert.False(await state.SaveAsync());

        Assert.Equal("Name is empty. Type one.", Form.Errors.At("name"));
        Assert.Empty(await library.Gear.OffBoardAsync(Cancel));
    }

    [Fact]
    public async Task A_role_of_ones_own_is_stored_with_the_thing_that_plays_it()
    {
        Form.Functions[0].Role = state.Roles.Invent("Talk box").Key;
        state.Roles.Invent("Never used");

        Assert.True(await state.SaveAsync());

        Assert.Equal(["Talk box"], (await library.Roles.AllAsync(Cancel)).Select(role => role.Item.Title));
    }

    [Fact]
    public async Task A_change_made_elsewhere_is_not_run_over()
    {
        await ChangedElsewhereAsync();

        Assert.False(await state.SaveAsync());

        Assert.NotNull(state.Stale);
        Assert.Equal("Changed elsewhere", (await OnlyAsync()).Item.Thing.Name);
        Assert.Equal("Mine", Form.Name);
    }

    [Fact]
    public async Task Mine_counts_when_I_say_so()
    {
        await ChangedElsewhereAsync();
        await state.SaveAsync();

        Assert.True(await state.KeepMineAsync());

        Assert.Equal("Mine", (await OnlyAsync()).Item.Thing.Name);
        Assert.Null(state.Stale);
    }

    [Fact]
    public async Task The_stored_one_counts_when_I_say_so()
    {
        await ChangedElsewhereAsync();
        await state.SaveAsync();

        await state.TakeStoredAsync();

        Assert.Equal("Changed elsewhere", Form.Name);
        Assert.True(await state.SaveAsync());
    }

    [Fact]
    public async Task Mine_comes_back_when_it_was_deleted_elsewhere()
    {
        await state.SaveAsync();
        var stored = await OnlyAsync();
        await library.Gear.DeleteAsync(stored.Id, stored.Version, Cancel);
        Form.Name = "Mine";

        Assert.False(await state.SaveAsync());
        Assert.True(await state.KeepMineAsync());

        Assert.Equal((stored.Id, "Mine"), ((await OnlyAsync()).Id, (await OnlyAsync()).Item.Thing.Name));
    }

    [Fact]
    public async Task A_delete_can_be_undone()
    {
        await state.SaveAsync();

        Assert.True(await state.DeleteAsync());
        Assert.Empty(await library.Gear.OffBoardAsync(Cancel));

        await state.UndoDeleteAsync();
        Assert.Equal("Clip-on tuner", (await OnlyAsync()).Item.Thing.Name);
    }

    [Fact]
    public async Task A_thing_that_is_not_there_is_not_found() =>
        Assert.False(await state.LoadAsync(Guid.Parse("0f8fad5b-d9cb-469f-a165-70867728950e"), LengthUnit.Millimetres));

    [Fact]
    public void Every_kind_has_a_form() =>
        Assert.All(GearKind.All, kind => Assert.True(new GearItemStates(library.Gear, library.Roles).Of(kind).IsNew));

    private async Task ChangedElsewhereAsync()
    {
        await state.SaveAsync();
        var stored = await OnlyAsync();
        await library.Gear.SaveAsync(stored with { Item = stored.Item with { Thing = stored.Item.Thing with { Name = "Changed elsewhere" } } }, Cancel);
        Form.Name = "Mine";
    }

    private async Task<Stored<OwnedGear<OffBoardItem>>> OnlyAsync() => Assert.Single(await library.Gear.OffBoardAsync(Cancel));
}
