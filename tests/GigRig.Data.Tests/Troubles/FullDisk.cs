using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data.Tests.Troubles;

/// <summary>
/// Stands in for a disk that fills up: SQLite itself refuses to let the database grow beyond so many pages, with the very error (SQLITE_FULL) that a full
/// disk gives. Source: sqlite.org/pragma.html, <c>max_page_count</c>.
/// </summary>
internal sealed class FullDisk : DbConnectionInterceptor
{
    private const uint Endless = 4_294_967_294;

    /// <summary>How many pages are free; null for as many as are wanted.</summary>
    public int? Free { get; set; }

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Limit(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Limit(connection);
        return Task.CompletedTask;
    }

    private void Limit(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT page_count FROM pragma_page_count";
        var most = Free is { } free ? Convert.ToInt64(command.ExecuteScalar()) + free : Endless;
        command.CommandText = $"PRAGMA max_page_count = {most}";
        command.ExecuteNonQuery();
    }
}
