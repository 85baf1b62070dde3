using GigRig.Data.Tests.Owners;
using GigRig.Data.Tests.Troubles;

namespace GigRig.Data.Tests.Start;

/// <summary>What a start does where the operating system takes no more bytes.</summary>
public sealed class NoRoomTests
{
    private const string FolderKey = "GIGRIG_TEST_NO_ROOM_FOLDER";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static string Folder => Environment.GetEnvironmentVariable(FolderKey)!;

    [Fact]
    public async Task A_first_start_says_so_and_the_next_one_with_room_makes_the_library()
    {
        await using var library = LibraryOnDisk.Unopened();

        Assert.Equal(0, await RunAsync(nameof(First_start), library.Folder.Path));

        await library.OpenAsync();
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task An_update_that_cannot_make_its_copy_leaves_the_library_as_it_is_and_no_half_copy()
    {
        await using var older = await LibraryOnDisk.OldestAsync();
        var before = await File.ReadAllBytesAsync(older.Folder.Database, Cancel);

        Assert.Equal(0, await RunAsync(nameof(Update), older.Folder.Path));

        Assert.Equal(before, await File.ReadAllBytesAsync(older.Folder.Database, Cancel));
        Assert.Empty(Directory.EnumerateFileSystemEntries(older.Folder.Copies));
        await using var after = older.Again();
        await after.OpenAsync();
        Assert.Single(await after.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task A_library_in_its_newest_shape_opens_and_can_be_read_and_loses_nothing()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await Belongings.PutAsync(library, Cancel);
        await library.CloseAsync();
        var rows = Belongings.Rows(library.Folder);

        Assert.Equal(0, await RunAsync(nameof(Use), library.Folder.Path));

        Assert.Subset(Belongings.Rows(library.Folder).ToHashSet(), rows.ToHashSet());
    }

    [Fact(Explicit = true)]
    public async Task First_start()
    {
        await using var library = LibraryOnDisk.On(Folder);
        SmallFiles.ForbidBeyond(0);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.NotPrepared, refusal.Fault);
        Assert.Contains("gigrig.db could not be made: ", refusal.Message);
        Assert.Contains($"Check the free space and the rights on {library.Folder.Path}, then start again.", refusal.Message);
    }

    [Fact(Explicit = true)]
    public async Task Update()
    {
        await using var library = LibraryOnDisk.On(Folder);
        SmallFiles.ForbidBeyond(40_000);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.NotPrepared, refusal.Fault);
        Assert.Contains($"gigrig.db could not be copied to {library.Folder.Copies}, which comes before an update: ", refusal.Message);
        Assert.Contains("It was left as it is. Check the free space, of which the update needs about 1 MB", refusal.Message);
    }

    [Fact(Explicit = true)]
    public async Task Use()
    {
        await using var library = LibraryOnDisk.On(Folder);
        SmallFiles.ForbidBeyond(40_000);

        await library.OpenAsync();

        var device = Assert.Single(await library.Gear.DevicesAsync(Cancel));
        var note = new string('n', 2000);
        var refusal = await Assert.ThrowsAsync<NotWrittenException>(async () =>
        {
            for (var i = 0; i < 50; i++)
                await library.Gear.AddAsync(device.Item.Thing with { Id = new($"more {i}") }, new(Note: note), Cancel);
        });
        Assert.StartsWith("Nothing was saved: the disk did not take it (SQLite Error 10: ", refusal.Message);
    }

    private static async Task<int> RunAsync(string method, string folder)
    {
        Assert.SkipUnless(SmallFiles.CanBeForbidden, "Needs a limit that only Unix has.");
        using var process = SecondProcess.Start(typeof(NoRoomTests), method, (FolderKey, folder));
        await process.WaitForExitAsync(Cancel);
        return process.ExitCode;
    }
}
