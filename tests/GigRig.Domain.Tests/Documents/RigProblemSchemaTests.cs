using System.Text.Json.Nodes;
using GigRig.Domain.Documents;

namespace GigRig.Domain.Tests.Documents;

public sealed class RigProblemSchemaTests
{
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

    private static IEnumerable<JsonNode> Nodes(JsonNode node) => node switch
    {
        JsonObject members => members.Select(member => member.Value).OfType<JsonNode>().SelectMany(Nodes).Prepend(node),
        JsonArray items => items.OfType<JsonNode>().SelectMany(Nodes).Prepend(node),
        _ => [node],
    };
}
