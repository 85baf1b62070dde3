using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>A way in to one rig for whoever holds its token. The token can't be shown again: only its hash is kept.</summary>
/// <param name="Works">Whether it opens the rig now: neither revoked nor expired.</param>
public sealed record ShareLink(Guid Id, string Name, DateTime CreatedUtc, DateTime? LastOpenedUtc, DateTime? ExpiresUtc, DateTime? RevokedUtc, bool Works);

/// <summary>The owner's side of sharing: making links and cutting them off.</summary>
public sealed class ShareLinkStore
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal ShareLinkStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Makes a further link to a rig and gives its token, this once.</summary>
    /// <param name="name">For the owner, to know which one to revoke.</param>
    /// <param name="expiresUtc">Null for a link that works until it is revoked.</param>
    /// <exception cref="RefusedThingException">The name is empty or too long.</exception>
    /// <exception cref="ArgumentException">There is no such rig, or the expiry has passed already.</exception>
    public async Task<string> CreateAsync(Guid rigId, string name, DateTime? expiresUtc = null, CancellationToken cancel = default)
    {
        if (PlainChecks.Name("/name", "name", name).ToValueList() is { Count: > 0 } complaints)
            throw new RefusedThingException("share link", complaints);
        if (expiresUtc <= Now())
            throw new ArgumentException($"The link would expire at {expiresUtc:u}, which has passed. Choose a later time.", nameof(expiresUtc));
        await using var db = await databases.CreateDbContextAsync(cancel);
        if (!await db.Rigs.AnyAsync(rig => rig.Id == rigId, cancel))
            throw new ArgumentException($"There is no rig with the id {rigId} to share. Save it first.", nameof(rigId));
        var token = ShareToken.Create();
        db.Add(new ShareLinkRow
        {
            Id = Guid.CreateVersion7(time.GetUtcNow()),
            RigId = rigId,
            Name = name,
            TokenHash = ShareToken.HashOf(token)!,
            ExpiresUtc = expiresUtc,
        });
        await db.SaveChangesAsync(cancel);
        return token;
    }

    /// <summary>All links ever made to a rig, the newest first, revoked and expired ones too.</summary>
    public async Task<ValueList<ShareLink>> ForRigAsync(Guid rigId, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rows = await db.ShareLinks.AsNoTracking()
            .Where(link => link.RigId == rigId)
            .OrderByDescending(link => link.CreatedUtc)
            .ThenByDescending(link => link.Id)
            .ToListAsync(cancel);
        return rows.Select(Read).ToValueList();
    }

    /// <summary>Cuts a link off for good. False where there is no such link.</summary>
    public async Task<bool> RevokeAsync(Guid linkId, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var row = await db.ShareLinks.FirstOrDefaultAsync(link => link.Id == linkId, cancel);
        if (row is null)
            return false;
        row.RevokedUtc ??= Now();
        await db.SaveChangesAsync(cancel);
        return true;
    }

    private ShareLink Read(ShareLinkRow row) => new(
        row.Id,
        row.Name,
        row.CreatedUtc,
        row.LastOpenedUtc,
        row.ExpiresUtc,
        row.RevokedUtc,
        row.RevokedUtc is null && !(row.ExpiresUtc <= Now()));

    private DateTime Now() => time.GetUtcNow().UtcDateTime;
}
