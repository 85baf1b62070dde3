using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests;

public sealed class RigStoreTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_rig_keeps_its_problem_and_its_arrangement_when_the_gear_is_edited_and_deleted()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo").Drawing(60).Doing("delay"), new(), Cancel);
        var problem = A.Draft().With(echo.Item.Thing).FedBy(A.Outlet("1")).Needing("delay").Problem();
        var rig = A.Rig().Placing(echo.Item.Thing.Id.Value, 10, 20).Feeding(echo.Item.Thing.Id.Value, "1");
        var saved = await library.Rigs.AddAsync("Jam", "short one", problem, rig, Cancel);

        await library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);
        var found = (await library.Rigs.FindAsync(saved.Id, Cancel))!;

        Assert.Equal(("Jam", "short one"), (found.Item.Name, found.Item.Note));
        Assert.Equal(problem.Draft, found.Item.Problem.Draft);
        Assert.Equal(rig, found.Item.Rig);
    }

    [Fact]
    public async Task The_list_shows_the_last_saved_first()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var first = await library.Rigs.AddAsync("Jam", "", A.Draft().With(A.Device("echo")).Problem(), A.Rig().Placing("echo", 0, 0), Cancel);
        library.Clock.Now += TimeSpan.FromHours(1);
        await library.Rigs.AddAsync("Wedding", "suit", A.Draft().Problem(), A.Rig(), Cancel);

        var all = await library.Rigs.AllAsync(Cancel);

        Assert.Equal(["Wedding", "Jam"], all.Select(rig => rig.Item.Name));
        Assert.Equal(new(first.Id, 1, new("Jam", "", "night", "board", 1, first.Item.SavedUtc)), all[1]);
    }

    [Fact]
    public async Task Renaming_keeps_the_time_of_saving_and_saving_moves_it()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
        library.Clock.Now += TimeSpan.FromHours(1);

        var renamed = await library.Rigs.RenameAsync(added.Id, added.Version, "Loose jam", "bring tape", Cancel);
        var saved = await library.Rigs.SaveAsync(renamed, Cancel);

        Assert.Equal(("Loose jam", "bring tape", added.Item.SavedUtc), (renamed.Item.Name, renamed.Item.Note, renamed.Item.SavedUtc));
        Assert.Equal(library.Clock.Now.UtcDateTime, saved.Item.SavedUtc);
        Assert.Equal(3, saved.Version);
    }

    [Fact]
    public async Task A_stale_rename_and_a_stale_delete_are_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
        await library.Rigs.RenameAsync(added.Id, added.Version, "Loose jam", "", Cancel);

        await Assert.ThrowsAsync<StaleVersionException>(() => library.Rigs.RenameAsync(added.Id, added.Version, "Jam night", "", Cancel));
        var refusal = await Assert.ThrowsAsync<StaleVersionException>(() => library.Rigs.DeleteAsync(added.Id, added.Version, Cancel));
        Assert.Equal(
            "The rig \"Loose jam\" was changed meanwhile: you have version 1, stored is version 2. Load it again and repeat your change.",
            refusal.Message);

        Assert.Equal("Loose jam", (await library.Rigs.FindAsync(added.Id, Cancel))!.Item.Name);
    }

    [Fact]
    public async Task A_rig_that_speaks_of_things_outside_its_problem_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var refusal = await Assert.ThrowsAsync<RefusedThingException>(
            () => library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig().Placing("ghost", 0, 0), Cancel));

        Assert.Contains("ghost", refusal.Message);
        Assert.Empty(await library.Rigs.AllAsync(Cancel));
    }

    [Fact]
    public async Task A_rig_that_could_not_be_read_back_and_a_name_that_is_none_are_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var problem = A.Draft().With(A.Device("echo")).Problem();
        var saved = await library.Rigs.AddAsync("Jam", "", problem, A.Rig(), Cancel);

        var far = await Assert.ThrowsAsync<RefusedThingException>(() => library.Rigs.AddAsync("Far", "", problem, A.Rig().Placing("echo", 200_000, 0), Cancel));
        var nameless = await Assert.ThrowsAsync<RefusedThingException>(() => library.Rigs.RenameAsync(saved.Id, saved.Version, " ", "", Cancel));

        Assert.Equal("/rig/placements/0/x", Assert.Single(far.Complaints).Path);
        Assert.Equal("/name", Assert.Single(nameless.Complaints).Path);
        Assert.Equal(["Jam"], (await library.Rigs.AllAsync(Cancel)).Select(rig => rig.Item.Name));
    }

    [Fact]
    public async Task A_rig_that_somebody_else_spoilt_is_named_and_the_others_stay_readable()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var jam = await library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
        var tour = await library.Rigs.AddAsync("Tour", "", A.Draft().Problem(), A.Rig(), Cancel);
        await using (var db = library.Database())
            await db.Database.ExecuteSqlAsync($"UPDATE \"Rigs\" SET \"ProblemJson\" = 'x' WHERE \"Name\" = 'Jam'", Cancel);

        var fault = await Assert.ThrowsAsync<UnreadableRigException>(() => library.Rigs.FindAsync(jam.Id, Cancel));

        Assert.StartsWith("The stored rig \"Jam\" can't be read:", fault.Message);
        Assert.NotNull(await library.Rigs.FindAsync(tour.Id, Cancel));
        Assert.Equal(2, (await library.Rigs.AllAsync(Cancel)).Count);
        // A copy without it would be no copy; once it is deleted, as the message says, there is one.
        Assert.Equal(fault.Message, (await Assert.ThrowsAsync<UnreadableRigException>(() => library.File.ExportAsync(Cancel))).Message);
        await library.Rigs.DeleteAsync(jam.Id, jam.Version, Cancel);
        Assert.Contains("\"Tour\"", await library.File.ExportAsync(Cancel));
    }
}
