using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>
/// The owner's gear. <c>T</c> is one of the seven kinds: <see cref="Device"/>, <see cref="Board"/>, <see cref="Supply"/>, <see cref="Amp"/>,
/// <see cref="OffBoardItem"/>, <see cref="Lead"/>, <see cref="Instrument"/>. Gear that a saved rig uses may be edited and deleted: rigs keep copies.
/// </summary>
public sealed class GearStore
{
    private readonly AdaptersTable adapters;
    private readonly Dictionary<Type, IThingTable> tables;

    internal GearStore(IDbContextFactory<GigRigDb> databases, TimeProvider time)
    {
        adapters = new(databases);
        tables = new()
        {
            [typeof(Device)] = Table<DeviceRow, Device>(ProblemParts.Of),
            [typeof(Board)] = Table<BoardRow, Board>(ProblemParts.Of),
            [typeof(Supply)] = Table<SupplyRow, Supply>(ProblemParts.Of),
            [typeof(Amp)] = Table<AmpRow, Amp>(ProblemParts.Of),
            [typeof(OffBoardItem)] = Table<OffBoardRow, OffBoardItem>(ProblemParts.Of),
            [typeof(Lead)] = Table<LeadRow, Lead>(ProblemParts.Of),
            [typeof(Instrument)] = Table<InstrumentRow, Instrument>(ProblemParts.Of),
        };

        IThingTable Table<TRow, T>(Func<T, IEnumerable<Complaint>> check)
            where TRow : GearRow<T>, new()
            where T : class =>
            new ThingTable<TRow, OwnedGear<T>>(databases, time, owned => [.. check(owned.Thing), .. StoreChecks.Of(owned.Ownership)]);
    }

    public Task<ValueList<Stored<OwnedGear<Device>>>> DevicesAsync(CancellationToken cancel = default) => Table<Device>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<Board>>>> BoardsAsync(CancellationToken cancel = default) => Table<Board>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<Supply>>>> SuppliesAsync(CancellationToken cancel = default) => Table<Supply>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<Amp>>>> AmpsAsync(CancellationToken cancel = default) => Table<Amp>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<OffBoardItem>>>> OffBoardAsync(CancellationToken cancel = default) => Table<OffBoardItem>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<Lead>>>> LeadsAsync(CancellationToken cancel = default) => Table<Lead>().AllAsync(cancel);

    public Task<ValueList<Stored<OwnedGear<Instrument>>>> InstrumentsAsync(CancellationToken cancel = default) => Table<Instrument>().AllAsync(cancel);

    public async Task<GearLibrary> AllAsync(CancellationToken cancel = default) => new(
        await DevicesAsync(cancel),
        await BoardsAsync(cancel),
        await SuppliesAsync(cancel),
        await AmpsAsync(cancel),
        await OffBoardAsync(cancel),
        await LeadsAsync(cancel),
        await InstrumentsAsync(cancel),
        (await AdaptersAsync(cancel)).Item);

    /// <summary>Null where there is no such thing, or it was deleted.</summary>
    public Task<Stored<OwnedGear<T>>?> FindAsync<T>(Guid id, CancellationToken cancel = default)
        where T : class => Table<T>().FindAsync(id, cancel);

    /// <summary>Stores a new thing. It gets an id of its own; the one it came with is not kept.</summary>
    /// <exception cref="RefusedThingException">It makes no sense: a size of zero, a jack beside the body …</exception>
    public Task<Stored<OwnedGear<T>>> AddAsync<T>(T thing, Ownership ownership, CancellationToken cancel = default)
        where T : class => Table<T>().AddAsync(new(thing, ownership), cancel);

    /// <exception cref="RefusedThingException">It makes no sense: a size of zero, a jack beside the body …</exception>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public Task<Stored<OwnedGear<T>>> SaveAsync<T>(Stored<OwnedGear<T>> mine, CancellationToken cancel = default)
        where T : class => Table<T>().SaveAsync(mine, cancel);

    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public async Task DeleteAsync(Guid id, int version, CancellationToken cancel = default)
    {
        foreach (var table in tables.Values)
        {
            if (await table.DeleteAsync(id, version, cancel))
                return;
        }

        throw new StaleVersionException($"thing with the id {id}", id, version, stored: null);
    }

    /// <summary>Undoes a delete. False where there never was such a thing.</summary>
    public async Task<bool> RestoreAsync(Guid id, CancellationToken cancel = default)
    {
        foreach (var table in tables.Values)
        {
            if (await table.RestoreAsync(id, cancel))
                return true;
        }

        return false;
    }

    /// <summary>How many power adapter leads are owned. Version 0 until first saved.</summary>
    public Task<Stored<PowerAdapters>> AdaptersAsync(CancellationToken cancel = default) => adapters.ReadAsync(cancel);

    /// <exception cref="StaleVersionException">They were changed since they were read.</exception>
    public Task<Stored<PowerAdapters>> SaveAdaptersAsync(Stored<PowerAdapters> mine, CancellationToken cancel = default) =>
        adapters.SaveAsync(mine, cancel);

    private IThingTable<OwnedGear<T>> Table<T>()
        where T : class => tables.GetValueOrDefault(typeof(T)) as IThingTable<OwnedGear<T>>
            ?? throw new ArgumentException($"There is no table for {typeof(T).Name}. Use one of: {string.Join(", ", tables.Keys.Select(kind => kind.Name))}.");
}
