using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Web.Features.Gear.Care;
using GigRig.Web.Shared;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear;

/// <summary>All owned things, narrowed to what is looked for.</summary>
public sealed class GearListState(GearStore gear, GearBatchStore batch, RoleStore roles, RigStore rigs, TimeProvider time)
{
    private List<GearRow>? rows;
    private int loads;

    public bool IsLoaded => rows is not null;

    public bool IsEmpty => rows is { Count: 0 };

    public RoleChoices Roles { get; private set; } = new([]);

    public LibraryCare Care { get; private set; } = new([], new HashSet<GearId>(), default);

    public DeletedJustNow<GearRow> Deleted { get; } = new(row => row.Id);

    /// <summary>The rows that are ticked, and what can be done to them at once.</summary>
    public GearSelection Selection { get; private set; } = new(batch, []);

    /// <summary>Several may run at once; the last that was asked for counts.</summary>
    public async Task LoadAsync()
    {
        var load = ++loads;
        var own = await roles.AllAsync();
        var library = await gear.AllAsync();
        var used = await rigs.UsedAsync();
        if (load != loads)
            return;
        Roles = new(own.Select(stored => stored.Item));
        rows =
        [
            .. library.Devices.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.Boards.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.Supplies.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.Amps.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.OffBoard.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.Leads.Select(stored => GearRow.Of(stored, thing => thing.Name)),
            .. library.Instruments.Select(stored => GearRow.Of(stored, thing => thing.Name)),
        ];
        Care = new(rows, used, DateOnly.FromDateTime(time.GetLocalNow().DateTime));
        Selection = Selection.Among(rows);
    }

    public IReadOnlyList<GearRow> Shown(GearFilter filter) => [.. (rows ?? []).Where(row => filter.Lets(row, Roles, Care))];

    /// <summary>The roles that some owned thing plays, for narrowing by.</summary>
    public IEnumerable<Role> RolesOwned => (rows ?? []).SelectMany(row => row.Functions).Select(function => function.Role).Distinct().OrderBy(Roles.TitleOf, StringComparer.CurrentCulture);

    /// <summary>The tags that some owned thing has.</summary>
    public IEnumerable<string> Tags => (rows ?? []).SelectMany(row => row.Ownership.Tags).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.CurrentCultureIgnoreCase);

    /// <summary>A second one like it, ready, under a name that is not taken.</summary>
    public async Task<(Guid Id, string Name)> DuplicateAsync(GearRow row)
    {
        var name = CopyName.Of(row.Name, taken => (rows ?? []).Exists(other => other.Name.Equals(taken, StringComparison.CurrentCultureIgnoreCase)));
        var added = await batch.AddAsync([(row.Named(name), row.Ownership with { Status = GearStatus.Ready, LentTo = "", BackOn = null })]);
        await LoadAsync();
        return (added[0].Id, name);
    }

    /// <exception cref="StaleVersionException">It was changed since the list was loaded; the list is loaded anew.</exception>
    public Task DeleteAsync(GearRow row) => Deleted.DeleteAsync(row, () => gear.DeleteAsync(row.Id, row.Version), LoadAsync);

    public Task RestoreAsync(GearRow row) => Deleted.RestoreAsync(row, () => gear.RestoreAsync(row.Id), LoadAsync);

    /// <summary>Deletes all that is ticked, or nothing.</summary>
    /// <exception cref="StaleVersionException">One was changed since the list was loaded; the list is loaded anew.</exception>
    public async Task<IReadOnlyList<GearRow>> DeleteSelectedAsync()
    {
        var gone = Selection.Rows;
        await Deleted.DeleteAsync(gone, () => batch.DeleteAsync([.. gone.Select(row => new GearAt(row.Id, row.Version))]), LoadAsync);
        return gone;
    }

    public Task RestoreAsync(IReadOnlyList<GearRow> gone) => Deleted.RestoreAsync(gone, () => batch.RestoreAsync([.. gone.Select(row => row.Id)]), LoadAsync);
}
