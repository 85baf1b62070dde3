using System.Text.Json;
using System.Text.Json.Serialization;
using GigRig.Domain.Documents;

namespace GigRig.Data.Files;

/// <summary>
/// Writes a part on one line. A saved rig holds all gear it was planned from; with each number on a line of its own, those rigs would be most of the
/// file, and less than half as many would go into one that can be read back.
/// </summary>
internal sealed class OneLine<T> : JsonConverter<T>
{
    public override T? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        JsonSerializer.Deserialize<T>(ref reader, DocumentJson.Compact);

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        writer.WriteRawValue(JsonSerializer.SerializeToUtf8Bytes(value, DocumentJson.Compact), skipInputValidation: true);
}
