using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class GearBatchStoreTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Things_of_every_kind_are_added_at_once()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        object[] things = [A.Device("echo"), A.Board(), A.Supply(A.Outlet("1")), A.Amp(), A.OffBoard("clip"), A.Lead(), A.Instrument()];

        var added = await library.Batch.AddAsync(things.Select(thing => (thing, new Ownership { Tags = ["new"] })), Cancel);

        Assert.Equal(7, added.Select(thing => thing.Id).Distinct().Count());
        Assert.Equal("echo", (await library.Gear.FindAsync<Device>(added[0].Id, Cancel))!.Item.Thing.Name);
        Assert.Equal(["new"], (await library.Gear.FindAsync<Instrument>(added[6].Id, Cancel))!.Item.Ownership.Tags);
    }

    [Fact]
    public async Task One_that_makes_no_sense_keeps_all_out()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        await Assert.ThrowsAsync<RefusedThingException>(() => library.Batch.AddAsync([(A.Device("echo"), new()), (A.Device("flat").Sized(0, 100), new())], Cancel));

        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task What_is_kept_beside_the_facts_changes_for_all_and_back_again()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Batch.AddAsync([(A.Device("echo"), new()), (A.Board(), new())], Cancel);
        var lent = new Ownership(GearStatus.LentOut) { LentTo = "Ada", BackOn = new(2027, 3, 6) };

        var changed = await library.Batch.SetOwnershipsAsync([.. added.Select(at => new OwnershipAt(at.Id, at.Version, lent))], Cancel);

        Assert.Equal([2, 2], changed.Select(at => at.Version));
        Assert.Equal(lent, (await library.Gear.FindAsync<Board>(added[1].Id, Cancel))!.Item.Ownership);

        await library.Batch.SetOwnershipsAsync([.. changed.Select(at => new OwnershipAt(at.Id, at.Version, new()))], Cancel);
        Assert.Equal(new(), (await library.Gear.FindAsync<Device>(added[0].Id, Cancel))!.Item.Ownership);
    }

    [Fact]
    public async Task One_changed_meanwhile_leaves_all_as_they_are()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Batch.AddAsync([(A.Device("echo"), new()), (A.Device("hall"), new())], Cancel);
        var hall = (await library.Gear.FindAsync<Device>(added[1].Id, Cancel))!;
        await library.Gear.SaveAsync(hall with { Item = hall.Item with { Ownership = new(Note: "changed") } }, Cancel);

        await Assert.ThrowsAsync<StaleVersionException>(() => library.Batch.DeleteAsync(added, Cancel));
        await Assert.ThrowsAsync<StaleVersionException>(() => library.Batch.SetOwnershipsAsync([.. added.Select(at => new OwnershipAt(at.Id, at.Version, new(GearStatus.Gone)))], Cancel));

        Assert.Equal([GearStatus.Ready, GearStatus.Ready], (await library.Gear.DevicesAsync(Cancel)).Select(device => device.Item.Ownership.Status));
    }

    [Fact]
    public async Task Deleting_many_can_be_undone_for_all()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Batch.AddAsync([(A.Device("echo"), new()), (A.Board(), new())], Cancel);

        await library.Batch.DeleteAsync(added, Cancel);
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));

        await library.Batch.RestoreAsync([.. added.Select(at => at.Id)], Cancel);
        Assert.Single(await library.Gear.DevicesAsync(Cancel));
        Assert.Single(await library.Gear.BoardsAsync(Cancel));
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("a\u0007", "control character")]
    public async Task A_tag_that_will_not_do_is_refused(string tag, string complaint)
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var refused = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Device("echo"), new() { Tags = [tag] }, Cancel));

        Assert.Contains(complaint, Assert.Single(refused.Complaints).Message);
    }

    [Fact]
    public async Task Too_long_too_many_and_doubled_tags_are_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        Task<RefusedThingException> Refuse(params string[] tags) =>
            Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Device("echo"), new() { Tags = [.. tags] }, Cancel));

        Assert.Contains("41 characters", (await Refuse(new string('x', 41))).Message);
        Assert.Contains("21 tags", (await Refuse([.. Enumerable.Range(0, 21).Select(i => $"{i}")])).Message);
        Assert.Contains("there twice", (await Refuse("Loud", "loud")).Message);
    }
}
