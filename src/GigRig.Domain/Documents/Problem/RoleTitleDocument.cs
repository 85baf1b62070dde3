using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Problem;

[Description("What a role of the owner's own is called.")]
public sealed record RoleTitleDocument
{
    [Description("Lower-case letters, digits, - and dots; a dot narrows.")]
    [Within(1, Role.MaxLength)]
    [RoleKey]
    public required string Key { get; init; }

    [Within(1, Bounds.LongestName)]
    public required string Title { get; init; }

    internal static RoleTitleDocument Of(RoleTitle title) => new() { Key = title.Role.Key, Title = title.Title };

    internal RoleTitle ToTitle() => new(new(Key), Title);
}
