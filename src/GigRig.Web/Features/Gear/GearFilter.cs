using GigRig.Domain.Gear;
using GigRig.Web.Features.Gear.Care;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear;

/// <summary>What the list is narrowed to. Stands in the page's address, so that a narrowed list can be kept and sent.</summary>
/// <param name="Text">Part of a name, a note, a tag, a borrower or a role.</param>
/// <param name="Kind">Word of a kind.</param>
/// <param name="Role">A role some function meets.</param>
/// <param name="Status">Null for all but what is not owned any more.</param>
public sealed record GearFilter(string? Text = null, string? Kind = null, string? Role = null, GearStatus? Status = null, string? Tag = null, CareFilter? Care = null)
{
    public bool Lets(GearRow row, RoleChoices roles, LibraryCare care) =>
        (Kind is null || row.Kind.Word == Kind)
        && (Status is { } status ? row.Ownership.Status == status : row.Ownership.Status != GearStatus.Gone)
        && (Role is null || row.Functions.Any(function => function.Role.Meets(new(Role))))
        && (Tag is null || row.Ownership.Tags.Contains(Tag, StringComparer.OrdinalIgnoreCase))
        && (Care is not { } wanted || care.Lets(row, wanted))
        && LetsText(row, roles);

    /// <summary>As it stands in the address; what is not narrowed by is null.</summary>
    public IReadOnlyDictionary<string, object?> Parts => new Dictionary<string, object?>
    {
        ["q"] = string.IsNullOrWhiteSpace(Text) ? null : Text,
        ["kind"] = Kind,
        ["role"] = Role,
        ["status"] = Status?.ToString(),
        ["tag"] = Tag,
        ["care"] = Care?.ToString(),
    };

    /// <summary>The same as text, always in the same order; empty for nothing.</summary>
    public string Query => string.Join('&', Parts.Where(part => part.Value is not null).Select(part => $"{part.Key}={Uri.EscapeDataString((string)part.Value!)}"));

    private bool LetsText(GearRow row, RoleChoices roles)
    {
        if (string.IsNullOrWhiteSpace(Text))
            return true;
        var wanted = Text.Trim();
        var found = roles.Search(wanted).ToHashSet();
        return new[] { row.Name, row.Ownership.Note, row.Ownership.LentTo }.Concat(row.Ownership.Tags).Any(text => text.Contains(wanted, StringComparison.OrdinalIgnoreCase))
            || row.Functions.Any(function => found.Contains(function.Role));
    }
}
