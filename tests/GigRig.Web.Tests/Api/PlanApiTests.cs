using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Api;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Api;

public sealed class PlanApiTests(TestApp app) : IClassFixture<TestApp>
{
    private readonly HttpClient client = app.CreateClient();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_problem_is_answered_with_a_proved_rig()
    {
        var problem = A.Draft(A.Board(200, 120)).With(A.Device("tuner").Doing("tuner"), A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"))
            .Needing("tuner").Wanting("delay", 20).Wanting("reverb", 10).Problem();

        var outcome = await PlanAsync(RigProblemJson.Write(problem));

        Assert.Equal(("rig-outcome/1", "proposed", true), ((string?)outcome["format"], (string?)outcome["status"], (bool)outcome["proven"]!));
        Assert.Equal(20, (long)outcome["score"]!["wants"]!);
        Assert.Equal(["echo", "tuner"], outcome["chosen"]!.AsArray().Select(chosen => (string)chosen!["id"]!).Order());
        Assert.Equal("reverb", (string?)outcome["uncovered"]![0]!["role"]);
    }

    [Fact]
    public async Task A_problem_without_an_answer_is_proved_impossible_with_the_reason()
    {
        var outcome = await PlanAsync("""{ "format": "rig-problem/1", "board": { "width": 100, "depth": 100 }, "event": { "name": "night", "needs": [{ "role": "tuner", "level": "must" }] } }""");

        Assert.Equal("impossible", (string?)outcome["status"]);
        Assert.Contains("Tuner", (string?)outcome["conflict"]![0]!["sentence"]);
    }

    [Fact]
    public async Task Every_fault_is_named_at_once_with_pointer_value_and_limit()
    {
        using var response = await SendAsync("""{ "format": "rig-problem/1", "board": { "width": 0, "depth": 100 }, "devices": [{ "id": "a", "width": 9999, "depth": 50 }], "event": { "name": "night", "need": [] } }""");
        var refused = (await response.Content.ReadFromJsonAsync<RefusedProblem>(Cancel))!;

        Assert.Equal((HttpStatusCode.BadRequest, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.Equal("urn:fit-for-the-gig:problem-refused", refused.Type);
        Assert.Equal(["/board/width", "/devices/0/width", "/event/need"], refused.Errors.Select(error => error.Pointer).Order());
        var width = refused.Errors.Single(error => error.Pointer == "/devices/0/width");
        Assert.Equal("9999", width.Value);
        Assert.Contains("3000", width.Limit);
        Assert.Contains("9999", width.Detail);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[1, 2]")]
    [InlineData("""{ "format": "rig-problem/2" }""")]
    public async Task What_is_not_such_a_document_is_refused_as_one(string body)
    {
        using var response = await SendAsync(body);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.NotEmpty((await response.Content.ReadFromJsonAsync<RefusedProblem>(Cancel))!.Errors);
    }

    [Fact]
    public async Task A_body_beyond_the_limit_is_refused_unread()
    {
        using var response = await SendAsync(new string(' ', BoundedBody.Most + 1));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.Equal("urn:fit-for-the-gig:too-large", await TypeAsync(response));
    }

    [Fact]
    public async Task Only_JSON_is_taken_so_that_a_form_of_another_site_gets_nowhere()
    {
        using var form = new FormUrlEncodedContent([new("format", "rig-problem/1")]);
        using var response = await client.PostAsync(GigRigUrls.ApiPlan, form, Cancel);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_page_of_another_site_is_turned_away()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, GigRigUrls.ApiPlan) { Content = Json("{}") };
        request.Headers.Add("Origin", "https://elsewhere.example");
        using var response = await client.SendAsync(request, Cancel);

        Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
        Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("HEAD")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public async Task Anything_but_POST_is_told_so(string method)
    {
        using var response = await client.SendAsync(new(new(method), GigRigUrls.ApiPlan), Cancel);

        Assert.Equal((HttpStatusCode.MethodNotAllowed, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType!.MediaType));
        Assert.Contains("POST", response.Content.Headers.Allow);
    }

    [Fact]
    public async Task An_address_of_the_API_that_does_not_exist_answers_with_a_document_not_a_page()
    {
        using var response = await client.GetAsync(GigRigUrls.ApiPlan + "/nothing", Cancel);

        Assert.Equal((HttpStatusCode.NotFound, "application/problem+json"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType));
    }

    [Fact]
    public async Task The_example_of_the_guide_gets_an_answer()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "GigRig.sln")))
            folder = folder.Parent;
        var guide = await File.ReadAllTextAsync(Path.Combine(folder.FullName, "docs", "http-api.md"), Cancel);
        var example = guide.Split("```json")[1].Split("```")[0];

        var outcome = await PlanAsync(example);

        Assert.Equal(("proposed", 20), ((string?)outcome["status"], (int)outcome["score"]!["wants"]!));
    }

    [Fact]
    public async Task The_time_limit_of_the_problem_is_kept()
    {
        // Thirty different boxes, a small board: too many sets to go through in a millisecond.
        var devices = Enumerable.Range(1, 30).Select(i => A.Device($"d{i}").Sized(40 + i, 60 + (i * 7 % 50)).Doing($"role-{i}")).ToArray();
        var draft = Enumerable.Range(1, 30).Aggregate(A.Draft(A.Board(500, 200)).With(devices), (d, i) => d.Wanting($"role-{i}", 10 + (i * 13 % 17)));
        var problem = (draft with { Options = PlanOptions.Default with { TimeLimit = TimeSpan.FromMilliseconds(50) } }).Problem();

        var outcome = await PlanAsync(RigProblemJson.Write(problem));

        Assert.InRange((long)outcome["elapsedMs"]!, 0, 5_000);
    }

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");

    private static async Task<string?> TypeAsync(HttpResponseMessage response) => (string?)(await response.Content.ReadFromJsonAsync<JsonNode>(Cancel))!["type"];

    private Task<HttpResponseMessage> SendAsync(string body) => client.PostAsync(GigRigUrls.ApiPlan, Json(body), Cancel);

    private async Task<JsonNode> PlanAsync(string body)
    {
        using var response = await SendAsync(body);
        var text = await response.Content.ReadAsStringAsync(Cancel);
        Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        return JsonNode.Parse(text)!;
    }
}
