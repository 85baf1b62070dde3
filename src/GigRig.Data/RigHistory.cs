using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace GigRig.Data;

/// <summary>
/// Keeps what each rig was whenever one is saved, whichever way it came into the context. Renaming is no new version: nothing moved. What is
/// beyond the bound goes, the oldest first, in the same transaction; a version that a link shows stays.
/// </summary>
internal sealed class RigHistory : SaveChangesInterceptor
{
    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Keep((GigRigDb)eventData.Context!);
        return result;
    }

    public override async ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        var db = (GigRigDb)eventData.Context!;
        foreach (var rig in Keep(db))
            await DropOldAsync(db, rig, cancellationToken);
        return result;
    }

    private static List<Guid> Keep(GigRigDb db)
    {
        var saved = db.ChangeTracker.Entries<RigRow>()
            .Where(rig => rig.State == EntityState.Added
                || (rig.State == EntityState.Modified && (rig.Property(row => row.ProblemJson).IsModified || rig.Property(row => row.RigJson).IsModified)))
            .ToList();
        foreach (var rig in saved)
        {
            // The owner guard, which comes after this, gives the rig the same number.
            var number = rig.State == EntityState.Added ? 1 : rig.Property(row => row.Version).OriginalValue + 1;
            db.Add(RigVersionRow.Of(rig.Entity, number));
        }

        return [.. saved.Select(rig => rig.Entity.Id)];
    }

    private static async Task DropOldAsync(GigRigDb db, Guid rig, CancellationToken cancel)
    {
        var old = await db.RigVersions.AsNoTracking()
            .Where(version => version.RigId == rig && !db.ShareLinks.Any(link => link.RigId == rig && link.FrozenVersion == version.Number))
            .OrderByDescending(version => version.Number)
            .Skip(RigVersion.MostKept - 1)
            .Select(version => new RigVersionRow { OwnerId = version.OwnerId, RigId = version.RigId, Number = version.Number, Version = version.Version })
            .ToListAsync(cancel);
        db.RemoveRange(old);
    }
}
