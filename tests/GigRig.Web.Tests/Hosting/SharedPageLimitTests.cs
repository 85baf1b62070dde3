using System.Net;
using GigRig.Web.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

public sealed class SharedPageLimitTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task One_who_keeps_trying_links_is_told_to_wait_and_the_app_itself_is_not()
    {
        using var client = app.CreateClient();
        var answers = new List<HttpResponseMessage>();
        // Twice as many and one more: even where a minute ends in between, one of the two gets too many.
        for (var tries = 0; tries <= 2 * SharedPageLimit.ByOneVisitor; tries++)
            answers.Add(await client.GetAsync(GigRigUrls.Shared($"guess-{tries}"), Cancel));

        var refused = answers.First(answer => answer.StatusCode == HttpStatusCode.TooManyRequests);
        Assert.Equal(TimeSpan.FromMinutes(1), refused.Headers.RetryAfter!.Delta);
        Assert.All(answers.Take(SharedPageLimit.ByOneVisitor), answer => Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode));
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(GigRigUrls.HealthLive, Cancel)).StatusCode);
    }
}
