using GigRig.Data.Rows;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The visitor's side of sharing. It finds one rig by its token, whoever owns it, and can do nothing else.</summary>
public sealed class SharedRigReader
{
    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal SharedRigReader(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Null for a token that is unknown, malformed, revoked, expired, or whose rig was deleted: a visitor can't tell which.</summary>
    /// <exception cref="UnreadableRigException">What is stored can't be read.</exception>
    public async Task<SharedRig?> FindAsync(string token, CancellationToken cancel = default)
    {
        if (ShareToken.HashOf(token) is not { } hash)
            return null;
        var now = time.GetUtcNow().UtcDateTime;
        await using var db = await databases.CreateDbContextAsync(cancel);
        // The one place that looks past the owner: the token is the right to see this row.
        var link = await db.ShareLinks.IgnoreQueryFilters([GigRigDb.OwnerFilter]).AsNoTracking()
            .Include(link => link.Rig)
            .FirstOrDefaultAsync(link => link.TokenHash == hash, cancel);
        if (link?.Rig is not { } rig || link.RevokedUtc is not null || link.ExpiresUtc <= now)
            return null;
        // Once a day: nothing finer is kept, and a page that is loaded over and over needs no write each time.
        var today = DateOnly.FromDateTime(now);
        if (link.LastOpenedOn != today)
            await NoteOpenedAsync(db, link, today, cancel);
        return await Showing.OfAsync(db, rig, link.FrozenVersion, link.Content, cancel);
    }

    private static async Task NoteOpenedAsync(GigRigDb db, ShareLinkRow link, DateOnly today, CancellationToken cancel)
    {
        try
        {
            await db.ShareLinks.IgnoreQueryFilters([GigRigDb.OwnerFilter])
                .Where(row => row.OwnerId == link.OwnerId && row.Id == link.Id)
                .ExecuteUpdateAsync(set => set.SetProperty(row => row.LastOpenedOn, today), cancel);
        }
        catch (SqliteException)
        {
            // A full or busy disk of the owner's must not keep the band from the page; the day is noted at the next opening.
        }
    }
}
