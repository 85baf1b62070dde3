using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The one row of an owner's power adapter counts. It is there from the first save on.</summary>
internal sealed class AdaptersTable(IDbContextFactory<GigRigDb> databases)
{
    private const string Title = "count of power adapter leads";

    public async Task<Stored<PowerAdapters>> ReadAsync(CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Adapters.AsNoTracking().FirstOrDefaultAsync(cancel);
        return row is null ? new(Guid.Empty, 0, PowerAdapters.None) : Read(row);
    }

    public async Task<Stored<PowerAdapters>> SaveAsync(Stored<PowerAdapters> mine, CancellationToken cancel)
    {
        if (ProblemParts.Of(mine.Item).ToValueList() is { Count: > 0 } complaints)
            throw new RefusedThingException(Title, complaints);
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Adapters.FirstOrDefaultAsync(cancel) ?? db.Add(new AdaptersRow()).Entity;
        if (row.Version != mine.Version)
            throw new StaleVersionException(Title, Guid.Empty, mine.Version, row.Version);
        row.Set(mine.Item);
        try
        {
            await db.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException)
        {
            // Also where two first saves met: the second insert breaks the key.
            var stored = await ReadAsync(cancel);
            if (stored.Version == mine.Version)
                throw;
            throw new StaleVersionException(Title, Guid.Empty, mine.Version, stored.Version);
        }

        return Read(row);
    }

    private static Stored<PowerAdapters> Read(AdaptersRow row) => new(Guid.Empty, row.Version, row.ToAdapters());
}
