using GigRig.Data.Rows;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Files;

/// <summary>
/// Lays the content of a file over the library inside one context. Nothing is written until that context is saved, so a preview is the same
/// work thrown away. Things are known by their ids; what is here and not in the file is left alone.
/// </summary>
internal sealed class LibraryMerge
{
    private readonly GigRigDb db;
    private readonly TimeProvider time;
    private readonly CancellationToken cancel;
    private readonly List<ImportLine> lines = [];
    private readonly ComplaintList complaints = new();
    private readonly Dictionary<Guid, string> kinds = [];
    private readonly bool saysOwnership;

    private LibraryMerge(GigRigDb db, bool saysOwnership, TimeProvider time, CancellationToken cancel) =>
        (this.db, this.saysOwnership, this.time, this.cancel) = (db, saysOwnership, time, cancel);

    public static async Task<ImportPreview> ApplyAsync(GigRigDb db, LibraryContent content, TimeProvider time, CancellationToken cancel)
    {
        var merge = new LibraryMerge(db, content.SaysOwnership, time, cancel);
        await merge.KnowAsync();
        await merge.GearAsync(content);
        if (content.Adapters is { } adapters)
            await merge.AdaptersAsync(adapters);
        await merge.RolesAsync(content.Roles);
        await merge.ThingsAsync<EventTypeRow, EventType>(content.Events, "events");
        await merge.ThingsAsync<RigRow, SavedRig>(content.Rigs, "rigs");
        return merge.complaints.All is { Count: > 0 } complaints
            ? ImportPreview.Refused(complaints)
            : new ImportPreview(merge.lines.ToValueList(), []) { Content = content };
    }

    // An id that means one thing here can't mean another there: reading the file in again would be refused.
    private async Task KnowAsync()
    {
        await KnowAsync<DeviceRow>("devices");
        await KnowAsync<BoardRow>("boards");
        await KnowAsync<SupplyRow>("supplies");
        await KnowAsync<AmpRow>("amps");
        await KnowAsync<OffBoardRow>("offBoard");
        await KnowAsync<LeadRow>("leads");
        await KnowAsync<InstrumentRow>("instruments");
        await KnowAsync<EventTypeRow>("events");
        await KnowAsync<RigRow>("rigs");
    }

    private async Task GearAsync(LibraryContent content)
    {
        await ThingsAsync<DeviceRow, OwnedGear<Device>>(content.Devices, "devices");
        await ThingsAsync<BoardRow, OwnedGear<Board>>(content.Boards, "boards");
        await ThingsAsync<SupplyRow, OwnedGear<Supply>>(content.Supplies, "supplies");
        await ThingsAsync<AmpRow, OwnedGear<Amp>>(content.Amps, "amps");
        await ThingsAsync<OffBoardRow, OwnedGear<OffBoardItem>>(content.OffBoard, "offBoard");
        await ThingsAsync<LeadRow, OwnedGear<Lead>>(content.Leads, "leads");
        await ThingsAsync<InstrumentRow, OwnedGear<Instrument>>(content.Instruments, "instruments");
    }

    private async Task KnowAsync<TRow>(string member)
        where TRow : ThingRow
    {
        foreach (var id in await All<TRow>().Select(row => row.Id).ToListAsync(cancel))
            kinds[id] = member;
    }

    private async Task ThingsAsync<TRow, T>(ValueList<Kept<T>> things, string member)
        where TRow : ThingRow<T>, new()
    {
        var here = await All<TRow>().ToDictionaryAsync(row => row.Id, cancel);
        for (var i = 0; i < things.Count; i++)
        {
            var (id, item) = things[i];
            if (kinds.TryGetValue(id, out var other) && other != member)
            {
                complaints.Add($"/{member}/{i}/id", $"{id}", "an id that is not used for another kind of thing", $"/{member}/{i}/id is {id}, which belongs to one of the {other} here. Give this one another id.");
                continue;
            }

            Lay(here.GetValueOrDefault(id) ?? new TRow { Id = id }, item);
        }
    }

    private async Task RolesAsync(ValueList<OwnRole> roles)
    {
        var here = (await All<RoleRow>().ToListAsync(cancel))
            .GroupBy(row => row.Key)
            .ToDictionary(rows => rows.Key, rows => rows.MinBy(row => row.DeletedUtc is null ? 0 : 1)!, StringComparer.Ordinal);
        foreach (var role in roles)
            Lay(here.GetValueOrDefault(role.Role.Key) ?? new RoleRow { Id = Guid.CreateVersion7(time.GetUtcNow()) }, role);
    }

    private void Lay<T>(ThingRow<T> row, T item)
    {
        var version = row.Version;
        var gone = row.DeletedUtc is not null || version == 0;
        row.DeletedUtc = null;
        var kept = version > 0 && !saysOwnership ? (row as IOwnershipRow)?.Ownership : null;
        row.Set(item);
        if (kept is not null)
            ((IOwnershipRow)row).Ownership = kept;
        if (version == 0)
            db.Add(row);
        lines.Add(new(gone ? ImportChange.Added : Judge(row), row.Title, version));
    }

    private async Task AdaptersAsync(PowerAdapters adapters)
    {
        var row = await db.Adapters.FirstOrDefaultAsync(cancel);
        var version = row?.Version ?? 0;
        row ??= db.Add(new AdaptersRow()).Entity;
        row.Set(adapters);
        lines.Add(new(version == 0 ? ImportChange.Added : Judge(row), "counts of power adapter leads", version));
    }

    private ImportChange Judge(OwnedRow row)
    {
        var entry = db.Entry(row);
        entry.DetectChanges();
        return entry.State == EntityState.Unchanged ? ImportChange.Same : ImportChange.Changed;
    }

    private IQueryable<TRow> All<TRow>()
        where TRow : ThingRow => db.Set<TRow>().IgnoreQueryFilters([GigRigDb.DeletedFilter]);
}
