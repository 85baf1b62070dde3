using System.Text.Json;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Reading;

/// <summary>Reads a document strictly: no unknown, doubled or missing member, no wrong kind of value, nothing nested too deep.</summary>
internal static class DocumentReader
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = DocumentJson.MaxDepth };

    /// <summary>The document where it could be read, with the complaints about it; there may be both.</summary>
    /// <param name="parse">Gets the text parsed.</param>
    /// <param name="formatWord">What the member <c>format</c> must say.</param>
    public static (TDocument? Document, CheckList List) Read<TDocument>(Func<JsonDocumentOptions, JsonDocument> parse, string formatWord)
        where TDocument : class
    {
        var list = new CheckList();
        try
        {
            using var json = parse(Strict);
            return (ReadRoot<TDocument>(json.RootElement, formatWord, list), list);
        }
        catch (JsonException fault)
        {
            var where = $"line {fault.LineNumber + 1 ?? 1}, byte {fault.BytePositionInLine + 1 ?? 1}";
            list.Add("", where, $"JSON of at most {DocumentJson.MaxDepth} levels", $"The text is not JSON, or nests deeper than {DocumentJson.MaxDepth} levels, at {where}.");
            return (null, list);
        }
    }

    private static TDocument? ReadRoot<TDocument>(JsonElement root, string formatWord, CheckList list)
        where TDocument : class
    {
        if (root.ValueKind == JsonValueKind.Object && root.TryGetProperty("format", out var format) && format.SafeText() is { } word && word != formatWord)
        {
            list.Add("/format", $"\"{word.Shortened()}\"", $"\"{formatWord}\"", $"/format is \"{word.Shortened()}\"; only \"{formatWord}\" can be read.");
            return null;
        }

        var shape = new ShapeCheck(list);
        shape.Check(root, typeof(TDocument), "");
        return shape.Readable ? root.Deserialize<TDocument>(DocumentJson.Compact) : null;
    }
}
