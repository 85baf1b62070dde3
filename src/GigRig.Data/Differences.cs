using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace GigRig.Data;

/// <summary>Names, in plain words, the fields of a row that were set to something else than what is stored.</summary>
internal static class Differences
{
    // Written by the app itself, or drawn from other fields.
    private static readonly HashSet<string> Ours =
    [
        nameof(OwnedRow.Version),
        nameof(OwnedRow.ChangedUtc),
        nameof(ThingRow.DeletedUtc),
        nameof(RigRow.SavedUtc),
        nameof(RigRow.EventName),
        nameof(RigRow.BoardName),
        nameof(RigRow.DeviceCount),
    ];

    private static readonly string[] Units = ["Json", "Grams", "Milliamps"];

    public static IReadOnlyList<string> In(EntityEntry entry) =>
    [
        .. entry.Properties.Where(p => p.IsModified).Select(p => p.Metadata.Name)
            .Concat(entry.ComplexProperties.Where(p => p.IsModified).Select(p => p.Metadata.Name))
            .Concat(entry.ComplexCollections.Where(p => p.IsModified).Select(p => p.Metadata.Name))
            .Where(name => !Ours.Contains(name))
            .Select(Words),
    ];

    private static string Words(string name)
    {
        var unit = Units.FirstOrDefault(unit => name.EndsWith(unit, StringComparison.Ordinal)) ?? "";
        return string.Concat(name[..^unit.Length].Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
    }
}
