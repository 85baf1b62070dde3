using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Web.Shared;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear;

/// <summary>All owned things, narrowed to what is looked for.</summary>
public sealed class GearListState(GearStore gear, RoleStore roles)
{
    private List<GearRow>? rows;

    public bool IsLoaded => rows is not null;

    public bool IsEmpty => rows is { Count: 0 };

    public RoleChoices Roles { get; private set; } = new([]);

    public DeletedJustNow<GearRow> Deleted { get; } = new(row => row.Id);

    public async Task LoadAsync()
    {
        Roles = new((await roles.AllAsync()).Select(stored => stored.Item));
        var library = await gear.AllAsync();
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
    }

    public IReadOnlyList<GearRow> Shown(GearFilter filter) => [.. (rows ?? []).Where(row => filter.Lets(row, Roles))];

    /// <summary>The roles that some owned thing plays, for narrowing by.</summary>
    public IEnumerable<Role> RolesOwned => (rows ?? []).SelectMany(row => row.Functions).Select(function => function.Role).Distinct().OrderBy(Roles.TitleOf, StringComparer.CurrentCulture);

    /// <exception cref="StaleVersionException">It was changed since the list was loaded; the list is loaded anew.</exception>
    public Task DeleteAsync(GearRow row) => Deleted.DeleteAsync(row, () => gear.DeleteAsync(row.Id, row.Version), LoadAsync);

    public Task RestoreAsync(GearRow row) => Deleted.RestoreAsync(row, () => gear.RestoreAsync(row.Id), LoadAsync);
}
