using System.Net;
using System.Reflection;
using GigRig.Web.Features.Gear;
using Microsoft.AspNetCore.Components;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

/// <summary>The real program answers on every address, as a stranger without cookies or script sees it.</summary>
public sealed class SmokeTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Every page that needs no id, found by its route; and the forms for new things.</summary>
    public static TheoryData<string> Pages { get; } = new(
        typeof(Program).Assembly.GetTypes()
            .SelectMany(type => type.GetCustomAttributes<RouteAttribute>())
            .Select(route => route.Template)
            .Where(template => !template.Contains('{'))
            .Concat(GearKind.All.Select(kind => GigRigUrls.NewGear(kind.Word)))
            .Append(GigRigUrls.NewEventType)
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_answers_with_a_title_and_a_heading(string url)
    {
        using var client = app.CreateClient();
        var response = await client.GetAsync(url, Cancel);
        var html = await response.Content.ReadAsStringAsync(Cancel);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains("Fit for the Gig</title>", html);
        Assert.Contains("<h1", html);
        Assert.DoesNotContain("A fault of ours", url == GigRigUrls.Error ? "" : html);
    }

    [Theory]
    [InlineData("css/tokens.css")]
    [InlineData("css/app.css")]
    [InlineData("js/display.js")]
    [InlineData("icons/app.svg")]
    [InlineData("_content/MudBlazor/MudBlazor.min.css")]
    [InlineData("_framework/blazor.web.js")]
    [InlineData(GigRigUrls.HealthLive)]
    [InlineData(GigRigUrls.HealthReady)]
    [InlineData(GigRigUrls.LibraryFile)]
    public async Task Everything_else_a_browser_fetches_answers_too(string url)
    {
        using var client = app.CreateClient();

        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(url, Cancel)).StatusCode);
    }

    [Fact]
    public async Task An_address_that_leads_nowhere_says_so_with_404()
    {
        using var client = app.CreateClient();
        var response = await client.GetAsync("no-such-page", Cancel);

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Contains("Nothing here", await response.Content.ReadAsStringAsync(Cancel));
    }

    [Theory]
    [InlineData(GigRigUrls.NotFound)]
    [InlineData(GigRigUrls.Error)]
    public async Task The_pages_for_when_things_go_wrong_need_no_script(string url)
    {
        using var client = app.CreateClient();

        Assert.DoesNotContain("<script", await client.GetStringAsync(url, Cancel));
    }

    [Fact]
    public async Task The_library_file_is_a_download_that_nobody_keeps()
    {
        using var client = app.CreateClient();
        var response = await client.GetAsync(GigRigUrls.LibraryFile, Cancel);

        Assert.Matches(@"^gig-library-\d{4}-\d\d-\d\d\.json$", response.Content.Headers.ContentDisposition?.FileName?.Trim('"'));
        Assert.True(response.Headers.CacheControl?.NoStore);
    }

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public async Task The_first_response_has_the_chosen_colours(string choice)
    {
        using var client = app.CreateClient();
        client.DefaultRequestHeaders.Add("Cookie", $"gigrig-theme={choice}");

        Assert.Contains($"data-theme=\"{choice}\"", await client.GetStringAsync(GigRigUrls.Home, Cancel));
    }

    [Fact]
    public async Task A_colour_that_is_none_is_as_if_nothing_was_chosen()
    {
        using var client = app.CreateClient();
        client.DefaultRequestHeaders.Add("Cookie", "gigrig-theme=7");

        Assert.Contains("data-theme=\"system\"", await client.GetStringAsync(GigRigUrls.Home, Cancel));
    }
}
