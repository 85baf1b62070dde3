using GigRig.Domain.Gear;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear;

/// <summary>What the list is narrowed to. Stands in the page's address, so that a narrowed list can be kept and sent.</summary>
/// <param name="Text">Part of a name, a note or a role.</param>
/// <param name="Kind">Word of a kind.</param>
/// <param name="Role">A role some function meets.</param>
/// <param name="Status">Null for all but what is not owned any more.</param>
public sealed record GearFilter(string? Text = null, string? Kind = null, string? Role = null, GearStatus? Status = null)
{
    public bool IsNarrow => this != new GearFilter();

    public bool Lets(GearRow row, RoleChoices roles) =>
        (Kind is null || row.Kind.Word == Kind)
        && (Status is { } status ? row.Ownership.Status == status : row.Ownership.Status != GearStatus.Gone)
        && (Role is null || row.Functions.Any(function => function.Role.Meets(new(Role))))
        && LetsText(row, roles);

    private bool LetsText(GearRow row, RoleChoices roles)
    {
        if (string.IsNullOrWhiteSpace(Text))
            return true;
        var wanted = Text.Trim();
        var found = roles.Search(wanted).ToHashSet();
        return row.Name.Contains(wanted, StringComparison.OrdinalIgnoreCase)
            || row.Ownership.Note.Contains(wanted, StringComparison.OrdinalIgnoreCase)
            || row.Functions.Any(function => found.Contains(function.Role));
    }
}
