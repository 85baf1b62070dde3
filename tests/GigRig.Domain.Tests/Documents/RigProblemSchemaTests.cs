using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Generating;
using Json.Schema;

namespace GigRig.Domain.Tests.Documents;

public sealed class RigProblemSchemaTests
{
    private static readonly JsonSchema Independent = JsonSchema.FromText(RigProblemSchema.Text);

    private static readonly JsonNode Schema = JsonNode.Parse(RigProblemSchema.Text)!;

    [Fact]
    public void It_names_its_draft_and_the_format()
    {
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", (string?)Schema["$schema"]);
        Assert.Equal("rig-problem/1", (string?)Schema["properties"]!["format"]!["const"]);
    }

    [Fact]
    public void It_asks_for_what_the_reader_asks_for() =>
        Assert.Equal(["format", "board", "event"], Schema["required"]!.AsArray().Select(name => (string)name!));

    [Fact]
    public void No_object_may_have_members_of_other_names()
    {
        var objects = Nodes(Schema).OfType<JsonObject>().Where(node => node["properties"] is JsonObject && node["type"] is not null).ToList();
        Assert.True(objects.Count > 15, $"{objects.Count} objects");
        Assert.All(objects, node => Assert.False((bool)node["additionalProperties"]!));
    }

    [Fact]
    public void It_bounds_numbers_texts_and_lists()
    {
        var board = Schema["properties"]!["board"]!["properties"]!;
        Assert.Equal((1, 3000), ((int)board["width"]!["minimum"]!, (int)board["width"]!["maximum"]!));
        Assert.Equal(200, (int)board["name"]!["maxLength"]!);
        Assert.Equal(1000, (int)Schema["properties"]!["devices"]!["maxItems"]!);
        var volts = Schema["properties"]!["supply"]!["properties"]!["outlets"]!["items"]!["properties"]!["volts"]!;
        Assert.Equal(("0.1", "60", "0.001", 1), (volts["items"]!["minimum"]!.ToJsonString(), volts["items"]!["maximum"]!.ToJsonString(), volts["items"]!["multipleOf"]!.ToJsonString(), (int)volts["minItems"]!));
    }

    [Fact]
    public void It_lists_the_words_of_each_choice() =>
        Assert.Equal(["under", "top", "off"], Schema["properties"]!["supply"]!["properties"]!["mount"]!["enum"]!.AsArray().Select(word => (string)word!));

    [Fact]
    public void Another_reader_of_the_schema_accepts_the_example_and_whatever_is_written()
    {
        Assert.True(Holds(RigProblemJsonTests.Example()));
        GenProblem.Small.Sample(problem => Holds(RigProblemJson.Write(problem)), iter: 200);
    }

    [Theory]
    [InlineData("\"width\": 460", "\"width\": 4600")]
    [InlineData("\"width\": 460", "\"width\": 46.5")]
    [InlineData("\"width\": 460", "\"widht\": 460")]
    [InlineData("\"mount\": \"under\"", "\"mount\": \"below\"")]
    [InlineData("\"volts\": [9]", "\"volts\": []")]
    [InlineData("\"max\": 12.5", "\"max\": 61")]
    [InlineData("\"rating\": 5", "\"rating\": 6")]
    [InlineData("\"turns\": [0, 180]", "\"turns\": [0, 45]")]
    [InlineData("\"role\": \"delay\"", "\"role\": \"delay..slap\"")]
    [InlineData("\"roles\": [\"drive\"", "\"roles\": [\"Drive\"")]
    [InlineData("rig-problem/1", "rig-problem/2")]
    public void What_the_reader_refuses_for_its_shape_or_its_range_another_reader_of_the_schema_refuses_too(string sound, string spoilt)
    {
        var json = RigProblemJsonTests.Example().Replace(sound, spoilt, StringComparison.Ordinal);
        Assert.IsType<ProblemCheck.Refused>(RigProblemJson.Read(json));
        Assert.False(Holds(json));
    }

    [Fact]
    public void Whatever_is_changed_about_a_document_the_schema_is_never_stricter_than_the_reader() => Changed.Sample(
        json => RigProblemJson.Read(json) is ProblemCheck.Refused || Holds(json),
        iter: 2000);

    private static readonly string[] Values =
    [
        "null", "0", "-1", "1", "2", "4", "5", "0.5", "0.001", "0.0001", "60", "60.001", "90", "270", "3000", "3001", "100001", "2147483647", "2147483648", "true", "[]", "[1]", "{}",
        "\"\"", "\"x\"", "\" a\"", "\"drive.low\"", "\"a..b\"", "\"off\"", "\"line\"", $"\"{new string('x', 200)}\"", $"\"{new string('x', 201)}\"", "[\"a\"]", "[9, 9]",
    ];

    // One value of the example replaced, or one member taken out.
    private static Gen<string> Changed { get; } =
        from at in Gen.Int[0, 10_000]
        from which in Gen.Int[0, Values.Length]
        select Change(at, which < Values.Length ? Values[which] : "");

    private static string Change(int at, string value)
    {
        var root = JsonNode.Parse(RigProblemJsonTests.Example())!;
        var nodes = Nodes(root).Where(node => node.Parent is not null).ToList();
        var node = nodes[at % nodes.Count];
        if (value.Length > 0)
            node.ReplaceWith(JsonNode.Parse(value));
        else if (node.Parent is JsonObject members)
            members.Remove(node.GetPropertyName());
        return root.ToJsonString();
    }

    private static bool Holds(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Independent.Evaluate(document.RootElement).IsValid;
    }

    // Without the null values, which are no nodes.
    private static IEnumerable<JsonNode> Nodes(JsonNode node) => node switch
    {
        JsonObject members => members.Select(member => member.Value).OfType<JsonNode>().SelectMany(Nodes).Prepend(node),
        JsonArray items => items.OfType<JsonNode>().SelectMany(Nodes).Prepend(node),
        _ => [node],
    };
}
