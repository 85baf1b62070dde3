using GigRig.Data.Start;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Data;

/// <summary>Opens the library before anything else touches it: takes the lock, looks before it leaps, copies before it changes.</summary>
public static class DatabaseStart
{
    /// <summary>Call once, before the first store is used. The data folder stays locked until <paramref name="services"/> is disposed.</summary>
    /// <exception cref="DatabaseStartException">The library can't be opened safely. What the owner stored was not changed.</exception>
    public static async Task RunAsync(IServiceProvider services, CancellationToken cancel = default)
    {
        var folder = services.GetRequiredService<DataFolder>();
        var time = services.GetRequiredService<TimeProvider>();
        EngineVersion.Require();
        folder.Make();
        services.GetRequiredService<DataFolderLock>().Take();
        DatabaseFile.RefuseMissing(folder);
        await using var db = await services.GetRequiredService<IDbContextFactory<GigRigDb>>().CreateDbContextAsync(cancel);
        var state = DatabaseFile.Inspect(folder, [.. db.Database.GetMigrations()]);
        var copy = state == SchemaState.Older ? DatabaseCopy.Make(folder, time.GetUtcNow()) : null;
        if (state != SchemaState.Current)
            await MigrateAsync(db, folder, state, copy, cancel);
        folder.Mark();
    }

    private static async Task MigrateAsync(GigRigDb db, DataFolder folder, SchemaState state, string? copy, CancellationToken cancel)
    {
        try
        {
            if (state == SchemaState.New)
                DatabaseFile.Make(folder);
            // All steps in one: whatever ends an update half way, a full disk, a kill, a fault of ours, the library is what it was before.
            await using var all = await db.Database.BeginTransactionAsync(cancel);
            // A process killed while migrating could leave its row here, and the next one would wait for it for ever. We hold the folder: nobody else is at it.
            await db.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS \"__EFMigrationsLock\"", cancel);
            await db.Database.MigrateAsync(cancel);
            await all.CommitAsync(cancel);
        }
        catch (SqliteException fault)
        {
            await db.Database.CloseConnectionAsync();
            DatabaseFile.RemoveEmpty(folder);
            var (what, back) = copy is null ? ("made", "") : ("brought up to date", $" It is as it was; a copy of it is in {copy} too.");
            throw new DatabaseStartException(
                DatabaseStartFault.NotPrepared,
                $"The library {folder.Database} could not be {what}: {fault.Message} Check the free space and the rights on {folder.Path}, then start again.{back}",
                fault);
        }
    }
}
