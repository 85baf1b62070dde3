using System.Reflection;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Owners;

/// <summary>One owner has one of everything; another, on the same database, tries every way the stores offer and must find nothing and change nothing.</summary>
public sealed class OwnerWallTests(OwnerWallTests.Fixture fixture) : IClassFixture<OwnerWallTests.Fixture>
{
    public static TheoryData<string> Ways => new(Attempts.Keys);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static Dictionary<string, Func<LibraryOnDisk, Belongings, Task>> Attempts { get; } = new()
    {
        ["GearStore.DevicesAsync"] = async (other, _) => Assert.Empty(await other.Gear.DevicesAsync(Cancel)),
        ["GearStore.BoardsAsync"] = async (other, _) => Assert.Empty(await other.Gear.BoardsAsync(Cancel)),
        ["GearStore.SuppliesAsync"] = async (other, _) => Assert.Empty(await other.Gear.SuppliesAsync(Cancel)),
        ["GearStore.AmpsAsync"] = async (other, _) => Assert.Empty(await other.Gear.AmpsAsync(Cancel)),
        ["GearStore.OffBoardAsync"] = async (other, _) => Assert.Empty(await other.Gear.OffBoardAsync(Cancel)),
        ["GearStore.LeadsAsync"] = async (other, _) => Assert.Empty(await other.Gear.LeadsAsync(Cancel)),
        ["GearStore.InstrumentsAsync"] = async (other, _) => Assert.Empty(await other.Gear.InstrumentsAsync(Cancel)),
        ["GearStore.AllAsync"] = async (other, _) => Assert.Equal(new GearLibrary([], [], [], [], [], [], [], PowerAdapters.None), await other.Gear.AllAsync(Cancel)),
        ["GearStore.FindAsync"] = async (other, its) => Assert.Null(await other.Gear.FindAsync<Device>(its.Device.Id, Cancel)),
        ["GearStore.AddAsync"] = async (other, its) => Assert.NotEqual(its.Device.Id, (await other.Gear.AddAsync(its.Device.Item.Thing, new(), Cancel)).Id),
        ["GearStore.SaveAsync"] = (other, its) => Refused(() => other.Gear.SaveAsync(its.Device, Cancel)),
        ["GearStore.DeleteAsync"] = (other, its) => Refused(() => other.Gear.DeleteAsync(its.Device.Id, its.Device.Version, Cancel)),
        ["GearStore.RestoreAsync"] = async (other, its) => Assert.False(await other.Gear.RestoreAsync(its.DeletedDevice.Id, Cancel)),
        ["GearStore.AdaptersAsync"] = async (other, _) => Assert.Equal(PowerAdapters.None, (await other.Gear.AdaptersAsync(Cancel)).Item),
        ["GearStore.SaveAdaptersAsync"] = async (other, _) => await other.Gear.SaveAdaptersAsync(new(Guid.Empty, 0, new(Series: 9)), Cancel),
        ["GearBatchStore.AddAsync"] = async (other, its) => Assert.NotEqual(its.Device.Id, (await other.Batch.AddAsync([(its.Device.Item.Thing, new())], Cancel))[0].Id),
        ["GearBatchStore.SetOwnershipsAsync"] = (other, its) => Refused(() => other.Batch.SetOwnershipsAsync([new(its.Device.Id, its.Device.Version, new(Note: "mine"))], Cancel)),
        ["GearBatchStore.DeleteAsync"] = (other, its) => Refused(() => other.Batch.DeleteAsync([new(its.Device.Id, its.Device.Version)], Cancel)),
        ["GearBatchStore.RestoreAsync"] = (other, its) => other.Batch.RestoreAsync([its.DeletedDevice.Id], Cancel),
        ["GearPhotoStore.FindAsync"] = async (other, its) => Assert.Null(await other.Photos.FindAsync(its.Device.Id, Cancel)),
        ["GearPhotoStore.SavedUtcAsync"] = async (other, its) => Assert.Null(await other.Photos.SavedUtcAsync(its.Device.Id, Cancel)),
        ["GearPhotoStore.PutAsync"] = (other, its) => Assert.ThrowsAsync<ArgumentException>(() => other.Photos.PutAsync(its.Device.Id, new(new byte[] { 9 }, "image/jpeg"), Cancel)),
        ["GearPhotoStore.RemoveAsync"] = async (other, its) => Assert.Null(await other.Photos.RemoveAsync(its.Device.Id, Cancel)),
        ["EventTypeStore.AllAsync"] = async (other, _) => Assert.Empty(await other.Events.AllAsync(Cancel)),
        ["EventTypeStore.FindAsync"] = async (other, its) => Assert.Null(await other.Events.FindAsync(its.Event.Id, Cancel)),
        ["EventTypeStore.AddAsync"] = async (other, its) => Assert.NotEqual(its.Event.Id, (await other.Events.AddAsync(its.Event.Item, Cancel)).Id),
        ["EventTypeStore.SaveAsync"] = (other, its) => Refused(() => other.Events.SaveAsync(its.Event, Cancel)),
        ["EventTypeStore.DeleteAsync"] = (other, its) => Refused(() => other.Events.DeleteAsync(its.Event.Id, its.Event.Version, Cancel)),
        ["EventTypeStore.RestoreAsync"] = async (other, its) => Assert.False(await other.Events.RestoreAsync(its.Event.Id, Cancel)),
        ["RoleStore.AllAsync"] = async (other, _) => Assert.Empty(await other.Roles.AllAsync(Cancel)),
        ["RoleStore.AddAsync"] = async (other, its) => Assert.NotEqual(its.Role.Id, (await other.Roles.AddAsync(its.Role.Item, Cancel)).Id),
        ["RoleStore.SaveAsync"] = (other, its) => Refused(() => other.Roles.SaveAsync(its.Role, Cancel)),
        ["RoleStore.DeleteAsync"] = (other, its) => Refused(() => other.Roles.DeleteAsync(its.Role.Id, its.Role.Version, Cancel)),
        ["RoleStore.RestoreAsync"] = async (other, its) => Assert.False(await other.Roles.RestoreAsync(its.Role.Id, Cancel)),
        ["RigStore.AllAsync"] = async (other, _) => Assert.Empty(await other.Rigs.AllAsync(Cancel)),
        ["RigStore.UsedAsync"] = async (other, _) => Assert.Empty(await other.Rigs.UsedAsync(Cancel)),
        ["RigStore.FindAsync"] = async (other, its) => Assert.Null(await other.Rigs.FindAsync(its.Rig.Id, Cancel)),
        ["RigStore.AddAsync"] = async (other, its) => Assert.NotEqual(its.Rig.Id, (await other.Rigs.AddAsync("Jam", "", its.Rig.Item.Problem, its.Rig.Item.Rig, Cancel)).Id),
        ["RigStore.SaveAsync"] = (other, its) => Refused(() => other.Rigs.SaveAsync(its.Rig, Cancel)),
        ["RigStore.RenameAsync"] = (other, its) => Refused(() => other.Rigs.RenameAsync(its.Rig.Id, its.Rig.Version, "Mine", "", Cancel)),
        ["RigStore.DeleteAsync"] = (other, its) => Refused(() => other.Rigs.DeleteAsync(its.Rig.Id, its.Rig.Version, Cancel)),
        ["RigStore.RestoreAsync"] = async (other, its) => Assert.False(await other.Rigs.RestoreAsync(its.Rig.Id, Cancel)),
        ["RigStore.VersionsAsync"] = async (other, its) => Assert.Empty(await other.Rigs.VersionsAsync(its.Rig.Id, Cancel)),
        ["RigStore.FindVersionAsync"] = async (other, its) => Assert.Null(await other.Rigs.FindVersionAsync(its.Rig.Id, its.Rig.Version, Cancel)),
        ["RigStore.GoBackAsync"] = (other, its) => Assert.ThrowsAsync<ArgumentException>(() => other.Rigs.GoBackAsync(its.Rig.Id, its.Rig.Version, its.Rig.Version, Cancel)),
        ["ShareLinkStore.ShowAsync"] = async (other, its) => Assert.Null(await other.Links.ShowAsync(its.Rig.Id, LinkContent.Plain, cancel: Cancel)),
        ["ShareLinkStore.CreateAsync"] = (other, its) => Assert.ThrowsAsync<ArgumentException>(() => other.Links.CreateAsync(its.Rig.Id, new("mine"), Cancel)),
        ["ShareLinkStore.ForRigAsync"] = async (other, its) => Assert.Empty(await other.Links.ForRigAsync(its.Rig.Id, Cancel)),
        ["ShareLinkStore.RevokeAsync"] = async (other, its) => Assert.False(await other.Links.RevokeAsync(its.Link.Id, Cancel)),
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task Another_owner_finds_nothing_and_changes_nothing_by(string way)
    {
        var rows = Belongings.Rows(fixture.Library);
        await using var other = fixture.Library.AsOwner(Guid.NewGuid());

        await Attempts[way](other, fixture.Belongings);

        // One row of each of the fourteen tables, and the deleted device.
        Assert.Equal(15, rows.Count);
        Assert.Equal(rows, Belongings.Rows(fixture.Library));
    }

    [Fact]
    public void Every_way_a_store_offers_is_tried()
    {
        Type[] stores = [typeof(GearStore), typeof(GearBatchStore), typeof(GearPhotoStore), typeof(EventTypeStore), typeof(RoleStore), typeof(RigStore), typeof(ShareLinkStore)];
        var offered = stores.SelectMany(store => store.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Select(way => $"{store.Name}.{way.Name}"));

        Assert.Equal(offered.Distinct().Order(), Attempts.Keys.Order());
        Assert.Empty(typeof(GigRigDb).Assembly.GetExportedTypes().Where(type => type.Name.EndsWith("Store", StringComparison.Ordinal)).Except(stores));
    }

    private static Task Refused(Func<Task> attempt) => Assert.ThrowsAsync<StaleVersionException>(attempt);

    /// <summary>Made once for all ways, as none may change it.</summary>
    public sealed class Fixture : IAsyncLifetime
    {
        internal LibraryOnDisk Library { get; private set; } = null!;

        internal Belongings Belongings { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            Library = await LibraryOnDisk.NewAsync();
            Belongings = await Belongings.PutAsync(Library, Cancel);
        }

        public ValueTask DisposeAsync() => Library.DisposeAsync();
    }
}
