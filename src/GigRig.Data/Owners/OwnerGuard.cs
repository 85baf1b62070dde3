using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data.Owners;

/// <summary>Stamps owner, version and times on what is saved, and refuses to write a row of somebody else, however it came into the context.</summary>
internal sealed class OwnerGuard(OwnerContext owner, TimeProvider time) : SaveChangesInterceptor
{
    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Guard(eventData.Context!);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Guard(eventData.Context!);
        return ValueTask.FromResult(result);
    }

    private void Guard(DbContext db)
    {
        var now = time.GetUtcNow().UtcDateTime;
        foreach (var entry in db.ChangeTracker.Entries<OwnedRow>().ToList())
        {
            if (entry.State is EntityState.Added)
                StampNew(entry, now);
            else if (entry.State is EntityState.Modified or EntityState.Deleted)
                StampChanged(entry, now);
        }
    }

    private void StampNew(EntityEntry<OwnedRow> entry, DateTime now)
    {
        var row = entry.Entity;
        if (row.OwnerId == Guid.Empty)
            entry.Property(r => r.OwnerId).CurrentValue = owner.OwnerId;
        RefuseForeign(entry, row.OwnerId);
        row.Version = 1;
        row.CreatedUtc = row.ChangedUtc = now;
    }

    private void StampChanged(EntityEntry<OwnedRow> entry, DateTime now)
    {
        RefuseForeign(entry, entry.Property(r => r.OwnerId).OriginalValue);
        RefuseForeign(entry, entry.Entity.OwnerId);
        if (entry.State is not EntityState.Modified)
            return;
        entry.Property(r => r.Version).CurrentValue = entry.Property(r => r.Version).OriginalValue + 1;
        entry.Property(r => r.ChangedUtc).CurrentValue = now;
    }

    private void RefuseForeign(EntityEntry entry, Guid rowOwner)
    {
        if (rowOwner != owner.OwnerId)
            throw new ForeignOwnerException(entry.Metadata.ClrType.Name);
    }
}

/// <summary>The program tried to write a row that belongs to another owner. A fault of ours; nothing was written.</summary>
internal sealed class ForeignOwnerException(string rowType)
    : InvalidOperationException($"A {rowType} of another owner was about to be written. Nothing was saved.");
