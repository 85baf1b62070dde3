using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace GigRig.Data;

/// <summary>Names, in plain words, the fields of a row that were set to something else than what is stored.</summary>
internal static class Differences
{
    public static IReadOnlyList<string> In(EntityEntry entry) =>
    [
        .. entry.Properties.Where(p => p.IsModified).Select(p => p.Metadata.Name)
            .Concat(entry.ComplexProperties.Where(p => p.IsModified).Select(p => p.Metadata.Name))
            .Concat(entry.ComplexCollections.Where(p => p.IsModified).Select(p => p.Metadata.Name))
            .Where(name => name is not (nameof(OwnedRow.Version) or nameof(OwnedRow.ChangedUtc)))
            .Select(Words),
    ];

    private static string Words(string name) =>
        string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
