using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data.Tests.Troubles;

/// <summary>Stands in for missing rights: SQLite refuses every change with the error that a file without the right to write gives (SQLITE_READONLY).</summary>
internal sealed class ReadOnlyDisk : DbCommandInterceptor
{
    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Forbid(command);
        return new(result);
    }

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        Forbid(command);
        return new(result);
    }

    private static void Forbid(DbCommand next)
    {
        using var command = next.Connection!.CreateCommand();
        command.Transaction = next.Transaction;
        command.CommandText = "PRAGMA query_only = ON";
        command.ExecuteNonQuery();
    }
}
