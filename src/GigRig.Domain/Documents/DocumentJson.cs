using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace GigRig.Domain.Documents;

/// <summary>How every document of ours is written as JSON: camel case, words for enums, nothing for what is absent.</summary>
public static class DocumentJson
{
    /// <summary>Levels of nesting. The deepest of our documents has seven.</summary>
    public const int MaxDepth = 32;

    /// <summary>For one line.</summary>
    public static JsonSerializerOptions Compact { get; } = Make(indented: false);

    /// <summary>For people.</summary>
    public static JsonSerializerOptions Indented { get; } = Make(indented: true);

    private static JsonSerializerOptions Make(bool indented)
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            // Names may hold any letter; the text is never put into HTML unescaped.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            WriteIndented = indented,
            MaxDepth = MaxDepth,
            RespectNullableAnnotations = true,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
            TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        };
        options.MakeReadOnly();
        return options;
    }
}
