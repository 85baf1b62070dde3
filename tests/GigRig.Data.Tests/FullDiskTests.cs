using GigRig.Data.Tests.Owners;
using GigRig.Data.Tests.Troubles;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

/// <summary>A save that the disk does not take says so, changes nothing, and works as soon as there is room, without a new start.</summary>
public sealed class FullDiskTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_save_without_room_is_refused_by_its_cause_and_works_once_there_is_room()
    {
        var disk = new FullDisk();
        await using var library = await LibraryOnDisk.NewAsync(disk);
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        var rows = Belongings.Rows(library);
        var changed = echo with { Item = echo.Item with { Ownership = new(Note: new string('n', 2000)) } };
        disk.Free = 0;

        var refusal = await Assert.ThrowsAsync<NotWrittenException>(async () =>
        {
            // Until no page has room for another one.
            for (var i = 0; i < 100; i++)
            {
                await library.Gear.AddAsync(A.Device($"device {i}"), new(Note: new string('n', 2000)), Cancel);
                rows = Belongings.Rows(library);
            }
        });
        await Assert.ThrowsAsync<NotWrittenException>(() => library.Gear.SaveAsync(changed, Cancel));

        Assert.Equal($"Nothing was saved: the disk with the library {library.Folder.Database} is full. Free some space on it, then try again. What was saved before is safe.", refusal.Message);
        Assert.Equal(rows, Belongings.Rows(library));
        disk.Free = null;
        await library.Gear.SaveAsync(changed, Cancel);
        Assert.Equal(changed.Item, (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item);
    }

    [Fact]
    public async Task What_is_stored_can_be_read_and_shown_to_others_without_room()
    {
        var disk = new FullDisk();
        await using var library = await LibraryOnDisk.NewAsync(disk);
        var rig = await library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
        var token = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);
        disk.Free = 0;

        Assert.Equal("Jam", (await library.Rigs.FindAsync(rig.Id, Cancel))!.Item.Name);
        Assert.Equal("Jam", (await library.Shared.FindAsync(token, Cancel))!.Name);
        Assert.Contains("\"Jam\"", await library.File.ExportAsync(Cancel));
    }

    [Fact]
    public async Task A_library_that_may_only_be_read_is_still_shown_to_others()
    {
        await using var library = await LibraryOnDisk.NewAsync(new ReadOnlyDisk());
        await using var owner = library.Again();
        var rig = await owner.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
        var token = await owner.Links.CreateAsync(rig.Id, new("band"), Cancel);

        var refusal = await Assert.ThrowsAsync<NotWrittenException>(() => library.Gear.AddAsync(A.Device("echo"), new(), Cancel));

        Assert.StartsWith($"Nothing was saved: the library {library.Folder.Database} may not be written.", refusal.Message);
        Assert.Equal("Jam", (await library.Shared.FindAsync(token, Cancel))!.Name);
    }
}
