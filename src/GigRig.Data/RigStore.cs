using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The rigs the owner keeps.</summary>
public sealed class RigStore
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;
    private readonly ThingTable<RigRow, SavedRig> table;

    internal RigStore(IDbContextFactory<GigRigDb> databases, TimeProvider time)
    {
        this.databases = databases;
        this.time = time;
        table = new(databases, time, StoreChecks.Of);
    }

    /// <summary>All of them, the last saved first, without their drawings.</summary>
    public async Task<ValueList<Stored<RigSummary>>> AllAsync(CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = await db.Rigs
            .OrderByDescending(row => row.SavedUtc)
            .ThenBy(row => row.Id)
            .Select(row => new { row.Id, row.Version, row.Name, row.Note, row.EventName, row.BoardName, row.DeviceCount, row.SavedUtc })
            .ToListAsync(cancel);
        return rows
            .Select(row => new Stored<RigSummary>(
                row.Id, row.Version, new(row.Name, row.Note, row.EventName, row.BoardName, row.DeviceCount, row.SavedUtc)))
            .ToValueList();
    }

    /// <summary>Null where there is no such rig, or it was deleted.</summary>
    public Task<Stored<SavedRig>?> FindAsync(Guid id, CancellationToken cancel = default) => table.FindAsync(id, cancel);

    /// <exception cref="RefusedThingException">It has no name, or the rig speaks of things that are not in its problem.</exception>
    public Task<Stored<SavedRig>> AddAsync(string name, string note, RigProblem problem, Rig rig, CancellationToken cancel = default) =>
        table.AddAsync(new(name, note, problem, rig, Now()), cancel);

    /// <summary>Saves it again, arrangement and all; the time of saving becomes now.</summary>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public Task<Stored<SavedRig>> SaveAsync(Stored<SavedRig> mine, CancellationToken cancel = default) =>
        table.SaveAsync(mine with { Item = mine.Item with { SavedUtc = Now() } }, cancel);

    /// <exception cref="RefusedThingException">The name is empty, or one of the two too long.</exception>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public Task<Stored<SavedRig>> RenameAsync(Guid id, int version, string name, string note, CancellationToken cancel = default)
    {
        ValueList<Complaint> complaints = [.. PlainChecks.Name("/name", "name", name), .. PlainChecks.Note("/note", note)];
        return complaints.Count > 0
            ? throw new RefusedThingException($"rig \"{name}\"", complaints)
            : table.ChangeAsync(id, version, row => (row.Name, row.Note) = (name, note), cancel);
    }

    /// <summary>Its share links stop working, and work again once it is restored.</summary>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public async Task DeleteAsync(Guid id, int version, CancellationToken cancel = default)
    {
        if (!await table.DeleteAsync(id, version, cancel))
            throw new StaleVersionException($"rig with the id {id}", id, version, stored: null);
    }

    /// <summary>Undoes a delete. False where there never was such a rig.</summary>
    public Task<bool> RestoreAsync(Guid id, CancellationToken cancel = default) => table.RestoreAsync(id, cancel);

    private DateTime Now() => time.GetUtcNow().UtcDateTime;
}
