using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>A stored thing at the version somebody saw.</summary>
public sealed record GearAt(Guid Id, int Version);

/// <summary>What an owner keeps about a stored thing, at the version somebody saw.</summary>
public sealed record OwnershipAt(Guid Id, int Version, Ownership Ownership);

/// <summary>Many things of any kind at once: all of them, or none.</summary>
public sealed class GearBatchStore
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal GearBatchStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Stores new things, each of one of the seven kinds. They get ids of their own.</summary>
    /// <exception cref="RefusedThingException">One of them makes no sense; none is stored.</exception>
    public async Task<ValueList<GearAt>> AddAsync(IEnumerable<(object Thing, Ownership Ownership)> things, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = things.Select(pair => NewRow(pair.Thing, pair.Ownership)).ToList();
        db.AddRange(rows);
        await db.SaveChangesAsync(cancel);
        return Seen(rows);
    }

    /// <summary>Changes what is kept beside the facts.</summary>
    /// <exception cref="StaleVersionException">One was changed or deleted since it was read; none is changed.</exception>
    /// <exception cref="RefusedThingException">One can't be kept; none is changed.</exception>
    public Task<ValueList<GearAt>> SetOwnershipsAsync(IReadOnlyList<OwnershipAt> changes, CancellationToken cancel = default)
    {
        var wanted = changes.ToDictionary(change => change.Id, change => change.Ownership);
        return ChangeAsync(
            [.. changes.Select(change => new GearAt(change.Id, change.Version))],
            row =>
            {
                Require(row.Title, OwnershipChecks.Of(wanted[row.Id]));
                ((IOwnershipRow)row).Ownership = wanted[row.Id];
            },
            cancel);
    }

    /// <exception cref="StaleVersionException">One was changed or deleted since it was read; none is deleted.</exception>
    public Task DeleteAsync(IReadOnlyList<GearAt> things, CancellationToken cancel = default)
    {
        var now = time.GetUtcNow().UtcDateTime;
        return ChangeAsync(things, row => row.DeletedUtc = now, cancel);
    }

    /// <summary>Undoes deletes. What never was there is passed over.</summary>
    public async Task RestoreAsync(IReadOnlyCollection<Guid> ids, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        foreach (var row in await FindAsync(db, ids, deletedToo: true, cancel))
            row.DeletedUtc = null;
        await db.SaveChangesAsync(cancel);
    }

    private async Task<ValueList<GearAt>> ChangeAsync(IReadOnlyList<GearAt> seen, Action<ThingRow> change, CancellationToken cancel)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = (await FindAsync(db, [.. seen.Select(thing => thing.Id)], deletedToo: false, cancel)).ToDictionary(row => row.Id);
        foreach (var (id, version) in seen)
        {
            if (!rows.TryGetValue(id, out var row))
                throw new StaleVersionException($"thing with the id {id}", id, version, stored: null);
            if (row.Version != version)
                throw new StaleVersionException(row.Title, id, version, row.Version);
            change(row);
        }

        try
        {
            await db.SaveChangesAsync(cancel);
        }
        catch (DbUpdateConcurrencyException conflict) when (conflict.Entries[0].Entity is ThingRow row)
        {
            throw new StaleVersionException(row.Title, row.Id, row.Version, stored: null);
        }

        return Seen(seen.Select(thing => rows[thing.Id]));
    }

    private ThingRow NewRow(object thing, Ownership ownership) => thing switch
    {
        Device device => NewRow<DeviceRow, Device>(device, ownership, ProblemParts.Of(device)),
        Board board => NewRow<BoardRow, Board>(board, ownership, ProblemParts.Of(board)),
        Supply supply => NewRow<SupplyRow, Supply>(supply, ownership, ProblemParts.Of(supply)),
        Amp amp => NewRow<AmpRow, Amp>(amp, ownership, ProblemParts.Of(amp)),
        OffBoardItem item => NewRow<OffBoardRow, OffBoardItem>(item, ownership, ProblemParts.Of(item)),
        Lead lead => NewRow<LeadRow, Lead>(lead, ownership, ProblemParts.Of(lead)),
        Instrument instrument => NewRow<InstrumentRow, Instrument>(instrument, ownership, ProblemParts.Of(instrument)),
        _ => throw new ArgumentException($"There is no table for {thing.GetType().Name}. Give a device, a board, a supply, an amp, an off-board item, a lead or an instrument.", nameof(thing)),
    };

    private TRow NewRow<TRow, T>(T thing, Ownership ownership, IEnumerable<Complaint> complaints)
        where TRow : GearRow<T>, new()
        where T : class
    {
        var row = new TRow { Id = Guid.CreateVersion7(time.GetUtcNow()) };
        row.Set(new(thing, ownership));
        Require(row.Title, complaints.Concat(OwnershipChecks.Of(ownership)));
        return row;
    }

    private static void Require(string title, IEnumerable<Complaint> complaints)
    {
        if (complaints.ToValueList() is { Count: > 0 } all)
            throw new RefusedThingException(title, all);
    }

    private static ValueList<GearAt> Seen(IEnumerable<ThingRow> rows) => rows.Select(row => new GearAt(row.Id, row.Version)).ToValueList();

    private static async Task<List<ThingRow>> FindAsync(GigRigDb db, IReadOnlyCollection<Guid> ids, bool deletedToo, CancellationToken cancel)
    {
        return
        [
            .. await Of(db.Devices), .. await Of(db.Boards), .. await Of(db.Supplies), .. await Of(db.Amps),
            .. await Of(db.OffBoard), .. await Of(db.Leads), .. await Of(db.Instruments),
        ];

        Task<List<TRow>> Of<TRow>(IQueryable<TRow> rows)
            where TRow : ThingRow =>
            (deletedToo ? rows.IgnoreQueryFilters([GigRigDb.DeletedFilter]) : rows).Where(row => ids.Contains(row.Id)).ToListAsync(cancel);
    }
}
