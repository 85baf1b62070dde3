using Bunit;
using GigRig.TestKit.Building;
using GigRig.Web.Features.ImportExport;
using GigRig.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components.Forms;
using Xunit;

namespace GigRig.Web.Tests.Features.ImportExport;

public sealed class LibraryPageTests : PageTest
{
    [Fact]
    public void The_library_can_be_downloaded() =>
        Assert.Equal(GigRigUrls.LibraryFile, Render<LibraryPage>().Find("a[target=_top]").GetAttribute("href"));

    [Fact]
    public async Task A_chosen_file_shows_what_it_would_do_and_comes_in_when_told()
    {
        await Library.WithAsync(A.Device("echo") with { Name = "Tape echo" });
        var text = await Library.File.ExportAsync(Cancel);
        var echo = Assert.Single(await Library.Gear.DevicesAsync(Cancel));
        await Library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);
        var page = Render<LibraryPage>();

        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text, "mine.json"));
        page.WaitForAssertion(() => Assert.Contains("mine.json would add 1, change 0 and leave 0 as they are", page.Markup));
        Assert.Empty(await Library.Gear.DevicesAsync(Cancel));

        page.FindAll("button").Single(button => button.TextContent.Trim() == "Import").Click();
        page.WaitForAssertion(() => Assert.Contains("Imported mine.json", page.Markup));
        Assert.Single(await Library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public void A_file_of_another_kind_is_refused_in_words()
    {
        var page = Render<LibraryPage>();
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("not JSON", "holiday.json"));

        page.WaitForAssertion(() => Assert.Contains("holiday.json can't be imported", page.Markup));
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.Trim() == "Import");
    }
}
