using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Events;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The owner's event types.</summary>
public sealed class EventTypeStore
{
    private readonly ThingTable<EventTypeRow, EventType> table;

    internal EventTypeStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => table = new(databases, time, ProblemParts.Of);

    public Task<ValueList<Stored<EventType>>> AllAsync(CancellationToken cancel = default) => table.AllAsync(cancel);

    /// <summary>Null where there is no such event type, or it was deleted.</summary>
    public Task<Stored<EventType>?> FindAsync(Guid id, CancellationToken cancel = default) => table.FindAsync(id, cancel);

    /// <exception cref="RefusedThingException">It makes no sense: a sound without roles, two needs for one role …</exception>
    public Task<Stored<EventType>> AddAsync(EventType eventType, CancellationToken cancel = default) => table.AddAsync(eventType, cancel);

    /// <exception cref="RefusedThingException">It makes no sense.</exception>
    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public Task<Stored<EventType>> SaveAsync(Stored<EventType> mine, CancellationToken cancel = default) => table.SaveAsync(mine, cancel);

    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public async Task DeleteAsync(Guid id, int version, CancellationToken cancel = default)
    {
        if (!await table.DeleteAsync(id, version, cancel))
            throw new StaleVersionException($"event type with the id {id}", id, version, stored: null);
    }

    /// <summary>Undoes a delete. False where there never was such an event type.</summary>
    public Task<bool> RestoreAsync(Guid id, CancellationToken cancel = default) => table.RestoreAsync(id, cancel);
}
