using System.Net;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

public sealed class SecurityHeadersTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(GigRigUrls.Home)]
    [InlineData(GigRigUrls.HealthLive)]
    [InlineData("css/app.css")]
    [InlineData("no-such-page")]
    public async Task Every_answer_limits_what_a_page_may_do(string url)
    {
        using var client = app.CreateClient();
        var headers = (await client.GetAsync(url, Cancel)).Headers;

        var policy = Assert.Single(headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy);
        Assert.Contains("frame-ancestors 'none'", policy);
        Assert.Contains("object-src 'none'", policy);
        Assert.Equal("nosniff", Assert.Single(headers.GetValues("X-Content-Type-Options")));
    }

    [Fact]
    public async Task No_page_has_a_script_of_its_own_in_it_that_the_policy_would_block()
    {
        using var client = app.CreateClient();
        var html = await client.GetStringAsync(GigRigUrls.Home, Cancel);

        Assert.DoesNotMatch(@"<script(?![^>]*\bsrc=)", html);
        Assert.DoesNotMatch(@"\son[a-z]+=""", html);
    }

    [Fact]
    public async Task A_shared_page_may_run_no_script_at_all()
    {
        using var client = app.CreateClient();
        var headers = (await client.GetAsync(GigRigUrls.Shared("no-such-token"), Cancel)).Headers;

        Assert.StartsWith("default-src 'none'", Assert.Single(headers.GetValues("Content-Security-Policy")));
        Assert.Equal("no-referrer", Assert.Single(headers.GetValues("Referrer-Policy")));
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("http://localhost:9999")]
    [InlineData("null")]
    public async Task The_socket_and_forms_answer_to_our_own_pages_alone(string origin)
    {
        using var client = app.CreateClient();
        using var negotiate = new HttpRequestMessage(HttpMethod.Post, "_blazor/negotiate?negotiateVersion=1");
        negotiate.Headers.Add("Origin", origin);

        Assert.Equal(HttpStatusCode.Forbidden, (await client.SendAsync(negotiate, Cancel)).StatusCode);
    }

    [Fact]
    public async Task Our_own_page_may_open_the_socket()
    {
        using var client = app.CreateClient();
        using var negotiate = new HttpRequestMessage(HttpMethod.Post, "_blazor/negotiate?negotiateVersion=1");
        negotiate.Headers.Add("Origin", "http://localhost");

        Assert.Equal(HttpStatusCode.OK, (await client.SendAsync(negotiate, Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_name_that_is_not_this_computer_is_not_answered()
    {
        using var client = app.CreateClient();
        client.DefaultRequestHeaders.Host = "rebound.example";

        Assert.Equal(HttpStatusCode.BadRequest, (await client.GetAsync(GigRigUrls.Home, Cancel)).StatusCode);
    }
}
