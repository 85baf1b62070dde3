using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear;

/// <summary>A change to what is kept about several things, and what it was before.</summary>
/// <param name="Done">In words, such as <c>3 things: In repair</c>.</param>
public sealed record BulkChange(string Done, IReadOnlyList<OwnershipAt> Before);

/// <summary>The rows that are ticked, and what can be changed for all of them at once.</summary>
public sealed class GearSelection(GearBatchStore batch, IReadOnlyList<GearRow> rows)
{
    private readonly HashSet<Guid> ticked = [];

    public int Count => ticked.Count;

    public IReadOnlyList<GearRow> Rows => [.. rows.Where(row => ticked.Contains(row.Id))];

    public bool Has(GearRow row) => ticked.Contains(row.Id);

    public void Tick(GearRow row, bool on)
    {
        if (on)
            ticked.Add(row.Id);
        else
            ticked.Remove(row.Id);
    }

    public void TickAll(IEnumerable<GearRow> shown, bool on)
    {
        foreach (var row in shown)
            Tick(row, on);
    }

    public void Clear() => ticked.Clear();

    /// <summary>The same ticks among rows that were loaded anew.</summary>
    public GearSelection Among(IReadOnlyList<GearRow> fresh)
    {
        var next = new GearSelection(batch, fresh);
        next.ticked.UnionWith(fresh.Select(row => row.Id).Where(ticked.Contains));
        return next;
    }

    /// <summary>Changes all that is ticked, or nothing.</summary>
    /// <exception cref="StaleVersionException">One was changed since the list was loaded.</exception>
    /// <exception cref="RefusedThingException">One would get more tags than it may have.</exception>
    public async Task<BulkChange> ChangeAsync(string done, Func<Ownership, Ownership> change)
    {
        var chosen = Rows;
        var after = await batch.SetOwnershipsAsync([.. chosen.Select(row => new OwnershipAt(row.Id, row.Version, change(row.Ownership)))]);
        return new(done, [.. chosen.Zip(after, (row, at) => new OwnershipAt(row.Id, at.Version, row.Ownership))]);
    }

    /// <exception cref="StaleVersionException">One was changed since; all stay as they are.</exception>
    public Task UndoAsync(BulkChange change) => batch.SetOwnershipsAsync(change.Before);

    /// <summary>A status with whom and till when; both are dropped where nothing is lent.</summary>
    public static Func<Ownership, Ownership> ToStatus(GearStatus status, string lentTo, DateOnly? backOn) => own => own with
    {
        Status = status,
        LentTo = status == GearStatus.LentOut ? lentTo.Trim() : "",
        BackOn = status == GearStatus.LentOut ? backOn : null,
    };

    public static Func<Ownership, Ownership> Tagged(ValueList<string> tags) => own => own with { Tags = own.Tags.Concat(tags).DistinctBy(tag => tag.ToUpperInvariant()).ToValueList() };

    public static Func<Ownership, Ownership> Untagged(ValueList<string> tags) => own => own with { Tags = own.Tags.Where(tag => !tags.Contains(tag, StringComparer.OrdinalIgnoreCase)).ToValueList() };
}
