using GigRig.Data.Checks;
using GigRig.Data.Rows;
using GigRig.Domain;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>A way in to one rig for whoever holds its token. The token can't be shown again: only its hash is kept.</summary>
/// <param name="LastOpenedOn">The last day, in UTC, on which somebody or some program opened it.</param>
/// <param name="Frozen">Number of the version it shows for good; null where it shows the rig as it is.</param>
/// <param name="Works">Whether it opens the rig now: neither revoked nor expired.</param>
public sealed record ShareLink(
    Guid Id, string Name, DateTime CreatedUtc, DateOnly? LastOpenedOn, DateTime? ExpiresUtc, DateTime? RevokedUtc, int? Frozen, LinkContent Content, bool Works);

/// <summary>A link to be made.</summary>
/// <param name="Name">For the owner, to know which one to revoke.</param>
/// <param name="ExpiresUtc">Null for a link that works until it is revoked.</param>
/// <param name="Content">Null for nothing beyond the plain page.</param>
/// <param name="Frozen">Number of the version to show for good; null to follow the rig as it changes.</param>
public sealed record NewLink(string Name, DateTime? ExpiresUtc = null, LinkContent? Content = null, int? Frozen = null);

/// <summary>The owner's side of sharing: making links and cutting them off.</summary>
public sealed class ShareLinkStore
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal ShareLinkStore(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Makes a further link to a rig and gives its token, this once.</summary>
    /// <exception cref="RefusedThingException">The name is empty or too long.</exception>
    /// <exception cref="ArgumentException">There is no such rig or no such version of it, or the expiry has passed already.</exception>
    public async Task<string> CreateAsync(Guid rigId, NewLink link, CancellationToken cancel = default)
    {
        if (PlainChecks.Name("/name", "name", link.Name).ToValueList() is { Count: > 0 } complaints)
            throw new RefusedThingException("share link", complaints);
        if (link.ExpiresUtc <= Now())
            throw new ArgumentException($"The link would expire at {link.ExpiresUtc:u}, which has passed. Choose a later time.", nameof(link));
        await using var db = await databases.CreateDbContextAsync(cancel);
        if (!await db.Rigs.AnyAsync(rig => rig.Id == rigId, cancel))
            throw new ArgumentException($"There is no rig with the id {rigId} to share. Save it first.", nameof(rigId));
        if (link.Frozen is { } number && !await db.RigVersions.AnyAsync(version => version.RigId == rigId && version.Number == number, cancel))
            throw new ArgumentException($"The rig has no version {number} to show. Choose one of its history.", nameof(link));
        var token = ShareToken.Create();
        db.Add(new ShareLinkRow
        {
            Id = Guid.CreateVersion7(time.GetUtcNow()),
            RigId = rigId,
            Name = link.Name,
            TokenHash = ShareToken.HashOf(token)!,
            ExpiresUtc = link.ExpiresUtc,
            FrozenVersion = link.Frozen,
            Content = link.Content ?? LinkContent.Plain,
        });
        await db.SaveChangesAsync(cancel);
        return token;
    }

    /// <summary>What a link with this content would show, for the owner to hand on in another way. Null where there is no such rig or version.</summary>
    /// <param name="version">Null for the rig as it is.</param>
    /// <exception cref="UnreadableRigException">What is stored can't be read.</exception>
    public async Task<SharedRig?> ShowAsync(Guid rigId, LinkContent content, int? version = null, CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var rig = await db.Rigs.AsNoTracking().FirstOrDefaultAsync(rig => rig.Id == rigId, cancel);
        return rig is null ? null : await Showing.OfAsync(db, rig, version, content, cancel);
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
        row.LastOpenedOn,
        row.ExpiresUtc,
        row.RevokedUtc,
        row.FrozenVersion,
        row.Content,
        row.RevokedUtc is null && !(row.ExpiresUtc <= Now()));

    private DateTime Now() => time.GetUtcNow().UtcDateTime;
}
