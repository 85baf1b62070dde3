using System.Net;
using CsCheck;
using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.Web.Drawing;
using GigRig.Web.Handouts;
using GigRig.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Xunit;

namespace GigRig.Web.Tests.Features.Share;

public sealed class SharedRigPageTests : IClassFixture<TestApp>
{
    private static readonly RigProblem Problem = A.Draft(A.Board(460, 140) with { Name = "Small board" })
        .With(
            A.Device("tuner").Sized(45, 101).Doing("tuner").Drawing(30) with { Name = "Pocket tuner" },
            A.Device("echo").Sized(70, 120).Doing("delay").Drawing(60) with { Name = "Hall echo" },
            A.Device("spare").Doing("pitch") with { Name = "Box at home" })
        .FedBy(A.Outlet("1"), A.Outlet("2"))
        .Through(A.Amp() with { Name = "Club amp" })
        .Needing("tuner").Wanting("delay")
        .Problem();

    private static readonly Rig Rig = A.Rig().Placing("tuner", 300, 10).Placing("echo", 100, 10).Feeding("tuner", "1").Feeding("echo", "2");

    private readonly TestApp app;
    private readonly HttpClient visitor;

    public SharedRigPageTests(TestApp app) => (this.app, visitor) = (app, app.CreateClient());

    private const string Mark = "-NOBODYS-BUSINESS";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_tells_band_and_engineer_all_of_the_rig()
    {
        var page = await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync()), Cancel);

        Assert.All(
            ["Friday at the quay", "Small board", "Pocket tuner", "Hall echo", "outlet 2", "9 V", "amp input", "Club amp", "Never lift or cut the protective earth", "instrument lead"],
            words => Assert.Contains(words, page));
    }

    [Fact]
    public async Task It_keeps_note_and_gear_at_home_to_the_owner()
    {
        var page = await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync()), Cancel);

        Assert.DoesNotContain("sell it", page);
        Assert.DoesNotContain("Box at home", page);
    }

    [Fact]
    public async Task It_needs_no_script_opens_no_circuit_sets_no_cookie_and_offers_nothing_to_press()
    {
        using var response = await visitor.GetAsync(GigRigUrls.Shared(await ShareAsync()), Cancel);
        var page = await response.Content.ReadAsStringAsync(Cancel);

        Assert.All(["<script", "_blazor", "<!--Blazor:", "<form", "<button", "<input", "<a "], part => Assert.DoesNotContain(part, page));
        Assert.False(response.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("GET", "/s/mistyped", 404)]
    [InlineData("GET", "/s/", 404)]
    [InlineData("GET", "/S/mistyped/picture.png", 404)]
    [InlineData("GET", "/s/no/such/address", 404)]
    [InlineData("HEAD", "/s/mistyped", 404)]
    [InlineData("POST", "/s/mistyped", 405)]
    [InlineData("DELETE", "/s/mistyped/picture.png", 405)]
    public async Task No_address_like_it_is_kept_indexed_passed_on_or_leads_into_the_app(string method, string address, int status)
    {
        using var response = await visitor.SendAsync(new(new(method), address), Cancel);

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("no-store", response.Headers.CacheControl!.ToString());
        Assert.Equal("noindex, nofollow", Assert.Single(response.Headers.GetValues("X-Robots-Tag")));
        Assert.Equal("no-referrer", Assert.Single(response.Headers.GetValues("Referrer-Policy")));
        Assert.StartsWith("default-src 'none'", Assert.Single(response.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.False(response.Headers.Contains("Set-Cookie"));
        var page = await response.Content.ReadAsStringAsync(Cancel);
        Assert.DoesNotContain("<a ", page);
        Assert.DoesNotContain("<!--Blazor:", page);
    }

    [Fact]
    public async Task Its_head_alone_can_be_asked_for()
    {
        using var head = await visitor.SendAsync(new(HttpMethod.Head, GigRigUrls.Shared(await ShareAsync())), Cancel);

        Assert.Equal((HttpStatusCode.OK, "text/html"), (head.StatusCode, head.Content.Headers.ContentType!.MediaType));
    }

    [Fact]
    public Task Any_saved_rig_can_be_shown_and_what_stays_at_home_or_is_noted_is_not_in_it() => AnyRig.Problem.SelectMany(AnyRig.Of, (problem, rig) => (problem, rig)).SampleAsync(
        async any =>
        {
            // Ids, note and what is left at home carry a mark that nothing else has.
            var left = any.problem.Devices.Skip(2).Select(device => device.Id).ToHashSet();
            var problem = (any.problem.Draft with
            {
                Devices = any.problem.Devices.Select(device => left.Contains(device.Id) ? device with { Name = "Stays" + Mark } : device).ToValueList(),
            }).Problem();
            var rig = any.rig with
            {
                Placements = any.rig.Placements.Where(placement => !left.Contains(placement.Id)).ToValueList(),
                HookUp = any.rig.HookUp.Where(feed => !left.Contains(feed.Device)).ToValueList(),
                Chain = new([.. any.rig.Chain.Front.Where(id => !left.Contains(id))], [.. any.rig.Chain.Loop.Where(id => !left.Contains(id))]),
                Silenced = any.rig.Silenced.Select(silenced => silenced with { Note = "Advice" + Mark }).ToValueList(),
            };
            var saved = await app.Services.GetRequiredService<RigStore>().AddAsync("Any", "Note" + Mark, problem, rig, Cancel);
            var shown = await app.Services.GetRequiredService<ShareLinkStore>().ShowAsync(saved.Id, new(Places: true), cancel: Cancel);

            await using var scope = app.Services.CreateAsyncScope();
            await using var renderer = new HtmlRenderer(scope.ServiceProvider, NullLoggerFactory.Instance);
            var page = await renderer.Dispatcher.InvokeAsync(async () =>
                (await renderer.RenderComponentAsync<HandoutDocument>(ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(HandoutDocument.Rig)] = shown }))).ToHtmlString());

            Assert.DoesNotContain(Mark, page);
            Assert.NotEmpty(ScenePicture.Png(BoardSceneMapper.Map(shown!.Problem, shown.Rig, PictureWidth.Narrow, shown.Unit)));
        },
        iter: 40,
        threads: 1);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Its_address_is_not_kept_indexed_or_passed_on_and_its_policy_is_the_tightest(bool known)
    {
        using var response = await visitor.GetAsync(GigRigUrls.Shared(known ? await ShareAsync() : "no-such-token"), Cancel);

        Assert.Equal("no-store", response.Headers.CacheControl!.ToString());
        Assert.Equal("noindex, nofollow", Header("X-Robots-Tag"));
        Assert.Equal("no-referrer", Header("Referrer-Policy"));
        var policy = Header("Content-Security-Policy");
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy);
        Assert.DoesNotContain("unsafe", policy);

        string Header(string name) => Assert.Single(response.Headers.GetValues(name));
    }

    [Fact]
    public async Task A_revoked_link_and_an_unknown_one_cannot_be_told_apart()
    {
        var token = await ShareAsync();
        var links = app.Services.GetRequiredService<ShareLinkStore>();
        var rig = (await app.Services.GetRequiredService<RigStore>().AllAsync(Cancel))[0];
        foreach (var link in await links.ForRigAsync(rig.Id, Cancel))
            await links.RevokeAsync(link.Id, Cancel);

        using var revoked = await visitor.GetAsync(GigRigUrls.Shared(token), Cancel);
        using var unknown = await visitor.GetAsync(GigRigUrls.Shared(new string('A', token.Length)), Cancel);
        using var malformed = await visitor.GetAsync(GigRigUrls.Shared("x%2F..%3Cscript%3E"), Cancel);

        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.NotFound, HttpStatusCode.NotFound), (revoked.StatusCode, unknown.StatusCode, malformed.StatusCode));
        var body = await revoked.Content.ReadAsStringAsync(Cancel);
        Assert.Contains("no longer shares the rig", body);
        Assert.Equal(body, await unknown.Content.ReadAsStringAsync(Cancel));
    }

    [Fact]
    public async Task Its_head_tells_a_chat_preview_what_it_is_and_names_a_picture_by_its_whole_address()
    {
        var token = await ShareAsync();
        var page = await visitor.GetStringAsync(GigRigUrls.Shared(token), Cancel);

        Assert.Contains("<title>Friday at the quay · Fit for the Gig</title>", page);
        Assert.Contains("""property="og:title" content="Friday at the quay" """.TrimEnd(), page);
        Assert.Contains("""property="og:description" content="night on Small board: Pocket tuner, Hall echo." """.TrimEnd(), page);
        Assert.Contains($"""property="og:image" content="http://localhost{GigRigUrls.SharedPicture(token)}" """.TrimEnd(), page);
    }

    [Fact]
    public async Task Its_picture_is_for_the_holder_of_the_link_alone()
    {
        var token = await ShareAsync();
        using var picture = await visitor.GetAsync(GigRigUrls.SharedPicture(token), Cancel);
        using var unknown = await visitor.GetAsync(GigRigUrls.SharedPicture(new string('A', token.Length)), Cancel);

        Assert.Equal("image/png", picture.Content.Headers.ContentType!.MediaType);
        Assert.Equal("no-cache, private", picture.Headers.CacheControl!.ToString());
        Assert.Equal("noindex, nofollow", Assert.Single(picture.Headers.GetValues("X-Robots-Tag")));
        Assert.Equal("no-referrer", Assert.Single(picture.Headers.GetValues("Referrer-Policy")));
        Assert.Equal(HttpStatusCode.NotFound, unknown.StatusCode);
    }

    [Fact]
    public async Task Notes_values_and_places_are_on_it_where_they_were_ticked()
    {
        var told = await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync(new(Notes: true, Values: true, Places: true, Unit: LengthUnit.Inches))), Cancel);

        Assert.Contains("sell it", told);
        Assert.Contains("11.81 in", told);
        Assert.Contains("250.00", told);
        Assert.Contains("crackles", told);
        Assert.DoesNotContain(" mm", told);
    }

    [Fact]
    public async Task Nothing_can_be_posted_to_it()
    {
        using var response = await visitor.PostAsync(GigRigUrls.Shared(await ShareAsync()), new FormUrlEncodedContent([]), Cancel);

        Assert.False(response.IsSuccessStatusCode);
    }

    [Fact]
    public async Task A_rig_that_breaks_rules_says_so_to_whoever_reads_it()
    {
        Assert.DoesNotContain("Not ready to build", await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync()), Cancel));

        var page = await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync(rig: Rig with { HookUp = [] })), Cancel);

        Assert.Contains("Not ready to build: 2 rules are broken.", page);
        Assert.Contains("Hall echo needs 60 mA and is not hooked up.", page);
    }

    [Fact]
    public async Task What_is_broken_is_said_in_the_unit_of_the_link()
    {
        var page = await visitor.GetStringAsync(GigRigUrls.Shared(await ShareAsync(new(Unit: LengthUnit.Inches), A.Rig().Placing("tuner", 418, 10))), Cancel);

        // 3, 460 and 140 mm at 25.4 mm an inch.
        Assert.Contains("Pocket tuner sticks out 0.12 in over the right edge of the 18.11 in by 5.51 in board.", page);
        Assert.DoesNotContain(" mm", page);
    }

    private async Task<string> ShareAsync(LinkContent? content = null, Rig? rig = null)
    {
        var owned = await app.Services.GetRequiredService<GearStore>().AddAsync(A.Device("owned") with { Name = "Worn phaser" }, new(Note: "crackles", ValueCents: 25_000), Cancel);
        var problem = (Problem.Draft with { Devices = [.. Problem.Devices, owned.Item.Thing] }).Problem();
        var saved = await app.Services.GetRequiredService<RigStore>().AddAsync("Friday at the quay", "sell it", problem, content is null ? rig ?? Rig : (rig ?? Rig).Placing(owned.Item.Thing.Id.Value, 0, 0), Cancel);
        return await app.Services.GetRequiredService<ShareLinkStore>().CreateAsync(saved.Id, new("band", Content: content), Cancel);
    }
}
