using System.Net;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

public sealed class RigCopyEndpointTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_is_a_file_that_asks_for_nothing()
    {
        using var answer = await app.CreateClient().GetAsync(GigRigUrls.RigCopy(await SaveAsync("Friday: the quay/pier"), notes: false, values: false, places: true), Cancel);
        var file = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Equal("Friday-the-quay-pier.html", answer.Content.Headers.ContentDisposition!.FileNameStar);
        Assert.Contains("--gr-ink", file);
        Assert.Contains("Where everything stands", file);
        Assert.All(["<link", "<script", "src=", "url(", "@import", "og:image", "<base", "bring tape"], part => Assert.DoesNotContain(part, file));
    }

    [Fact]
    public async Task It_tells_the_note_where_that_was_ticked() =>
        Assert.Contains("bring tape", await app.CreateClient().GetStringAsync(GigRigUrls.RigCopy(await SaveAsync("Friday"), notes: true, values: false, places: false), Cancel));

    [Fact]
    public async Task A_rig_that_is_not_there_gives_no_file() =>
        Assert.Equal(HttpStatusCode.NotFound, (await app.CreateClient().GetAsync(GigRigUrls.RigCopy(Guid.NewGuid(), false, false, false), Cancel)).StatusCode);

    private async Task<Guid> SaveAsync(string name) =>
        (await app.Services.GetRequiredService<RigStore>().AddAsync(name, "bring tape", A.Draft().With(A.Device("echo")).Problem(), A.Rig().Placing("echo", 0, 0), Cancel)).Id;
}
