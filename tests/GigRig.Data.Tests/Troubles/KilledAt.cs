using System.Data.Common;
using System.Diagnostics;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data.Tests.Troubles;

/// <summary>Kills this very process before the database gets a command that is counted. Nothing is flushed, closed or rolled back by us.</summary>
/// <param name="command">From 0.</param>
/// <param name="counts">Which commands are counted, by their text.</param>
internal sealed class KilledAt(int command, Func<string, bool> counts) : DbCommandInterceptor
{
    private int seen;

    public override InterceptionResult<int> NonQueryExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<int> result)
    {
        Count(command);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Count(command);
        return new(result);
    }

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        Count(command);
        return new(result);
    }

    private void Count(DbCommand next)
    {
        if (!counts(next.CommandText) || seen++ < command)
            return;
        Process.GetCurrentProcess().Kill();
        Thread.Sleep(Timeout.Infinite);
    }
}
