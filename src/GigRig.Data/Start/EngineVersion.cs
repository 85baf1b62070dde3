using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>
/// SQLite 3.7.0 to 3.51.2 could damage a database in WAL mode when a checkpoint met a writer; fixed in 3.51.3.
/// Source: sqlite.org/wal.html, section on the WAL-reset bug.
/// </summary>
internal static class EngineVersion
{
    public static Version Least { get; } = new(3, 51, 3);

    public static void Require()
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        Require(connection.ServerVersion);
    }

    public static void Require(string version)
    {
        if (!Version.TryParse(version, out var parsed) || parsed < Least)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.UnsafeEngine,
                $"The SQLite library in use is {version}; versions before {Least} have a fault that can damage the library. Run a build that brings its own.");
        }
    }
}
