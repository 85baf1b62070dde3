using System.Globalization;
using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>A copy of the whole database in one file, made before it is changed to a newer shape.</summary>
internal static class DatabaseCopy
{
    /// <returns>Where the copy is. It was read back and found sound.</returns>
    public static string Make(DataFolder folder, DateTimeOffset now)
    {
        Directory.CreateDirectory(folder.Copies);
        var stamp = now.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var target = Path.Combine(folder.Copies, $"before-update-{stamp}-{Guid.NewGuid():n}.db");
        using (var source = new SqliteConnection(folder.ReadOnlyConnectionString))
        {
            source.Open();
            using var command = source.CreateCommand();
            command.CommandText = "VACUUM INTO $target";
            command.Parameters.AddWithValue("$target", target);
            command.ExecuteNonQuery();
        }

        RequireSound(target);
        return target;
    }

    private static void RequireSound(string copy)
    {
        var connectionString = new SqliteConnectionStringBuilder { DataSource = copy, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString();
        using var connection = new SqliteConnection(connectionString);
        connection.Open();
        if (connection.Ask("PRAGMA integrity_check(1)") is not "ok")
            throw new DatabaseStartException(DatabaseStartFault.Damaged, $"The copy {copy}, made before updating the library, is not sound. The library was not updated.");
    }
}
