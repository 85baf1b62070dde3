using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>How the shape of the stored database compares with the one this build works on.</summary>
internal enum SchemaState
{
    /// <summary>There is none yet.</summary>
    New,
    Older,
    Current,
}

/// <summary>Looks at the database file without changing it, and refuses what must not be opened.</summary>
internal static class DatabaseFile
{
    private const string Restore = "Put a copy back in its place (see \"Restore\" in docs/operating.md).";

    /// <summary>SQLite opens a missing or empty file as a valid empty database: the owner would find an empty library and might save over the loss.</summary>
    public static void RefuseMissing(DataFolder folder)
    {
        var file = new FileInfo(folder.Database);
        if (file is { Exists: true, Length: > 0 })
            return;
        var sign = file.Exists ? folder.Database : folder.SignsOfUse().FirstOrDefault();
        if (sign is null)
            return;
        var what = file.Exists ? "is empty (0 bytes)" : $"is missing, yet {sign} shows that there was one";
        throw new DatabaseStartException(
            DatabaseStartFault.Missing,
            $"The library {folder.Database} {what}. No new one was started over it. {Restore} To start afresh, empty the data folder.");
    }

    /// <summary>A database without a table; see <see cref="SchemaState.New"/>.</summary>
    public static void Make(DataFolder folder)
    {
        using var connection = new SqliteConnection(folder.CreatingConnectionString);
        connection.Open();
        connection.Ask("PRAGMA journal_mode=WAL");
    }

    /// <summary>Takes away what a first start without room leaves, or the next one would mourn a library that never was. An empty file there before is refused, so it was made now.</summary>
    public static void RemoveEmpty(DataFolder folder)
    {
        var file = new FileInfo(folder.Database);
        if (file is not { Exists: true, Length: 0 })
            return;
        // Windows deletes nothing that is held open.
        SqliteConnection.ClearAllPools();
        file.Delete();
    }

    public static SchemaState Inspect(DataFolder folder, IReadOnlyCollection<string> known)
    {
        if (!Path.Exists(folder.Database))
            return SchemaState.New;
        if (Directory.Exists(folder.Database))
            throw Damaged(folder, "it is a folder", inner: null);
        try
        {
            using var connection = new SqliteConnection(folder.ReadOnlyConnectionString);
            connection.Open();
            RequireSound(folder, connection);
            return IsBare(folder, connection) ? SchemaState.New : Compare(folder, Applied(folder, connection), known);
        }
        catch (SqliteException fault) when (IsFromDisk(fault))
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NoAccess,
                $"The library {folder.Database} can't be opened: {fault.Message} That says nothing against the file. Check the free space and the rights on {folder.Path}, then start again.",
                fault);
        }
        catch (SqliteException fault)
        {
            throw Damaged(folder, fault.Message, fault);
        }
    }

    // After a kill, SQLite needs a little room beside the database to look at it: the index of the write-ahead log (-shm). A disk without it is no damage.
    // Source: sqlite.org/rescode.html: READONLY, FULL, CANTOPEN; IOERR_WRITE, IOERR_SHMOPEN, IOERR_SHMSIZE, IOERR_SHMMAP.
    private static bool IsFromDisk(SqliteException fault) => fault.SqliteErrorCode is 8 or 13 or 14 || fault.SqliteExtendedErrorCode is 778 or 4618 or 4874 or 5386;

    private static void RequireSound(DataFolder folder, SqliteConnection connection)
    {
        var answer = connection.Ask("PRAGMA quick_check(1)");
        if (answer is not "ok")
            throw Damaged(folder, answer ?? "no answer", inner: null);
    }

    // What a first start leaves that was cut off before it made a table.
    private static bool IsBare(DataFolder folder, SqliteConnection connection) =>
        !File.Exists(folder.Marker) && connection.Ask("SELECT name FROM sqlite_master WHERE name <> '__EFMigrationsLock'") is null;

    private static List<string> Applied(DataFolder folder, SqliteConnection connection)
    {
        if (connection.Ask("SELECT name FROM sqlite_master WHERE name = '__EFMigrationsHistory'") is null)
            throw Damaged(folder, "it holds no library of ours", inner: null);
        return connection.AskAll("SELECT MigrationId FROM \"__EFMigrationsHistory\"");
    }

    private static SchemaState Compare(DataFolder folder, List<string> applied, IReadOnlyCollection<string> known)
    {
        if (applied.Except(known).FirstOrDefault() is { } unknown)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.Newer,
                $"The library {folder.Database} was last used by a newer release (it knows \"{unknown}\", this one does not). Run that release, or put an older copy back.");
        }

        return applied.Count == known.Count ? SchemaState.Current : SchemaState.Older;
    }

    private static DatabaseStartException Damaged(DataFolder folder, string why, Exception? inner) => new(
        DatabaseStartFault.Damaged,
        $"The library {folder.Database} can't be read: {why}. It was left as it is. {Restore}",
        inner);
}
