using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The roles the owner added to the built-in ones. A role may be used without being here; here it gets a title.</summary>
public sealed class RoleStore
{
    private readonly ThingTable<RoleRow, OwnRole> table;

    internal RoleStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => table = new(databases, time, StoreChecks.Of);

    public Task<ValueList<Stored<OwnRole>>> AllAsync(CancellationToken cancel = default) => table.AllAsync(cancel);

    /// <exception cref="RefusedThingException">Its key is not well-formed, or it has no title.</exception>
    /// <exception cref="DuplicateRoleException">There is one with this key already.</exception>
    public async Task<Stored<OwnRole>> AddAsync(OwnRole role, CancellationToken cancel = default)
    {
        await RefuseSecondAsync(role.Role, self: null, cancel);
        return await table.AddAsync(role, cancel);
    }

    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    /// <exception cref="DuplicateRoleException">Another one has this key.</exception>
    public async Task<Stored<OwnRole>> SaveAsync(Stored<OwnRole> mine, CancellationToken cancel = default)
    {
        await RefuseSecondAsync(mine.Item.Role, mine.Id, cancel);
        return await table.SaveAsync(mine, cancel);
    }

    /// <exception cref="StaleVersionException">It was changed or deleted since it was read.</exception>
    public async Task DeleteAsync(Guid id, int version, CancellationToken cancel = default)
    {
        if (!await table.DeleteAsync(id, version, cancel))
            throw new StaleVersionException($"role with the id {id}", id, version, stored: null);
    }

    /// <summary>Undoes a delete. False where there never was such a role.</summary>
    /// <exception cref="DuplicateRoleException">A new one with the same key was added meanwhile.</exception>
    public async Task<bool> RestoreAsync(Guid id, CancellationToken cancel = default)
    {
        if (await table.FindDeletedAsync(id, cancel) is { } deleted)
            await RefuseSecondAsync(deleted.Item.Role, id, cancel);
        return await table.RestoreAsync(id, cancel);
    }

    // The unique index is what holds; this gives the clear message.
    private async Task RefuseSecondAsync(Role role, Guid? self, CancellationToken cancel)
    {
        var all = await table.AllAsync(cancel);
        if (all.FirstOrDefault(other => other.Item.Role == role && other.Id != self) is { } other)
            throw new DuplicateRoleException(role, other.Item.Title);
    }
}

/// <summary>Two own roles can't have the same key. Nothing was written.</summary>
public sealed class DuplicateRoleException(Role role, string title)
    : Exception($"There already is a role with the key \"{role}\": \"{title}\". Choose another key, or change that one.")
{
    public Role Role { get; } = role;
}
