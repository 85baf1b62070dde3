using GigRig.Domain.Events;
using GigRig.Domain.Units;

namespace GigRig.Data.Tests;

public sealed class EventTypeStoreTests
{
    private static readonly EventType Wedding = new(
        "Wedding",
        [new(new("delay")), new(new("modulation.chorus"), NeedLevel.Want, 40)],
        [new("Solo", [new("drive"), new("boost")], NeedLevel.Want, 25)],
        new EventLimits(12_000.G, 8, 5),
        ChainPolicy.TimeInLoop);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_event_type_comes_back_as_it_was_stored()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var added = await library.Events.AddAsync(Wedding, Cancel);

        Assert.Equal(Wedding, (await library.Events.FindAsync(added.Id, Cancel))!.Item);
        Assert.Equal([added], await library.Events.AllAsync(Cancel));
    }

    [Fact]
    public async Task A_change_inside_a_sound_is_a_change_of_the_event_type()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Events.AddAsync(Wedding, Cancel);
        var changed = Wedding with { Sounds = [Wedding.Sounds[0] with { Roles = [new("drive"), new("boost"), new("delay")] }] };

        var saved = await library.Events.SaveAsync(added with { Item = changed }, Cancel);

        Assert.Equal(2, saved.Version);
        Assert.Equal(changed, (await library.Events.FindAsync(added.Id, Cancel))!.Item);
    }

    [Fact]
    public async Task A_deleted_event_type_can_be_brought_back()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var added = await library.Events.AddAsync(Wedding, Cancel);

        await library.Events.DeleteAsync(added.Id, added.Version, Cancel);
        Assert.Empty(await library.Events.AllAsync(Cancel));
        Assert.True(await library.Events.RestoreAsync(added.Id, Cancel));

        Assert.Equal(Wedding, Assert.Single(await library.Events.AllAsync(Cancel)).Item);
        Assert.False(await library.Events.RestoreAsync(Guid.NewGuid(), Cancel));
    }

    [Fact]
    public async Task An_event_type_that_makes_no_sense_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var refusal = await Assert.ThrowsAsync<RefusedThingException>(
            () => library.Events.AddAsync(Wedding with { Needs = [Wedding.Needs[0], Wedding.Needs[0]], Sounds = [new("Solo", [])] }, Cancel));

        Assert.Equal(["/needs/1/role", "/sounds/0/roles"], refusal.Complaints.Select(complaint => complaint.Path));
        Assert.Empty(await library.Events.AllAsync(Cancel));
    }
}
