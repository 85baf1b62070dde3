using System.Globalization;
using System.Security.Cryptography;
using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>A copy of the whole database in one file, made before it is changed to a newer shape.</summary>
internal static class DatabaseCopy
{
    /// <summary>Of a copy that is not whole yet.</summary>
    private const string Unfinished = ".unfinished";

    // The header: counts of changes, which differ from copy to copy of the same content. Source: sqlite.org/fileformat2.html, "The Database Header".
    private const int HeaderBytes = 100;

    /// <returns>Where the copy is. It was read back and found sound. An earlier one with the same content is as good.</returns>
    /// <exception cref="DatabaseStartException">No copy could be made. Nothing is left of the attempt.</exception>
    public static string Make(DataFolder folder, DateTimeOffset now)
    {
        var stamp = now.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var target = Path.Combine(folder.Copies, $"before-update-{stamp}-{Guid.NewGuid():n}.db");
        try
        {
            Directory.CreateDirectory(folder.Copies);
            RemoveUnfinished(folder);
            Write(folder, target + Unfinished);
            RequireSound(target + Unfinished);
            // Or a start that fails over and over, as a service may, would fill the disk with copies.
            if (Directory.EnumerateFiles(folder.Copies, "*.db").FirstOrDefault(earlier => AreSame(earlier, target + Unfinished)) is { } same)
                return same;
            File.Move(target + Unfinished, target);
            return target;
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NotPrepared,
                $"The library {folder.Database} could not be copied to {folder.Copies}, which comes before an update: {fault.Message} It was left as it is. "
                + $"Check the free space, of which the update needs about {NeededMegabytes(folder)} MB, and the rights on {folder.Copies}, then start again.",
                fault);
        }
        finally
        {
            RemoveUnfinished(folder);
        }
    }

    private static void Write(DataFolder folder, string target)
    {
        using var source = new SqliteConnection(folder.ReadOnlyConnectionString);
        source.Open();
        using var command = source.CreateCommand();
        command.CommandText = "VACUUM INTO $target";
        command.Parameters.AddWithValue("$target", target);
        command.ExecuteNonQuery();
    }

    private static void RequireSound(string copy)
    {
        var connectionString = new SqliteConnectionStringBuilder { DataSource = copy, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString();
        using var connection = new SqliteConnection(connectionString);
        connection.Open();
        if (connection.Ask("PRAGMA integrity_check(1)") is not "ok")
            throw new DatabaseStartException(DatabaseStartFault.Damaged, $"The copy {copy}, made before updating the library, is not sound. The library was not updated.");
    }

    private static bool AreSame(string earlier, string copy) =>
        new FileInfo(earlier).Length == new FileInfo(copy).Length && ContentHash(earlier).SequenceEqual(ContentHash(copy));

    private static byte[] ContentHash(string path)
    {
        using var file = File.OpenRead(path);
        file.Position = HeaderBytes;
        return SHA256.HashData(file);
    }

    // Left by this attempt, or by one that was killed.
    private static void RemoveUnfinished(DataFolder folder)
    {
        if (!Directory.Exists(folder.Copies))
            return;
        foreach (var file in Directory.EnumerateFiles(folder.Copies, "*" + Unfinished + "*"))
            File.Delete(file);
    }

    // The copy, and what the changed pages take in the write-ahead log.
    private static long NeededMegabytes(DataFolder folder) => 2 * new FileInfo(folder.Database).Length / 1_000_000 + 1;
}
