using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class GearPhotoStoreTests
{
    private static readonly GearPhoto First = new(new byte[] { 1, 2, 3 }, "image/jpeg");
    private static readonly GearPhoto Second = new(new byte[] { 4, 5 }, "image/jpeg");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_photo_is_there_after_a_restart_with_the_time_it_was_stored()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var lead = await library.Gear.AddAsync(A.Lead(), new(), Cancel);
        Assert.Null(await library.Photos.FindAsync(lead.Id, Cancel));
        Assert.Null(await library.Photos.SavedUtcAsync(lead.Id, Cancel));

        Assert.Null(await library.Photos.PutAsync(lead.Id, First, Cancel));

        await using var later = LibraryOnDisk.Unopened(library.Folder.Path);
        AssertSame(First, await later.Photos.FindAsync(lead.Id, Cancel));
        Assert.Equal(library.Clock.Now.UtcDateTime, await later.Photos.SavedUtcAsync(lead.Id, Cancel));
    }

    [Fact]
    public async Task A_second_photo_replaces_the_first_and_hands_it_back()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await library.Photos.PutAsync(device.Id, First, Cancel);
        library.Clock.Now += TimeSpan.FromMinutes(1);

        AssertSame(First, await library.Photos.PutAsync(device.Id, Second, Cancel));

        AssertSame(Second, await library.Photos.FindAsync(device.Id, Cancel));
        Assert.Equal(library.Clock.Now.UtcDateTime, await library.Photos.SavedUtcAsync(device.Id, Cancel));
    }

    [Fact]
    public async Task What_is_removed_is_handed_back_and_can_be_put_back()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await library.Photos.PutAsync(device.Id, First, Cancel);

        var removed = await library.Photos.RemoveAsync(device.Id, Cancel);

        AssertSame(First, removed);
        Assert.Null(await library.Photos.FindAsync(device.Id, Cancel));
        Assert.Null(await library.Photos.RemoveAsync(device.Id, Cancel));
        await library.Photos.PutAsync(device.Id, removed!, Cancel);
        AssertSame(First, await library.Photos.FindAsync(device.Id, Cancel));
    }

    [Fact]
    public async Task A_thing_deleted_and_brought_back_still_has_its_photo()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await library.Photos.PutAsync(device.Id, First, Cancel);

        await library.Gear.DeleteAsync(device.Id, device.Version, Cancel);
        await library.Gear.RestoreAsync(device.Id, Cancel);

        AssertSame(First, await library.Photos.FindAsync(device.Id, Cancel));
    }

    [Fact]
    public async Task A_photo_of_nothing_and_an_empty_photo_are_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);

        var nothing = await Assert.ThrowsAsync<ArgumentException>(() => library.Photos.PutAsync(Guid.Empty, First, Cancel));
        var empty = await Assert.ThrowsAsync<ArgumentException>(() => library.Photos.PutAsync(device.Id, new(default, "image/jpeg"), Cancel));

        Assert.StartsWith("There is no thing with the id 00000000-0000-0000-0000-000000000000 to keep a photo of. Save it first.", nothing.Message);
        Assert.StartsWith("The photo has 0 bytes. Give a picture.", empty.Message);
    }

    [Fact]
    public async Task The_library_file_is_the_same_with_a_photo_and_without()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        var before = await library.File.ExportAsync(Cancel);

        await library.Photos.PutAsync(device.Id, First, Cancel);

        Assert.Equal(before, await library.File.ExportAsync(Cancel));
    }

    private static void AssertSame(GearPhoto expected, GearPhoto? found)
    {
        Assert.NotNull(found);
        Assert.Equal(expected.Content.ToArray(), found.Content.ToArray());
        Assert.Equal(expected.ContentType, found.ContentType);
    }
}
