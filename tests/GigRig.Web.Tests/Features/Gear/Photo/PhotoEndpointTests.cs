using System.Net;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Photo;

public sealed class PhotoEndpointTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_photo_is_served_for_its_owners_browser_alone_to_keep()
    {
        using var client = app.CreateClient();
        var photos = app.Services.GetRequiredService<GearPhotoStore>();
        var echo = await app.Services.GetRequiredService<GearStore>().AddAsync(A.Device("echo"), new(), Cancel);
        await photos.PutAsync(echo.Id, new(new byte[] { 0xFF, 0xD8, 0xFF }, "image/jpeg"), Cancel);

        var response = await client.GetAsync(GigRigUrls.GearPhoto(echo.Id, (await photos.SavedUtcAsync(echo.Id, Cancel))!.Value), Cancel);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal([0xFF, 0xD8, 0xFF], await response.Content.ReadAsByteArrayAsync(Cancel));
        Assert.Equal("image/jpeg", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.Private);
        Assert.Equal(["nosniff"], response.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["same-origin"], response.Headers.GetValues("Cross-Origin-Resource-Policy"));
    }

    [Fact]
    public async Task Where_there_is_no_photo_there_is_nothing_to_keep()
    {
        using var client = app.CreateClient();

        var response = await client.GetAsync(GigRigUrls.GearPhoto(Guid.NewGuid(), DateTime.UnixEpoch), Cancel);

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.NotEqual(true, response.Headers.CacheControl?.Private);
    }
}
