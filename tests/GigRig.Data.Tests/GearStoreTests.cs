using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class GearStoreTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_device_comes_back_as_it_was_stored_under_an_id_of_its_own()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = A.Device("echo").Sized(70, 120).Drawing(60).WithAudioJacks().WithSwitch(35, 20).Rated("delay", 4, "a");
        var ownership = new Ownership(GearStatus.InRepair, "Switch sticks", 12_900);

        var added = await library.Gear.AddAsync(echo, ownership, Cancel);
        var found = await library.Gear.FindAsync<Device>(added.Id, Cancel);

        Assert.Equal(added, found);
        Assert.Equal(1, found!.Version);
        Assert.Equal(echo with { Id = new(added.Id.ToString()) }, found.Item.Thing);
        Assert.Equal(ownership, found.Item.Ownership);
    }

    [Fact]
    public async Task All_seven_kinds_are_kept()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var own = new Ownership();
        await library.Gear.AddAsync(A.Device("echo"), own, Cancel);
        await library.Gear.AddAsync(A.Board().Railed(0, 40).KeepingOut(0, 0, 10, 10).Clearing(under: 50), own, Cancel);
        await library.Gear.AddAsync(A.Supply(A.Outlet("1").AtVolts(9, 12)).Mounted(SupplyMount.Under, 150, 60, 30), own, Cancel);
        await library.Gear.AddAsync(A.Amp().WithChannels("clean", "drive.high").Looped(), own, Cancel);
        await library.Gear.AddAsync(A.OffBoard("clip").Doing("tuner"), own, Cancel);
        await library.Gear.AddAsync(A.Lead(), own, Cancel);
        await library.Gear.AddAsync(A.Instrument(), own, Cancel);

        var all = await library.Gear.AllAsync(Cancel);

        Assert.Equal(
            [1, 1, 1, 1, 1, 1, 1],
            [all.Devices.Count, all.Boards.Count, all.Supplies.Count, all.Amps.Count, all.OffBoard.Count, all.Leads.Count, all.Instruments.Count]);
        Assert.Equal(new BodySize(150.Mm, 60.Mm, 30.Mm), all.Supplies[0].Item.Thing.Size);
        Assert.Equal([9.V, 12.V], all.Supplies[0].Item.Thing.Outlets[0].Volts);
    }

    [Fact]
    public async Task Saving_with_the_version_read_bumps_it_and_saving_without_a_change_does_not()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var first = await library.Gear.AddAsync(A.Device("echo").Doing("delay"), new(), Cancel);

        var second = await library.Gear.SaveAsync(Named(first, "Tape echo"), Cancel);
        var third = await library.Gear.SaveAsync(second, Cancel);

        Assert.Equal(2, second.Version);
        Assert.Equal("Tape echo", second.Item.Thing.Name);
        Assert.Equal(second, third);
    }

    [Fact]
    public async Task A_second_save_from_the_same_reading_is_refused_and_says_what_differs()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var read = await library.Gear.AddAsync(A.Device("echo").Doing("delay"), new(), Cancel);
        await library.Gear.SaveAsync(Named(read, "Tape echo"), Cancel);

        var mine = read with { Item = read.Item with { Thing = read.Item.Thing.Weighing(700).Doing("reverb") } };
        var refusal = await Assert.ThrowsAsync<StaleVersionException>(() => library.Gear.SaveAsync(mine, Cancel));

        Assert.Equal(
            "The device \"Tape echo\" was changed meanwhile: you have version 1, stored is version 2. "
            + "Yours differs from it in: mass, name, functions. Load it again and repeat your change.",
            refusal.Message);
        Assert.Equal(500.G, (await library.Gear.FindAsync<Device>(read.Id, Cancel))!.Item.Thing.Mass);
    }

    [Fact]
    public async Task Of_saves_that_meet_exactly_one_wins_and_the_others_are_told()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var read = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);

        var saves = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(
            async () => await Record.ExceptionAsync(() => library.Gear.SaveAsync(Named(read, $"echo {i}"), Cancel)), Cancel)));

        Assert.Single(saves, fault => fault is null);
        Assert.All(saves.Where(fault => fault is not null), fault => Assert.IsType<StaleVersionException>(fault));
        Assert.Equal(2, (await library.Gear.FindAsync<Device>(read.Id, Cancel))!.Version);
    }

    [Fact]
    public async Task A_deleted_thing_is_gone_until_it_is_restored()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);

        await library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
        Assert.Null(await library.Gear.FindAsync<Device>(echo.Id, Cancel));

        Assert.True(await library.Gear.RestoreAsync(echo.Id, Cancel));
        Assert.Equal(echo.Item, (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item);
    }

    [Fact]
    public async Task Saving_a_deleted_thing_is_refused_by_name()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);

        var refusal = await Assert.ThrowsAsync<StaleVersionException>(() => library.Gear.SaveAsync(echo, Cancel));

        Assert.Equal("The device \"echo\" is not there any more. Bring it back first, or save it as a new one.", refusal.Message);
        Assert.Null(refusal.StoredVersion);
    }

    [Fact]
    public async Task Adapter_counts_start_at_none_and_refuse_a_stale_save()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var none = await library.Gear.AdaptersAsync(Cancel);

        var saved = await library.Gear.SaveAdaptersAsync(none with { Item = new(Reverse: 1, Splitter: 3) }, Cancel);

        Assert.Equal(PowerAdapters.None, none.Item);
        Assert.Equal(saved, await library.Gear.AdaptersAsync(Cancel));
        await Assert.ThrowsAsync<StaleVersionException>(() => library.Gear.SaveAdaptersAsync(none, Cancel));
    }

    [Fact]
    public async Task What_makes_no_sense_is_refused_by_name_and_not_stored()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var good = await library.Gear.AddAsync(A.Lead("patch"), new(), Cancel);

        var refusal = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Lead("patch") with { Length = 0.Mm, Count = 1000 }, new(ValueCents: -1), Cancel));
        await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.SaveAsync(good with { Item = new(A.Lead(" "), new()) }, Cancel));

        Assert.Equal(["/length", "/count", "/valueCents"], refusal.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(
            "The lead \"patch\" can't be stored. The length of lead patch is 0 mm; give 1 to 100000 mm. The count of lead patch is 1000; give 1 to 999. "
            + "The value in hundredths is -1; give 0 to 1000000000.",
            refusal.Message);
        Assert.Equal([good], await library.Gear.LeadsAsync(Cancel));
    }

    [Fact]
    public async Task What_a_planning_problem_would_refuse_is_not_stored_in_the_first_place()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var device = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Device("echo").Sized(0, 120).Drawing(99_999), new(), Cancel));
        var board = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Board(depth: 140).Railed(100, 200), new(), Cancel));
        var supply = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Supply(A.Outlet("1"), A.Outlet("1")), new(), Cancel));
        var amp = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.Amp() with { Name = "" }, new(), Cancel));
        var item = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.AddAsync(A.OffBoard("clip").Doing("No Role"), new(), Cancel));
        var adapters = await Assert.ThrowsAsync<RefusedThingException>(() => library.Gear.SaveAdaptersAsync(new(Guid.Empty, 0, new(Reverse: 100)), Cancel));

        Assert.Equal(["/width", "/power/current"], device.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(["/rails/0"], board.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(["/outlets/1/id"], supply.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(["/name"], amp.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(["/functions/0/role"], item.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(["/reverse"], adapters.Complaints.Select(complaint => complaint.Path));
        Assert.Equal(new GearLibrary([], [], [], [], [], [], [], PowerAdapters.None), await library.Gear.AllAsync(Cancel));
    }

    [Fact]
    public async Task A_kind_that_is_no_gear_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var refusal = await Assert.ThrowsAsync<ArgumentException>(() => library.Gear.AddAsync("a string", new(), Cancel));

        Assert.StartsWith("There is no table for String. Use one of: Device, Board,", refusal.Message);
    }

    private static Stored<OwnedGear<Device>> Named(Stored<OwnedGear<Device>> stored, string name) =>
        stored with { Item = stored.Item with { Thing = stored.Item.Thing with { Name = name } } };
}
