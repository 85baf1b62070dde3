using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data.Start;

/// <summary>
/// Says on every opened connection what we rely on, rather than trusting defaults that differ between builds: an acknowledged save survives
/// a power cut (FULL), readers and the writer do not block each other (WAL), references hold, and a tampered file can't run functions from its schema.
/// </summary>
internal sealed class SafeConnection : DbConnectionInterceptor
{
    public const string Pragmas =
        "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
