using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;
using GigRig.Domain.Documents;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Planning;
using GigRig.TestKit.Building;
using GigRig.Web.Tests.Hosting;
using Json.Schema;
using Xunit;

namespace GigRig.Web.Tests.Api;

public sealed class ApiDocumentsTests(TestApp app) : IClassFixture<TestApp>
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 140).Railed(0, 60).KeepingOut(0, 0, 10, 10))
        .With(
            A.Device("tuner").Sized(45, 101).Doing("tuner").Drawing(30).WithAudioJacks().WithJack(JackUse.Power, Side.Rear, 20).WithSwitch(20, 20),
            A.Device("echo").Sized(70, 60).DoingOneOf("engine", "delay", "reverb").Drawing(180).OnBatteryToo())
        .With(A.OffBoard("clip").Doing("tuner"))
        .FedBy(A.Supply(A.Outlet("1"), A.Outlet("2").Sharing("a")).Mounted(SupplyMount.Under, 100, 50, 30))
        .OwningAdapters(parallel: 1)
        .Through(A.Amp().Looped().WithChannels("clean", "drive.high"))
        .Needing("tuner").Wanting("delay", 20).WantingSound("Solo", 5, "drive", "reverb").Limited(mass: 30_000, devices: 6, freeArea: 5)
        .Problem();

    private readonly HttpClient client = app.CreateClient();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_published_schema_accepts_what_the_planner_accepts() =>
        Assert.True(await FitsSchemaAsync(RigProblemJson.Write(Problem)));

    [Theory]
    [InlineData("""{ "format": "rig-problem/1", "board": { "width": 100, "depth": 100 } }""")]
    [InlineData("""{ "format": "rig-problem/1", "board": { "width": 0, "depth": 100 }, "event": { "name": "night" } }""")]
    [InlineData("""{ "format": "rig-problem/1", "board": { "width": 100, "depth": 100, "colour": "red" }, "event": { "name": "night" } }""")]
    [InlineData("""{ "format": "rig-problem/2", "board": { "width": 100, "depth": 100 }, "event": { "name": "night" } }""")]
    public async Task The_published_schema_refuses_what_the_planner_refuses(string problem)
    {
        Assert.False(await FitsSchemaAsync(problem));
        Assert.IsType<ProblemCheck.Refused>(RigProblemJson.Read(problem));
    }

    [Fact]
    public async Task The_description_names_both_addresses_and_both_documents()
    {
        var description = await DescriptionAsync();

        Assert.StartsWith("3.1", (string?)description["openapi"], StringComparison.Ordinal);
        var plan = description["paths"]![GigRigUrls.ApiPlan]!["post"]!;
        Assert.Equal("#/components/schemas/RigProblemDocument", (string?)plan["requestBody"]!["content"]!["application/json"]!["schema"]!["$ref"]);
        Assert.Equal("#/components/schemas/RigOutcomeDocument", (string?)plan["responses"]!["200"]!["content"]!["application/json"]!["schema"]!["$ref"]);
        Assert.Equal(["200", "400", "413", "415", "503"], plan["responses"]!.AsObject().Select(response => response.Key).Order(StringComparer.Ordinal));
        Assert.NotNull(description["paths"]![GigRigUrls.ApiSchema]!["get"]);
        Assert.DoesNotContain(description["paths"]!.AsObject(), path => !GigRigUrls.IsApi(path.Key));
    }

    [Fact]
    public async Task An_outcome_fits_its_description()
    {
        var outcomes = new[]
        {
            await new RigPlanner().PlanAsync(Problem, cancel: Cancel),
            await new RigPlanner().PlanAsync(A.Draft().Needing("tuner").Problem(), cancel: Cancel),
            new PlanOutcome.Undecided(10, TimeSpan.FromSeconds(1)),
        };
        var schema = await SchemaOfAsync(nameof(RigOutcomeDocument));

        Assert.IsType<PlanOutcome.Proposed>(outcomes[0]);
        Assert.IsType<PlanOutcome.Impossible>(outcomes[1]);
        Assert.All(outcomes, outcome => Assert.True(Fits(schema, RigOutcomeJson.Write(outcome, Problem))));
        Assert.False(Fits(schema, """{ "format": "rig-outcome/1", "status": "perhaps", "proven": false, "elapsedMs": 1 }"""));
    }

    private static bool Fits(JsonSchema schema, string text) => schema.Evaluate(JsonDocument.Parse(text).RootElement).IsValid;

    private async Task<bool> FitsSchemaAsync(string problem) =>
        Fits(JsonSchema.FromText(await client.GetStringAsync(GigRigUrls.ApiSchema, Cancel)), problem);

    private async Task<JsonNode> DescriptionAsync() => (await client.GetFromJsonAsync<JsonNode>(GigRigUrls.OpenApi, Cancel))!;

    /// <summary>OpenAPI 3.1 schemas are JSON Schemas; only the place of the shared ones differs.</summary>
    private async Task<JsonSchema> SchemaOfAsync(string name)
    {
        var definitions = (await DescriptionAsync())["components"]!["schemas"]!.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
        return JsonSchema.FromText($$"""{ "$schema": "https://json-schema.org/draft/2020-12/schema", "$ref": "#/$defs/{{name}}", "$defs": {{definitions}} }""");
    }
}
