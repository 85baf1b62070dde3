using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>A picture of a thing, as it is handed to browsers.</summary>
/// <param name="ContentType">Such as <c>image/jpeg</c>.</param>
public sealed record GearPhoto(ReadOnlyMemory<byte> Content, string ContentType);

/// <summary>The photos of the gear, at most one a thing. They are in the database alone: in no problem, no handout and no library file.</summary>
public sealed class GearPhotoStore
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal GearPhotoStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Null where the thing has no photo.</summary>
    public async Task<GearPhoto?> FindAsync(Guid gearId, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        return await db.GearPhotos.AsNoTracking().FirstOrDefaultAsync(row => row.GearId == gearId, cancel) is { } row ? Read(row) : null;
    }

    /// <summary>When the photo was stored, in UTC; null where the thing has none. The picture itself is not read.</summary>
    public async Task<DateTime?> SavedUtcAsync(Guid gearId, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        return await db.GearPhotos.Where(row => row.GearId == gearId).Select(row => (DateTime?)row.SavedUtc).FirstOrDefaultAsync(cancel);
    }

    /// <summary>Stores a photo in place of the one there was, and gives that one back, so that it can be undone. Null where there was none.</summary>
    /// <exception cref="ArgumentException">There is no such thing, or the photo is empty.</exception>
    public async Task<GearPhoto?> PutAsync(Guid gearId, GearPhoto photo, CancellationToken cancel = default)
    {
        if (photo.Content.IsEmpty)
            throw new ArgumentException("The photo has 0 bytes. Give a picture.", nameof(photo));
        await using var db = await databases.CreateDbContextAsync(cancel);
        if (!await IsOwnedAsync(db, gearId, cancel))
            throw new ArgumentException($"There is no thing with the id {gearId} to keep a photo of. Save it first.", nameof(gearId));
        var row = await db.GearPhotos.FirstOrDefaultAsync(row => row.GearId == gearId, cancel);
        var before = row is null ? null : Read(row);
        row ??= db.Add(new GearPhotoRow { GearId = gearId }).Entity;
        (row.Content, row.ContentType, row.SavedUtc) = (photo.Content.ToArray(), photo.ContentType, time.GetUtcNow().UtcDateTime);
        await db.SaveChangesAsync(cancel);
        return before;
    }

    /// <summary>Takes a photo away and gives it back, so that it can be undone. Null where there was none.</summary>
    public async Task<GearPhoto?> RemoveAsync(Guid gearId, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        if (await db.GearPhotos.FirstOrDefaultAsync(row => row.GearId == gearId, cancel) is not { } row)
            return null;
        db.Remove(row);
        await db.SaveChangesAsync(cancel);
        return Read(row);
    }

    private static GearPhoto Read(GearPhotoRow row) => new(row.Content, row.ContentType);

    private static async Task<bool> IsOwnedAsync(GigRigDb db, Guid id, CancellationToken cancel)
    {
        IQueryable<ThingRow>[] tables = [db.Devices, db.Boards, db.Supplies, db.Amps, db.OffBoard, db.Leads, db.Instruments];
        foreach (var table in tables)
        {
            if (await table.AnyAsync(row => row.Id == id, cancel))
                return true;
        }

        return false;
    }
}
