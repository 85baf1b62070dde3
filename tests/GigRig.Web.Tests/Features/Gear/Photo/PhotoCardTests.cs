using Bunit;
using GigRig.Data;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Photo;

public sealed class PhotoCardTests : PageTest
{
    [Fact]
    public async Task A_thing_not_saved_yet_has_no_room_for_a_photo()
    {
        var page = RenderItem(GigRigUrls.New);

        await page.WaitForElementAsync("[data-field=name]");
        Assert.DoesNotContain("Choose a photo", page.Markup);
    }

    [Fact]
    public async Task A_chosen_photo_is_shown_and_stored_at_once()
    {
        var echo = await Library.Gear.AddAsync(A.Device("echo") with { Name = "Tape echo" }, new(), Cancel);
        var page = RenderItem($"{echo.Id}");

        Upload(page, Pictures.Plain(60, 40), "echo.jpg");

        var picture = page.WaitForElement("img");
        Assert.Equal("Photo of Tape echo", picture.GetAttribute("alt"));
        Assert.Equal(GigRigUrls.GearPhoto(echo.Id, (await Library.Photos.SavedUtcAsync(echo.Id, Cancel))!.Value), picture.GetAttribute("src"));
        Assert.Equal("image/jpeg", (await Library.Photos.FindAsync(echo.Id, Cancel))!.ContentType);
        Assert.Equal(["Photo saved."], Messages);
    }

    [Fact]
    public async Task A_file_that_will_not_do_is_refused_and_the_photo_there_was_stays()
    {
        var (id, photo) = await WithPhotoAsync();
        var page = RenderItem($"{id}");
        page.WaitForElement("img");

        Upload(page, [1, 2, 3], "notes.txt");

        page.WaitForAssertion(() => Assert.Contains("notes.txt is no picture that can be read here. Choose a JPEG, PNG or WebP file. Nothing was changed.", page.Find(".mud-alert").TextContent));
        Assert.NotEmpty(page.FindAll("img"));
        Assert.Equal(photo, (await Library.Photos.FindAsync(id, Cancel))!.Content.ToArray());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Removing_and_replacing_can_be_undone(bool replace)
    {
        var (id, photo) = await WithPhotoAsync();
        var page = RenderItem($"{id}");
        page.WaitForElement("img");

        if (replace)
            Upload(page, Pictures.Plain(60, 40), "other.jpg");
        else
            page.FindAll("button").Single(button => button.TextContent.Trim() == "Remove photo").Click();

        var said = replace ? "Replaced the photo." : "Removed the photo.";
        page.WaitForAssertion(() => Assert.Equal([said], Messages));
        Assert.Equal(replace, page.FindAll("img").Count == 1);
        Assert.NotEqual(photo, (await Library.Photos.FindAsync(id, Cancel))?.Content.ToArray());

        var snackbars = Render<MudSnackbarProvider>();
        snackbars.FindAll("button").Single(button => button.TextContent.Trim() == "Undo").Click();

        page.WaitForElement("img");
        await page.WaitForAssertionAsync(async () => Assert.Equal(photo, (await Library.Photos.FindAsync(id, Cancel))?.Content.ToArray()));
    }

    private async Task<(Guid Id, byte[] Photo)> WithPhotoAsync()
    {
        var echo = await Library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        byte[] photo = [0xFF, 0xD8, 0xFF];
        await Library.Photos.PutAsync(echo.Id, new GearPhoto(photo, "image/jpeg"), Cancel);
        return (echo.Id, photo);
    }

    private IRenderedComponent<GearItemPage> RenderItem(string id) =>
        Render<GearItemPage>(p => p.Add(page => page.Kind, "device").Add(page => page.Id, id));

    private static void Upload(IRenderedComponent<GearItemPage> page, byte[] file, string name)
    {
        page.WaitForElement("input[type=file]");
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(file, name));
    }
}
