using System.Text.Json;
using System.Text.Json.Serialization;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>A rig and its problem as text. The only place that knows how.</summary>
internal static class RigText
{
    private static readonly JsonSerializerOptions Options = new()
    {
        Converters =
        {
            new JsonStringEnumConverter(),
            new Whole<Millimetres>(v => v.Value, Millimetres.From),
            new Whole<Milliamps>(v => v.Value, Milliamps.From),
            new Whole<Millivolts>(v => v.Value, Millivolts.From),
            new Whole<Grams>(v => v.Value, Grams.From),
            new Lists(),
        },
    };

    public static string Write(RigProblem problem) => JsonSerializer.Serialize(problem.Draft, Options);

    public static string Write(Rig rig) => JsonSerializer.Serialize(rig, Options);

    public static RigProblem ReadProblem(string json, string title) =>
        RigProblem.Create(JsonSerializer.Deserialize<RigProblemDraft>(json, Options)!) is ProblemCheck.Accepted accepted
            ? accepted.Problem
            : throw new InvalidOperationException($"The {title} can't be read.");

    public static Rig ReadRig(string json, string title) =>
        JsonSerializer.Deserialize<Rig>(json, Options) ?? throw new InvalidOperationException($"The {title} can't be read.");

    private sealed class Whole<T>(Func<T, int> value, Func<int, T> from) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => from(reader.GetInt32());

        public override void Write(Utf8JsonWriter writer, T item, JsonSerializerOptions options) => writer.WriteNumberValue(value(item));
    }

    private sealed class Lists : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) => typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(ValueList<>);

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

        private sealed class Of<T> : JsonConverter<ValueList<T>>
        {
            public override ValueList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
                JsonSerializer.Deserialize<T[]>(ref reader, options)!.ToValueList();

            public override void Write(Utf8JsonWriter writer, ValueList<T> item, JsonSerializerOptions options) =>
                JsonSerializer.Serialize(writer, item.ToArray(), options);
        }
    }
}
