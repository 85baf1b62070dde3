using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

/// <summary>Ticking several things and changing all of them at once.</summary>
public sealed class GearSelectionTests : IAsyncLifetime
{
    private Library library = null!;
    private GearListState state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        await library.Gear.AddAsync(A.Device("Meadow").Doing("drive.low"), new Ownership { Tags = ["loud"], Guesses = [Guess.Mass] }, Cancel);
        await library.Gear.AddAsync(A.Device("Tower").Doing("delay"), new Ownership(GearStatus.InRepair), Cancel);
        await library.Gear.AddAsync(A.Board(), new Ownership(), Cancel);
        state = new(library.Gear, library.Batch, library.Roles, library.Rigs, library.Time);
        await state.LoadAsync();
        state.Selection.TickAll(state.Shown(new(Kind: "device")), on: true);
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task A_status_is_set_for_all_ticked_and_undone_for_all()
    {
        var change = await state.Selection.ChangeAsync("done", GearSelection.ToStatus(GearStatus.LentOut, " Ada ", new(2027, 3, 6)));
        await state.LoadAsync();
        Assert.All(state.Shown(new(Kind: "device")), row => Assert.Equal((GearStatus.LentOut, "Ada", new DateOnly(2027, 3, 6)), (row.Ownership.Status, row.Ownership.LentTo, row.Ownership.BackOn!.Value)));
        Assert.Equal(GearStatus.Ready, state.Shown(new(Kind: "board")).Single().Ownership.Status);

        await state.Selection.UndoAsync(change);
        await state.LoadAsync();
        Assert.Equal([GearStatus.Ready, GearStatus.InRepair], state.Shown(new(Kind: "device")).Select(row => row.Ownership.Status));
        Assert.Equal(2, state.Selection.Count);
    }

    [Fact]
    public async Task Coming_home_forgets_who_had_it()
    {
        await state.Selection.ChangeAsync("", GearSelection.ToStatus(GearStatus.LentOut, "Ada", new(2027, 3, 6)));
        await state.LoadAsync();
        await state.Selection.ChangeAsync("", GearSelection.ToStatus(GearStatus.Ready, "Ada", new(2027, 3, 6)));
        await state.LoadAsync();

        Assert.All(state.Selection.Rows, row => Assert.Equal(("", null), (row.Ownership.LentTo, row.Ownership.BackOn)));
    }

    [Fact]
    public async Task Tags_are_added_once_and_taken_off_whatever_their_case()
    {
        await state.Selection.ChangeAsync("", GearSelection.Tagged(["LOUD", "tour"]));
        await state.LoadAsync();
        Assert.Equal(["loud, tour", "LOUD, tour"], state.Selection.Rows.Select(row => TagText.Show(row.Ownership.Tags)));
        Assert.Equal(["loud", "tour"], state.Tags);
        Assert.Equal([Guess.Mass], state.Selection.Rows[0].Ownership.Guesses);

        await state.Selection.ChangeAsync("", GearSelection.Untagged(["loud"]));
        await state.LoadAsync();
        Assert.Equal(["tour", "tour"], state.Selection.Rows.Select(row => TagText.Show(row.Ownership.Tags)));
    }

    [Fact]
    public async Task One_changed_meanwhile_leaves_all_as_they_are()
    {
        var tower = (await library.Gear.DevicesAsync(Cancel)).Single(device => device.Item.Thing.Name == "Tower");
        await library.Gear.SaveAsync(tower with { Item = tower.Item with { Ownership = new(Note: "back already") } }, Cancel);

        await Assert.ThrowsAsync<StaleVersionException>(() => state.Selection.ChangeAsync("", GearSelection.ToStatus(GearStatus.Gone, "", null)));

        await state.LoadAsync();
        Assert.Equal(3, state.Shown(new()).Count);
    }

    [Fact]
    public async Task All_ticked_are_deleted_and_brought_back_at_once()
    {
        var gone = await state.DeleteSelectedAsync();
        Assert.Equal(["board"], state.Shown(new()).Select(row => row.Name));
        Assert.Equal((2, 0), (state.Deleted.Latest.Count(), state.Selection.Count));

        await state.RestoreAsync(gone);
        Assert.Equal(3, state.Shown(new()).Count);
        Assert.Empty(state.Deleted.Latest);
    }

    [Fact]
    public async Task A_duplicate_is_ready_and_has_a_name_of_its_own()
    {
        var tower = state.Shown(new(Text: "Tower")).Single();
        await state.DuplicateAsync(tower);
        var (id, name) = await state.DuplicateAsync(tower);

        Assert.Equal("Tower (copy 2)", name);
        var copy = (await library.Gear.FindAsync<Device>(id, Cancel))!.Item;
        Assert.Equal(((Device)tower.Thing).Functions, copy.Thing.Functions);
        Assert.Equal(GearStatus.Ready, copy.Ownership.Status);
    }
}
