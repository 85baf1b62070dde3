using GigRig.Data.Start;
using GigRig.Data.Tests.Owners;
using GigRig.Data.Tests.Troubles;
using Microsoft.Data.Sqlite;

namespace GigRig.Data.Tests.Start;

/// <summary>An update to a newer shape happens wholly or not at all, whatever ends it.</summary>
public sealed class CutOffUpdateTests
{
    private const string FolderKey = "GIGRIG_TEST_UPDATED_FOLDER";
    private const string CommandKey = "GIGRIG_TEST_UPDATE_KILLED_AT";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task On_a_disk_that_fills_up_at_any_page_the_library_stays_as_it_was_and_goes_on_once_there_is_room()
    {
        await using var older = await LibraryOnDisk.OldestAsync();
        var before = Content(older.Folder);
        var refused = 0;
        for (; ; refused++)
        {
            await using var library = older.Again(new FullDisk { Free = refused });
            if (await Record.ExceptionAsync(library.OpenAsync) is not { } fault)
                break;
            await library.CloseAsync();
            var refusal = Assert.IsType<DatabaseStartException>(fault);
            Assert.Equal(DatabaseStartFault.NotPrepared, refusal.Fault);
            Assert.Contains("could not be brought up to date: SQLite Error 13: 'database or disk is full'. Check the free space", refusal.Message);
            Assert.Equal(before, Content(older.Folder));
        }

        Assert.InRange(refused, 3, 200);
        await using var after = older.Again();
        await after.OpenAsync();
        Assert.Equal("echo", Assert.Single(await after.Gear.DevicesAsync(Cancel)).Item.Thing.Name);
        Assert.Equal("Jam", Assert.Single(await after.Rigs.AllAsync(Cancel)).Item.Name);
    }

    [Fact]
    public async Task A_start_that_fails_over_and_over_leaves_one_copy()
    {
        await using var older = await LibraryOnDisk.OldestAsync();
        for (var start = 0; start < 3; start++)
        {
            await using var library = older.Again(new FullDisk { Free = 0 });
            await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);
        }

        Assert.Single(Directory.EnumerateFileSystemEntries(older.Folder.Copies));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(45)]
    public async Task Killed_before_any_command_of_it_the_library_stays_as_it_was_and_the_next_start_finishes_it(int command)
    {
        await using var older = await LibraryOnDisk.OldestAsync();
        var before = Content(older.Folder);

        using var killed = SecondProcess.Start(GetType(), nameof(Updates_until_it_is_killed), (FolderKey, older.Folder.Path), (CommandKey, $"{command}"));

        Assert.True(await killed.IsKilledAsync(Cancel));
        Assert.Equal(before, Content(older.Folder));
        await using var after = older.Again();
        await after.OpenAsync();
        Assert.Equal("echo", Assert.Single(await after.Gear.DevicesAsync(Cancel)).Item.Thing.Name);
    }

    /// <summary>The victim of the test above.</summary>
    [Fact(Explicit = true)]
    public async Task Updates_until_it_is_killed()
    {
        if (Environment.GetEnvironmentVariable(FolderKey) is not { } folder)
            return;
        var at = int.Parse(Environment.GetEnvironmentVariable(CommandKey)!, System.Globalization.CultureInfo.InvariantCulture);
        await using var library = LibraryOnDisk.On(folder, new KilledAt(at, text => !text.StartsWith("SELECT", StringComparison.Ordinal)));
        await library.OpenAsync();
    }

    // Shape, rows and what has been applied.
    private static List<string> Content(DataFolder folder)
    {
        using var connection = new SqliteConnection(folder.ReadOnlyConnectionString);
        connection.Open();
        return
        [
            .. connection.AskAll("SELECT sql FROM sqlite_master WHERE sql IS NOT NULL AND name <> '__EFMigrationsLock' ORDER BY name"),
            .. connection.AskAll("SELECT MigrationId FROM \"__EFMigrationsHistory\""),
            .. Belongings.Rows(folder),
        ];
    }
}
