using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>
/// What a holder of a link may see. It has no owner, no notes, no value, and of the owner's gear only what is in the rig, so that a page made
/// from it can't show more.
/// </summary>
public sealed record SharedRig(string Name, RigProblem Problem, Rig Rig);

/// <summary>The visitor's side of sharing. It finds one rig by its token, whoever owns it, and can do nothing else.</summary>
public sealed class SharedRigReader
{
    // A page that is loaded over and over does not need a write each time.
    private static readonly TimeSpan OpenedGrain = TimeSpan.FromMinutes(1);

    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal SharedRigReader(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>Null for a token that is unknown, malformed, revoked, expired, or whose rig was deleted: a visitor can't tell which.</summary>
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
        if (!(now - link.LastOpenedUtc < OpenedGrain))
            await NoteOpenedAsync(db, link, now, cancel);
        return Show(rig.ToItem());
    }

    private static Task NoteOpenedAsync(GigRigDb db, ShareLinkRow link, DateTime now, CancellationToken cancel) =>
        db.ShareLinks.IgnoreQueryFilters([GigRigDb.OwnerFilter])
            .Where(row => row.OwnerId == link.OwnerId && row.Id == link.Id)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.LastOpenedUtc, now), cancel);

    private static SharedRig Show(SavedRig saved)
    {
        var rig = saved.Rig;
        var placed = rig.Placements.Select(placement => placement.Id)
            .Concat(rig.HookUp.Select(feed => feed.Device))
            .Concat(rig.Chain.Front)
            .Concat(rig.Chain.Loop)
            .ToHashSet();
        var offBoard = rig.OffBoard.ToHashSet();
        var draft = saved.Problem.Draft;
        var shown = draft with
        {
            Devices = draft.Devices.Where(device => placed.Contains(device.Id)).ToValueList(),
            OffBoard = draft.OffBoard.Where(item => offBoard.Contains(item.Id)).ToValueList(),
            Leads = [],
            Options = draft.Options with { Pin = [], Ban = [] },
        };
        var problem = RigProblem.Create(shown) is ProblemCheck.Accepted accepted
            ? accepted.Problem
            : throw new InvalidOperationException("A part of a checked problem was refused.");
        return new(saved.Name, problem, rig with { Silenced = rig.Silenced.Select(silenced => silenced with { Note = "" }).ToValueList() });
    }
}
