using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
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

    /// <summary>The names, as in problems, of all that some saved rig uses: what stands on its board or comes along, but not what was only on offer.</summary>
    public async Task<IReadOnlySet<GearId>> UsedAsync(CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var texts = await db.Rigs.Select(row => new { row.ProblemJson, row.RigJson }).ToListAsync(cancel);
        return texts.SelectMany(text => RigUse.In(text.ProblemJson, text.RigJson)).Select(id => new GearId(id)).ToHashSet();
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

    /// <summary>Its versions, the latest first; none where there is no such rig. The first of them is the rig as it is.</summary>
    public async Task<ValueList<RigVersion>> VersionsAsync(Guid id, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = await db.RigVersions
            .Where(version => version.RigId == id && version.Rig != null)
            .OrderByDescending(version => version.Number)
            .Select(version => new { version.Number, version.Name, version.DeviceCount, version.SavedUtc })
            .ToListAsync(cancel);
        return rows.Select(row => new RigVersion(row.Number, row.Name, row.DeviceCount, row.SavedUtc)).ToValueList();
    }

    /// <summary>Null where there is no such rig, or it has no such version any more. The note is the rig's.</summary>
    /// <exception cref="UnreadableRigException">What is stored can't be read.</exception>
    public async Task<SavedRig?> FindVersionAsync(Guid id, int number, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.RigVersions.AsNoTracking().Include(version => version.Rig)
            .FirstOrDefaultAsync(version => version.RigId == id && version.Number == number, cancel);
        return row?.Rig is { } rig ? row.ToItem(rig.Note) : null;
    }

    /// <summary>Saves an old version anew, as the latest; what was there stays in the history. Name and note stay as they are.</summary>
    /// <param name="version">The rig's, as it was read.</param>
    /// <exception cref="ArgumentException">It has no such version.</exception>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public async Task<Stored<SavedRig>> GoBackAsync(Guid id, int version, int number, CancellationToken cancel = default)
    {
        var old = await FindVersionAsync(id, number, cancel)
            ?? throw new ArgumentException($"The rig has no version {number} to go back to. Choose one of its history.", nameof(number));
        return await table.ChangeAsync(id, version, row => row.Set(old with { Name = row.Name, Note = row.Note, SavedUtc = Now() }), cancel);
    }

    private DateTime Now() => time.GetUtcNow().UtcDateTime;
}
