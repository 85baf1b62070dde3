using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Reading;

/// <summary>Reads what may be broken text: half of a surrogate pair, bytes that are not UTF-8.</summary>
internal static class SafeJson
{
    private const int LongestShown = 60;

    /// <summary>Null where it is not a text, or not a readable one.</summary>
    public static string? SafeText(this JsonElement element)
    {
        try
        {
            return element.ValueKind == JsonValueKind.String ? element.GetString() : null;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    public static string SafeName(this JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return "(unreadable)";
        }
    }

    /// <summary>As it stands in the text, cut short; lists and objects by their kind.</summary>
    public static string Shown(this JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => element.SafeText() is { } text ? $"\"{text.Shortened()}\"" : "unreadable text",
        _ => element.GetRawText().Shortened(),
    };

    public static string Shortened(this string text) => text.Shortened(LongestShown);

    public static bool Has<TAttribute>(this JsonPropertyInfo property)
        where TAttribute : Attribute => property.AttributeProvider?.IsDefined(typeof(TAttribute), inherit: false) == true;
}
