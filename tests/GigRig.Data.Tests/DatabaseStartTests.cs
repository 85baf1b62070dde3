using GigRig.Data.Start;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GigRig.Data.Tests;

public sealed class DatabaseStartTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_first_start_makes_the_folder_and_an_empty_library()
    {
        await using var around = LibraryOnDisk.Unopened();
        await using var library = LibraryOnDisk.Unopened(Path.Combine(around.Folder.Path, "deeper"));

        await library.OpenAsync();

        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
        Assert.True(File.Exists(library.Folder.Marker));
        Assert.False(Directory.Exists(library.Folder.Copies));
    }

    [Fact]
    public async Task What_was_stored_is_there_after_a_restart()
    {
        await using var before = await LibraryOnDisk.NewAsync();
        var echo = await before.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await before.CloseAsync();

        await using var after = LibraryOnDisk.Unopened(before.Folder.Path);
        await after.OpenAsync();

        Assert.Equal(echo, await after.Gear.FindAsync<Device>(echo.Id, Cancel));
    }

    [Fact]
    public async Task After_an_orderly_end_the_library_is_one_file()
    {
        await using var before = await LibraryOnDisk.NewAsync();
        await before.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        Assert.True(File.Exists(before.Folder.Database + "-wal"));

        await ((IAsyncDisposable)before.Services).DisposeAsync();

        Assert.False(File.Exists(before.Folder.Database + "-wal"));
        await using var copied = LibraryOnDisk.Unopened();
        File.Copy(before.Folder.Database, copied.Folder.Database);
        await copied.OpenAsync();
        Assert.Single(await copied.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task A_library_that_is_taken_away_while_the_app_runs_is_not_replaced_by_an_empty_one()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        SqliteConnection.ClearAllPools();
        var elsewhere = library.Folder.Database + ".elsewhere";
        File.Move(library.Folder.Database, elsewhere);

        await Assert.ThrowsAsync<SqliteException>(() => library.Gear.DevicesAsync(Cancel));
        var refusal = await Assert.ThrowsAsync<NotWrittenException>(() => library.Events.AddAsync(A.Event(), Cancel));

        Assert.Contains("gigrig.db can't be opened. See that it is there", refusal.Message);
        Assert.False(File.Exists(library.Folder.Database));
        File.Move(elsewhere, library.Folder.Database);
        Assert.Single(await library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task A_second_start_on_the_same_folder_is_refused_until_the_first_has_ended()
    {
        await using var first = await LibraryOnDisk.NewAsync();
        await using var second = LibraryOnDisk.Unopened(first.Folder.Path);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(second.OpenAsync);

        Assert.Equal(DatabaseStartFault.InUse, refusal.Fault);
        Assert.Contains($"{first.Folder.Path} is in use by another running copy", refusal.Message);
        await first.CloseAsync();
        await second.OpenAsync();
    }

    [Fact]
    public async Task An_empty_database_file_is_refused_and_left_as_it_is()
    {
        await using var library = LibraryOnDisk.Unopened();
        File.Create(library.Folder.Database).Dispose();

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.Missing, refusal.Fault);
        Assert.Contains("gigrig.db is empty (0 bytes). No new one was started over it.", refusal.Message);
        Assert.Equal(0, new FileInfo(library.Folder.Database).Length);
    }

    [Theory]
    [InlineData("gigrig.used")]
    [InlineData("gigrig.db-wal")]
    [InlineData("copies/before-update.db")]
    public async Task A_missing_database_beside_a_sign_of_earlier_use_is_refused_and_not_made_anew(string sign)
    {
        await using var library = LibraryOnDisk.Unopened();
        var path = Path.Combine(library.Folder.Path, sign);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        await File.WriteAllTextAsync(path, "x", Cancel);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.Missing, refusal.Fault);
        Assert.Contains(Path.GetFileName(sign), refusal.Message);
        Assert.False(File.Exists(library.Folder.Database));
    }

    [Fact]
    public async Task A_library_of_a_newer_release_is_refused_without_a_write()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using (var db = library.Database())
            await db.Database.ExecuteSqlRawAsync("INSERT INTO \"__EFMigrationsHistory\" VALUES ('29991231000000_FromTheFuture', '99.0.0')", Cancel);
        await library.CloseAsync();
        var bytes = await File.ReadAllBytesAsync(library.Folder.Database, Cancel);

        await using var again = LibraryOnDisk.Unopened(library.Folder.Path);
        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(again.OpenAsync);

        Assert.Equal(DatabaseStartFault.Newer, refusal.Fault);
        Assert.Contains("last used by a newer release (it knows \"29991231000000_FromTheFuture\"", refusal.Message);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(library.Folder.Database, Cancel));
    }

    [Fact]
    public async Task A_lock_left_by_a_killed_first_start_does_not_block_the_next()
    {
        await using var library = LibraryOnDisk.Unopened();
        DatabaseFile.Make(library.Folder);
        await LeaveMigrationsLockAsync(library);

        await library.OpenAsync().WaitAsync(TimeSpan.FromSeconds(20), Cancel);

        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task An_older_library_is_copied_soundly_before_it_is_changed_even_beside_a_left_lock()
    {
        await using var older = await LibraryOnDisk.NewAsync();
        await using (var db = older.Database())
            await db.GetService<IMigrator>().MigrateAsync(Migration.InitialDatabase, Cancel);
        await LeaveMigrationsLockAsync(older);
        await older.CloseAsync();

        await using var library = LibraryOnDisk.Unopened(older.Folder.Path);
        await library.OpenAsync().WaitAsync(TimeSpan.FromSeconds(20), Cancel);

        var copy = Assert.Single(Directory.GetFiles(library.Folder.Copies));
        Assert.StartsWith("before-update-20270306-201500-", Path.GetFileName(copy));
        using var connection = new SqliteConnection($"Data Source={copy};Mode=ReadOnly;Pooling=False");
        connection.Open();
        Assert.Equal("0", connection.Ask("SELECT CAST(COUNT(*) AS TEXT) FROM \"__EFMigrationsHistory\""));
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    // The way that docs/operating.md tells under "Restore".
    [Fact]
    public async Task The_copy_from_before_an_update_put_into_a_new_folder_is_the_library_again()
    {
        await using var older = await LibraryOnDisk.OldestAsync();
        await using var updated = older.Again();
        await updated.OpenAsync();
        var file = await updated.File.ExportAsync(Cancel);
        await updated.CloseAsync();

        await using var restored = LibraryOnDisk.Unopened();
        File.Copy(Assert.Single(Directory.GetFiles(older.Folder.Copies)), restored.Folder.Database);
        await restored.OpenAsync();

        Assert.Equal(file, await restored.File.ExportAsync(Cancel));
    }

    private static async Task LeaveMigrationsLockAsync(LibraryOnDisk library)
    {
        await using var db = library.Database();
        await db.Database.ExecuteSqlRawAsync(
            """
            CREATE TABLE IF NOT EXISTS "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
            INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01 00:00:00');
            """,
            Cancel);
    }
}
