using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using GigRig.Web.Tests.Hosting;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class BoardPageStateTests : IAsyncLifetime
{
    private Library library = null!;
    private Guid id;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        id = (await library.Rigs.AddAsync("Friday", "bring strings", Draft.Problem(), Laid)).Id;
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task What_is_on_the_bench_is_saved_as_the_next_version()
    {
        var state = await OpenAsync();
        Assert.False(state.IsChanged);
        Move(state, 200);
        Assert.True(state.IsChanged);

        Assert.True(await state.SaveAsync());

        Assert.False(state.IsChanged);
        var stored = (await library.Rigs.FindAsync(id, Cancel))!;
        Assert.Equal((2, state.Editor!.Rig, "bring strings"), (stored.Version, stored.Item.Rig, stored.Item.Note));
    }

    [Fact]
    public async Task A_rig_that_breaks_rules_is_saved_as_it_is()
    {
        var state = await OpenAsync();
        Move(state, 20);
        Assert.NotEmpty(state.Editor!.Violations);

        Assert.True(await state.SaveAsync());
        Assert.Equal(state.Editor.Rig, (await library.Rigs.FindAsync(id, Cancel))!.Item.Rig);
    }

    [Fact]
    public async Task Two_benches_never_overwrite_each_other()
    {
        var (mine, theirs) = (await OpenAsync(), await OpenAsync());
        Move(theirs, 300);
        await theirs.SaveAsync();
        Move(mine, 200);

        Assert.False(await mine.SaveAsync());
        Assert.NotNull(mine.Stale);
        Assert.Equal((200, 0), mine.Editor!.At(Echo));
        Assert.Equal(theirs.Editor!.Rig, (await library.Rigs.FindAsync(id, Cancel))!.Item.Rig);

        await mine.TakeStoredAsync();
        Assert.Null(mine.Stale);
        Assert.Equal((300, 0), mine.Editor!.At(Echo));
    }

    [Fact]
    public async Task Mine_can_be_kept_as_a_copy()
    {
        var (mine, theirs) = (await OpenAsync(), await OpenAsync());
        Move(theirs, 300);
        await theirs.SaveAsync();
        Move(mine, 200);
        await mine.SaveAsync();

        var copy = (await library.Rigs.FindAsync(await mine.SaveCopyAsync(), Cancel))!.Item;

        Assert.Equal(("Friday (copy)", "bring strings", mine.Editor!.Rig), (copy.Name, copy.Note, copy.Rig));
    }

    [Fact]
    public async Task A_draft_comes_back_and_is_saved_over_the_version_it_began_with()
    {
        var before = await OpenAsync();
        Move(before, 200);
        before.Editor!.ToggleLock(Tuner);
        var draft = before.Draft;

        var after = await OpenAsync();
        Assert.True(after.BringBack(draft));

        Assert.Equal(before.Editor.Edit, after.Editor!.Edit);
        Assert.True(after.BroughtBack);
        Assert.True(await after.SaveAsync());
        Assert.False(after.BroughtBack);
    }

    [Fact]
    public async Task A_draft_of_an_older_version_is_not_saved_over_a_newer_one()
    {
        var before = await OpenAsync();
        Move(before, 200);
        var draft = before.Draft;
        var theirs = await OpenAsync();
        Move(theirs, 300);
        await theirs.SaveAsync();

        var after = await OpenAsync();
        after.BringBack(draft);

        Assert.False(await after.SaveAsync());
        Assert.NotNull(after.Stale);
    }

    [Fact]
    public async Task Locks_alone_come_back_without_a_word()
    {
        var before = await OpenAsync();
        before.Editor!.ToggleLock(Tuner);
        await library.Rigs.RenameAsync(id, 1, "Saturday", "", Cancel);

        var after = await OpenAsync();
        Assert.True(after.BringBack(before.Draft));

        Assert.True(after.Editor!.Edit.Locks(Tuner));
        Assert.False(after.BroughtBack);
        Move(after, 200);
        Assert.True(await after.SaveAsync());
    }

    [Fact]
    public async Task Once_everything_is_saved_there_is_no_draft()
    {
        var state = await OpenAsync();
        Assert.Null(state.Draft);
        Move(state, 200);
        Assert.NotNull(state.Draft);
        await state.SaveAsync();

        Assert.Null(state.Draft);
        Assert.False(state.BringBack(null));
        Assert.False(state.BringBack("no draft"));
    }

    [Fact]
    public async Task What_has_come_into_the_library_since_is_on_the_shelf_and_is_kept_once_it_is_used()
    {
        var bought = (await library.Gear.AddAsync(A.Device("new") with { Name = "Fresh phaser" }, new(), Cancel)).Item.Thing;
        await library.Gear.AddAsync(A.Device("lent") with { Name = "Lent flanger" }, new(GearStatus.LentOut), Cancel);
        var state = await OpenAsync();
        Assert.Contains(bought, state.Editor!.Shelf);
        Assert.DoesNotContain(state.Editor.Shelf, device => device.Name == "Lent flanger");

        Move(state, 200);
        await state.SaveAsync();
        Assert.Equal(Draft.Devices, (await library.Rigs.FindAsync(id, Cancel))!.Item.Problem.Devices);

        state.Editor.Add(bought.Id);
        await state.SaveAsync();
        var stored = (await library.Rigs.FindAsync(id, Cancel))!.Item;
        Assert.Equal((ValueList<Device>)[.. Draft.Devices, bought], stored.Problem.Devices);
        Assert.True(stored.Rig.Holds(bought.Id));
    }

    [Fact]
    public async Task A_rig_that_is_not_there_leaves_the_bench_empty()
    {
        var state = new BoardPageState(library.Rigs, library.Gear, Unsolved);
        await state.LoadAsync(Guid.NewGuid());

        Assert.True(state.IsLoaded);
        Assert.Null(state.Editor);
        Assert.False(await state.SaveAsync());
    }

    private static void Move(BoardPageState state, int x) => state.Editor!.MoveTo(Echo, new(x.Mm, 0.Mm));

    private async Task<BoardPageState> OpenAsync()
    {
        var state = new BoardPageState(library.Rigs, library.Gear, Unsolved);
        await state.LoadAsync(id);
        return state;
    }
}
