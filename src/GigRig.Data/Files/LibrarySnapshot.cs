using GigRig.Data.Rows;
using GigRig.Domain;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Files;

/// <summary>Reads the whole library as it is at one moment, each kind in the order of its names, so that the same library gives the same file.</summary>
internal static class LibrarySnapshot
{
    public static async Task<LibraryContent> ReadAsync(GigRigDb db, CancellationToken cancel)
    {
        await using var moment = await db.Database.BeginTransactionAsync(cancel);
        return new LibraryContent
        {
            Devices = await AllAsync(db.Devices, cancel),
            Boards = await AllAsync(db.Boards, cancel),
            Supplies = await AllAsync(db.Supplies, cancel),
            Amps = await AllAsync(db.Amps, cancel),
            OffBoard = await AllAsync(db.OffBoard, cancel),
            Leads = await AllAsync(db.Leads, cancel),
            Instruments = await AllAsync(db.Instruments, cancel),
            Adapters = (await db.Adapters.AsNoTracking().FirstOrDefaultAsync(cancel))?.ToAdapters(),
            Roles = (await db.Roles.AsNoTracking().OrderBy(row => row.Key).ToListAsync(cancel)).Select(row => row.ToItem()).ToValueList(),
            Events = await AllAsync(db.EventTypes, cancel),
            Rigs = await AllAsync(db.Rigs, cancel),
        };
    }

    private static async Task<ValueList<Kept<T>>> AllAsync<T>(IQueryable<ThingRow<T>> rows, CancellationToken cancel)
    {
        var all = await rows.AsNoTracking().ToListAsync(cancel);
        return all
            .OrderBy(row => row.Title, StringComparer.Ordinal)
            .ThenBy(row => row.Id)
            .Select(row => new Kept<T>(row.Id, row.ToItem()))
            .ToValueList();
    }
}
