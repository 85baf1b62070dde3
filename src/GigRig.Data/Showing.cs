using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>Cuts a stored rig down to what others may see of it.</summary>
internal static class Showing
{
    /// <summary>Null where the rig has no such version.</summary>
    /// <param name="version">The version to show; null for the rig as it is.</param>
    /// <exception cref="UnreadableRigException">What is stored can't be read.</exception>
    public static async Task<SharedRig?> OfAsync(GigRigDb db, RigRow rig, int? version, LinkContent content, CancellationToken cancel)
    {
        var saved = version is { } number ? await FindVersionAsync(db, rig, number, cancel) : rig.ToItem();
        if (saved is null)
            return null;
        var problem = Cut(saved.Problem, saved.Rig);
        var belongings = content.Notes || content.Values ? await BelongingsAsync(db, rig.OwnerId, problem, content, cancel) : [];
        var shown = content.Notes ? saved.Rig : saved.Rig with { Silenced = saved.Rig.Silenced.Select(silenced => silenced with { Note = "" }).ToValueList() };
        return new(saved.Name, problem, shown, saved.SavedUtc, content.Places, content.Unit, content.Notes ? saved.Note : "", belongings);
    }

    // A visitor has no library: here and below, the owner is the one whose rig it is.
    private static async Task<SavedRig?> FindVersionAsync(GigRigDb db, RigRow rig, int number, CancellationToken cancel)
    {
        var row = await db.RigVersions.IgnoreQueryFilters([GigRigDb.OwnerFilter]).AsNoTracking()
            .FirstOrDefaultAsync(row => row.OwnerId == rig.OwnerId && row.RigId == rig.Id && row.Number == number, cancel);
        return row?.ToItem(rig.Note);
    }

    private static RigProblem Cut(RigProblem problem, Rig rig)
    {
        var placed = rig.Placements.Select(placement => placement.Id)
            .Concat(rig.HookUp.Select(feed => feed.Device))
            .Concat(rig.Chain.Front)
            .Concat(rig.Chain.Loop)
            .ToHashSet();
        var offBoard = rig.OffBoard.ToHashSet();
        var draft = problem.Draft;
        var shown = draft with
        {
            Devices = draft.Devices.Where(device => placed.Contains(device.Id)).ToValueList(),
            OffBoard = draft.OffBoard.Where(item => offBoard.Contains(item.Id)).ToValueList(),
            Leads = LeadPlan.Of(problem, rig).Used.Select(used => used.Lead with { Count = used.Count }).ToValueList(),
            Options = draft.Options with { Pin = [], Ban = [], Fixed = [] },
        };
        shown = shown with { Roles = draft.Roles.Where(role => Mentions(shown, role.Role)).ToValueList() };
        return RigProblem.Create(shown) is ProblemCheck.Accepted accepted
            ? accepted.Problem
            : throw new InvalidOperationException("A part of a checked problem was refused.");
    }

    private static bool Mentions(RigProblemDraft shown, Role role) =>
        shown.Event.Needs.Any(need => need.Role == role)
        || shown.Event.Sounds.Any(sound => sound.Roles.Contains(role))
        || shown.Devices.SelectMany(device => device.Functions)
            .Concat(shown.Amp?.Functions ?? [])
            .Concat(shown.OffBoard.SelectMany(item => item.Functions))
            .Any(function => function.Role == role);

    private static async Task<ValueList<SharedBelonging>> BelongingsAsync(GigRigDb db, Guid owner, RigProblem problem, LinkContent content, CancellationToken cancel)
    {
        GearId?[] all = [problem.Board.Id, problem.Supply?.Id, problem.Amp?.Id, .. problem.Devices.Select(device => (GearId?)device.Id), .. problem.OffBoard.Select(item => (GearId?)item.Id)];
        var ids = all.OfType<GearId>().Select(id => (Id: id, Row: Guid.TryParse(id.Value, out var row) ? row : Guid.Empty)).ToList();
        var rows = ids.Select(id => id.Row).ToList();
        var owned = new Dictionary<Guid, (string Note, int? ValueCents)>();
        await ReadAsync<BoardRow, Board>();
        await ReadAsync<SupplyRow, Supply>();
        await ReadAsync<AmpRow, Amp>();
        await ReadAsync<DeviceRow, Device>();
        await ReadAsync<OffBoardRow, OffBoardItem>();
        return ids.Where(id => owned.ContainsKey(id.Row))
            .Select(id => new SharedBelonging(id.Id, problem.NameOf(id.Id), content.Notes ? owned[id.Row].Note : "", content.Values ? owned[id.Row].ValueCents : null))
            .Where(thing => thing.Note.Length > 0 || thing.ValueCents is not null)
            .ToValueList();

        async Task ReadAsync<TRow, T>()
            where TRow : GearRow<T>
            where T : class
        {
            var found = await db.Set<TRow>().IgnoreQueryFilters([GigRigDb.OwnerFilter]).AsNoTracking()
                .Where(row => row.OwnerId == owner && rows.Contains(row.Id))
                .Select(row => new { row.Id, row.Note, row.ValueCents })
                .ToListAsync(cancel);
            foreach (var row in found)
                owned[row.Id] = (row.Note, row.ValueCents);
        }
    }
}
