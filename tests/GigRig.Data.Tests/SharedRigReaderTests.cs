using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class SharedRigReaderTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_link_opens_the_rig_without_note_and_without_gear_that_stayed_at_home()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var saved = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(saved.Id, "for the band", cancel: Cancel);

        var shared = await library.Shared.FindAsync(token, Cancel);

        Assert.Equal("Jam", shared!.Name);
        Assert.Equal(["echo"], shared.Problem.Devices.Select(device => device.Name));
        Assert.Equal(saved.Item.Rig, shared.Rig);
        Assert.Empty(shared.Problem.Options.Ban);
    }

    [Fact]
    public async Task Unknown_malformed_revoked_expired_and_deleted_all_look_the_same()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var expiring = await library.Links.CreateAsync(rig.Id, "tonight", library.Clock.Now.UtcDateTime.AddHours(1), Cancel);
        var revoked = await library.Links.CreateAsync(rig.Id, "leaked", cancel: Cancel);
        var deleted = await library.Links.CreateAsync(rig.Id, "other", cancel: Cancel);
        Assert.NotNull(await library.Shared.FindAsync(expiring, Cancel));
        Assert.NotNull(await library.Shared.FindAsync(revoked, Cancel));

        library.Clock.Now += TimeSpan.FromHours(1);
        var leaked = (await library.Links.ForRigAsync(rig.Id, Cancel)).Single(link => link.Name == "leaked");
        Assert.True(await library.Links.RevokeAsync(leaked.Id, Cancel));

        Assert.Null(await library.Shared.FindAsync(expiring, Cancel));
        Assert.Null(await library.Shared.FindAsync(revoked, Cancel));
        Assert.Null(await library.Shared.FindAsync(ShareToken.Create(), Cancel));
        Assert.Null(await library.Shared.FindAsync("' OR 1=1 --", Cancel));
        Assert.NotNull(await library.Shared.FindAsync(deleted, Cancel));
        await library.Rigs.DeleteAsync(rig.Id, rig.Version, Cancel);
        Assert.Null(await library.Shared.FindAsync(deleted, Cancel));
        await library.Rigs.RestoreAsync(rig.Id, Cancel);
        Assert.NotNull(await library.Shared.FindAsync(deleted, Cancel));
    }

    [Fact]
    public async Task A_link_opens_for_whoever_holds_it_and_notes_when()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(rig.Id, "band", cancel: Cancel);
        await using var visitor = library.AsOwner(Guid.NewGuid());
        visitor.Clock.Now += TimeSpan.FromDays(2);

        Assert.Null((await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedUtc);
        Assert.Equal("Jam", (await visitor.Shared.FindAsync(token, Cancel))!.Name);
        Assert.Equal(visitor.Clock.Now.UtcDateTime, (await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedUtc);
    }

    [Fact]
    public async Task Opening_again_within_the_minute_writes_nothing()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(rig.Id, "band", cancel: Cancel);
        await library.Shared.FindAsync(token, Cancel);
        var first = library.Clock.Now.UtcDateTime;

        library.Clock.Now += TimeSpan.FromSeconds(59);
        await library.Shared.FindAsync(token, Cancel);
        Assert.Equal(first, (await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedUtc);

        library.Clock.Now += TimeSpan.FromSeconds(1);
        await library.Shared.FindAsync(token, Cancel);
        Assert.Equal(library.Clock.Now.UtcDateTime, (await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedUtc);
    }

    private static Task<Stored<SavedRig>> JamRigAsync(LibraryOnDisk library) => library.Rigs.AddAsync(
        "Jam",
        "Ask Jo for the spare lead",
        A.Draft().With(A.Device("echo").Doing("delay"), A.Device("fuzz")).Banning("fuzz").Needing("delay").Problem(),
        A.Rig().Placing("echo", 10, 20),
        Cancel);
}
