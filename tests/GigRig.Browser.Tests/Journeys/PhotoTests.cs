using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using SkiaSharp;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>A picture of a thing: chosen, still there tomorrow, taken away, and back.</summary>
public sealed class PhotoTests(Chromium chromium) : BrowserTest(chromium)
{
    private Guid id;

    protected override Func<IServiceProvider, Task>? Fill => async library =>
        id = (await library.GetRequiredService<GearStore>().AddAsync(A.Device("Lantern"), new())).Id;

    [Fact]
    public async Task A_photo_is_chosen_seen_after_a_reload_removed_and_had_back()
    {
        var photo = Page.GetByRole(AriaRole.Img, new() { Name = "Photo of Lantern" });
        await Page.OpenAsync(GigRigUrls.GearItem("device", id));

        await (await Page.RunAndWaitForFileChooserAsync(() => Page.Button("Choose a photo").ClickAsync()))
            .SetFilesAsync(new FilePayload { Name = "lantern.png", MimeType = "image/png", Buffer = Picture(1600, 1200) });
        await SeenAsync(photo);

        await Page.OpenAsync(GigRigUrls.GearItem("device", id));
        await SeenAsync(photo);
        Assert.Empty(await Axe.FaultsAsync(Page, "a thing with a photo"));

        await Page.Button("Remove photo").ClickAsync();
        await Expect(photo).ToHaveCountAsync(0);
        await Page.Button("Undo").ClickAsync();
        await SeenAsync(photo);
    }

    /// <summary>There, and decoded by the browser to the size it was kept at.</summary>
    private static async Task SeenAsync(ILocator photo)
    {
        await Expect(photo).ToBeVisibleAsync();
        await Expect(photo).ToHaveJSPropertyAsync("naturalWidth", 1024);
        await Expect(photo).ToHaveJSPropertyAsync("naturalHeight", 768);
    }

    private static byte[] Picture(int width, int height)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height));
        surface.Canvas.Clear(SKColors.Teal);
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, quality: 100);
        return png.ToArray();
    }
}
