using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests.Migrations;

public sealed class WiringMigrationTests
{
    private const string Before = "Library";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Gear_stored_before_levels_and_families_is_read_as_not_known_and_by_the_words_of_its_kind()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await library.Gear.AddAsync(A.Device("echo") with { InputLevel = SignalLevel.Line, WantsBarePickup = true }, new(), Cancel);
        await library.Gear.AddAsync(A.Amp() with { LoopLevel = SignalLevel.Line }, new(), Cancel);
        await library.Gear.AddAsync(A.Lead() with { Capacitance = 100 }, new(), Cancel);
        foreach (var kind in new[] { "Electric guitar", "Five-string Bass", "stage piano", "SYNTH", "lap steel" })
            await library.Gear.AddAsync(A.Instrument() with { Name = kind, Kind = kind, Family = InstrumentFamily.Other }, new(), Cancel);

        await using (var db = library.Database())
            await db.Database.MigrateAsync(Before, Cancel);
        await library.OpenAsync();

        Assert.Equal((SignalLevel.Unknown, false), (await library.Gear.DevicesAsync(Cancel))[0].Item.Thing is var device ? (device.InputLevel, device.WantsBarePickup) : default);
        Assert.Equal(SignalLevel.Unknown, (await library.Gear.AmpsAsync(Cancel))[0].Item.Thing.LoopLevel);
        Assert.Null((await library.Gear.LeadsAsync(Cancel))[0].Item.Thing.Capacitance);
        Assert.Equal(
            [
                ("Electric guitar", InstrumentFamily.Guitar), ("Five-string Bass", InstrumentFamily.Bass), ("lap steel", InstrumentFamily.Guitar),
                ("stage piano", InstrumentFamily.Keyboard), ("SYNTH", InstrumentFamily.Keyboard),
            ],
            (await library.Gear.InstrumentsAsync(Cancel)).Select(stored => (stored.Item.Thing.Name, stored.Item.Thing.Family)));
    }
}
