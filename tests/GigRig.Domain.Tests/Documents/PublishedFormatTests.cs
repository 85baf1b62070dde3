using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Tests.Documents;

/// <summary>What <c>docs/problem-format.md</c> shows is what the reader reads.</summary>
public sealed class PublishedFormatTests
{
    private static readonly string Document = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "problem-format.md"));

    [Fact]
    public void The_example_in_the_document_is_the_instance_that_is_tested()
    {
        var shown = Regex.Match(Document, "```json\n(.+?)```", RegexOptions.Singleline).Groups[1].Value;
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(RigProblemJsonTests.Example()), JsonNode.Parse(shown)));
        Assert.IsType<ProblemCheck.Accepted>(RigProblemJson.Read(shown));
    }

    [Fact]
    public void The_document_names_every_member_of_the_problem() =>
        Assert.All(MembersOf(JsonNode.Parse(RigProblemSchema.Text)!), name => Assert.Matches($@"[`{{ ]{name}[`,:}} ]", Document));

    [Theory]
    [InlineData(typeof(RigOutcomeDocument), "problem-format.md")]
    [InlineData(typeof(RigDocument), "file-format.md")]
    public void The_documents_name_every_member_of_the_outcome_and_of_a_rig(Type document, string file)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", file));

        Assert.All(MembersOf(document).Distinct(), name => Assert.Matches($@"[`{{ ]{name}[`,:}} ]", text));
    }

    private static IEnumerable<string> MembersOf(Type type)
    {
        var info = DocumentJson.Compact.GetTypeInfo(type);
        return info.Kind switch
        {
            JsonTypeInfoKind.Object => info.Properties.SelectMany(property => MembersOf(property.PropertyType).Prepend(property.Name)),
            JsonTypeInfoKind.Enumerable => MembersOf(info.ElementType!),
            _ => [],
        };
    }

    private static IEnumerable<string> MembersOf(JsonNode node) => node switch
    {
        JsonObject schema => (schema["properties"] as JsonObject ?? []).Select(member => member.Key)
            .Concat(schema.Select(member => member.Value).OfType<JsonNode>().SelectMany(MembersOf)).Distinct(),
        JsonArray items => items.OfType<JsonNode>().SelectMany(MembersOf),
        _ => [],
    };
}
