using System.Text.Json;

namespace GigRig.Domain.Documents.Reading;

/// <summary>What a single value may be.</summary>
internal sealed record ValueKind(string Wanted, Func<JsonElement, bool> Accepts, IReadOnlyList<string> Words)
{
    private static readonly ValueKind Whole = new("a whole number", e => e.ValueKind == JsonValueKind.Number && e.TryGetInt32(out _), []);
    private static readonly ValueKind Number = new("a number", e => e.ValueKind == JsonValueKind.Number && e.TryGetDecimal(out _), []);
    private static readonly ValueKind VoltNumber = new("volts with at most three decimals", IsVolts, []);
    private static readonly ValueKind Flag = new("true or false", e => e.ValueKind is JsonValueKind.True or JsonValueKind.False, []);
    private static readonly ValueKind Text = new("a text", e => e.SafeText() is not null, []);

    public static ValueKind Of(Type type, bool volts) =>
        type == typeof(int) || type == typeof(long) ? Whole
        : type == typeof(decimal) ? volts ? VoltNumber : Number
        : type == typeof(bool) ? Flag
        : type.IsEnum ? OneOf(WordsOf(type))
        : Text;

    /// <summary>What was probably meant by a word that is not one of ours; empty where nothing is near.</summary>
    public string Hint(JsonElement element) =>
        element.SafeText() is { } text && NearestName.Of(text, Words) is { } nearest ? $" Did you mean \"{nearest}\"?" : "";

    private static ValueKind OneOf(IReadOnlyList<string> words) =>
        new(string.Join(" or ", words.Select(word => $"\"{word}\"")), e => e.SafeText() is { } text && words.Contains(text), words);

    private static IReadOnlyList<string> WordsOf(Type type) => [.. Enum.GetNames(type).Select(JsonNamingPolicy.CamelCase.ConvertName)];

    private static bool IsVolts(JsonElement element) =>
        element.ValueKind == JsonValueKind.Number && element.TryGetDecimal(out var volts) && decimal.Round(volts, 3) == volts && Math.Abs(volts) < 1_000_000;
}
