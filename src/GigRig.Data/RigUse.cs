using System.Text.Json;

namespace GigRig.Data;

/// <summary>Which things the texts of a saved rig speak of.</summary>
internal static class RigUse
{
    /// <summary>What stands on the board or comes along: devices, off-board things, board, supply, amp and instrument. Nothing where a text can't be read.</summary>
    public static IEnumerable<string> In(string problemJson, string rigJson)
    {
        try
        {
            using var problem = JsonDocument.Parse(problemJson);
            using var rig = JsonDocument.Parse(rigJson);
            string?[] ids =
            [
                .. Listed(rig.RootElement, "placements").Select(IdOf), .. Listed(rig.RootElement, "offBoard").Select(id => id.GetString()),
                .. new[] { "board", "supply", "amp", "instrument" }.Select(part => problem.RootElement.TryGetProperty(part, out var thing) ? IdOf(thing) : null),
            ];
            return ids.OfType<string>();
        }
        catch (Exception unreadable) when (unreadable is JsonException or InvalidOperationException)
        {
            return [];
        }
    }

    private static IEnumerable<JsonElement> Listed(JsonElement from, string member) =>
        from.TryGetProperty(member, out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray() : [];

    private static string? IdOf(JsonElement thing) =>
        thing.ValueKind == JsonValueKind.Object && thing.TryGetProperty("id", out var id) && id.ValueKind == JsonValueKind.String ? id.GetString() : null;
}
