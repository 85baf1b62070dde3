using GigRig.Domain;

namespace GigRig.Data;

/// <summary>What can be done to a thing without knowing its kind. Both answer false where there is no such thing in this table.</summary>
internal interface IThingTable
{
    Task<bool> DeleteAsync(Guid id, int version, CancellationToken cancel);

    Task<bool> RestoreAsync(Guid id, CancellationToken cancel);
}

/// <summary>A table seen from outside, where the row it keeps a thing in does not matter.</summary>
internal interface IThingTable<T> : IThingTable
{
    Task<ValueList<Stored<T>>> AllAsync(CancellationToken cancel);

    Task<Stored<T>?> FindAsync(Guid id, CancellationToken cancel);

    Task<Stored<T>> AddAsync(T item, CancellationToken cancel);

    Task<Stored<T>> SaveAsync(Stored<T> mine, CancellationToken cancel);
}
