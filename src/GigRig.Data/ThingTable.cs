using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>Reading and writing one kind of thing. Each call opens its own context, so nothing stale is ever kept between two.</summary>
/// <param name="check">What speaks against storing one; asked before anything is written.</param>
internal sealed class ThingTable<TRow, T>(IDbContextFactory<GigRigDb> databases, TimeProvider time, Func<T, IEnumerable<Complaint>> check) : IThingTable<T>
    where TRow : ThingRow<T>, new()
{
    public async Task<ValueList<Stored<T>>> AllAsync(CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = await db.Set<TRow>().AsNoTracking().ToListAsync(cancel);
        return rows
            .OrderBy(row => row.Title, StringComparer.OrdinalIgnoreCase)
            .ThenBy(row => row.Id)
            .Select(Read)
            .ToValueList();
    }

    public async Task<Stored<T>?> FindAsync(Guid id, CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Set<TRow>().AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancel);
        return row is null ? null : Read(row);
    }

    public async Task<Stored<T>?> FindDeletedAsync(Guid id, CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Set<TRow>().IgnoreQueryFilters([GigRigDb.DeletedFilter]).AsNoTracking()
            .FirstOrDefaultAsync(row => row.Id == id && row.DeletedUtc != null, cancel);
        return row is null ? null : Read(row);
    }

    public async Task<Stored<T>> AddAsync(T item, CancellationToken cancel)
    {
        Require(item);
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = new TRow { Id = Guid.CreateVersion7(time.GetUtcNow()) };
        row.Set(item);
        db.Add(row);
        await db.SaveChangesAsync(cancel);
        return Read(row);
    }

    public Task<Stored<T>> SaveAsync(Stored<T> mine, CancellationToken cancel)
    {
        Require(mine.Item);
        return ChangeAsync(mine.Id, mine.Version, row => row.Set(mine.Item), cancel);
    }

    /// <summary>Changes a row as it is stored, where it still has the version given. What is changed is the caller's to check.</summary>
    public async Task<Stored<T>> ChangeAsync(Guid id, int version, Action<TRow> change, CancellationToken cancel) =>
        Read(await ChangeRowAsync(id, version, change, cancel));

    public async Task<bool> DeleteAsync(Guid id, int version, CancellationToken cancel)
    {
        await using (var db = await databases.CreateDbContextAsync(cancel))
            if (!await db.Set<TRow>().AnyAsync(row => row.Id == id, cancel))
                return false;
        // Without reading it: what can't be read is to be got rid of too.
        await ChangeRowAsync(id, version, row => row.DeletedUtc = time.GetUtcNow().UtcDateTime, cancel);
        return true;
    }

    private async Task<TRow> ChangeRowAsync(Guid id, int version, Action<TRow> change, CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Set<TRow>().FirstOrDefaultAsync(row => row.Id == id, cancel)
            ?? throw new StaleVersionException(await TitleAsync(db, id, cancel), id, version, stored: null);
        var title = row.Title;
        change(row);
        db.ChangeTracker.DetectChanges();
        var entry = db.Entry(row);
        if (row.Version != version)
            throw new StaleVersionException(title, id, version, row.Version, Differences.In(entry));
        try
        {
            await db.SaveChangesAsync(cancel);
        }
        catch (DbUpdateConcurrencyException)
        {
            var stored = await entry.GetDatabaseValuesAsync(cancel);
            throw new StaleVersionException(title, id, version, stored?.GetValue<int>(nameof(ThingRow.Version)));
        }

        return row;
    }

    public async Task<bool> RestoreAsync(Guid id, CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.Set<TRow>().IgnoreQueryFilters([GigRigDb.DeletedFilter]).FirstOrDefaultAsync(row => row.Id == id, cancel);
        if (row is null)
            return false;
        row.DeletedUtc = null;
        await db.SaveChangesAsync(cancel);
        return true;
    }

    private void Require(T item)
    {
        if (check(item).ToValueList() is not { Count: > 0 } complaints)
            return;
        var row = new TRow();
        row.Set(item);
        throw new RefusedThingException(row.Title, complaints);
    }

    private static Stored<T> Read(TRow row) => new(row.Id, row.Version, row.ToItem());

    private static async Task<string> TitleAsync(GigRigDb db, Guid id, CancellationToken cancel)
    {
        var deleted = await db.Set<TRow>().IgnoreQueryFilters([GigRigDb.DeletedFilter]).AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancel);
        return deleted?.Title ?? $"thing with the id {id}";
    }
}
