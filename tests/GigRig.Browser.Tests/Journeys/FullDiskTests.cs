using System.Text;
using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>A full disk is said to be one, nothing on the page is lost by it, and everything goes on once there is room.</summary>
public sealed class FullDiskTests(Chromium chromium) : BrowserTest(chromium)
{
    private const string Reason = "Nothing was saved: the disk did not take it";

    public override async ValueTask InitializeAsync()
    {
        Assert.SkipUnless(FilledDisk.IsKnownHere, "Needs a limit on a running process that only Linux has.");
        FilledDisk.Prepare();
        await base.InitializeAsync();
    }

    [Fact]
    public async Task What_was_typed_stays_on_the_page_and_is_saved_once_there_is_room()
    {
        var name = Page.GetByLabel("Name", new() { Exact = true });
        await Page.OpenAsync(GigRigUrls.NewGear("board"));
        await name.FillAsync("Barn board");
        await Page.GetByLabel("Width", new() { Exact = true }).FillAsync("460");
        await Page.GetByLabel("Depth", new() { Exact = true }).FillAsync("140");
        await Page.GetByLabel("Mass", new() { Exact = true }).FillAsync("1500");
        FilledDisk.Fill(App.ProcessId);

        await Page.Button("Save").ClickAsync();

        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync(Reason);
        await Expect(name).ToHaveValueAsync("Barn board");

        FilledDisk.GiveRoom(App.ProcessId);
        await Page.Button("Save").ClickAsync();
        await Expect(Page.Link("Barn board").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_plan_and_an_import_wait_on_their_pages_and_nothing_came_in_by_half()
    {
        await Page.LookAroundAsync();
        await Page.ProposeAsync("Jam night");
        var other = await Page.Context.NewPageAsync();
        await other.OpenAsync(GigRigUrls.Library);
        await other.Locator("input[type=file]").Last.SetInputFilesAsync(new FilePayload { Name = "more.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(More(300)) });
        await Expect(other.Button("Import")).ToBeVisibleAsync();
        FilledDisk.Fill(App.ProcessId);

        await Page.Button("Save rig").ClickAsync();
        await Expect(Page.GetByText(Reason)).ToBeVisibleAsync();
        await other.Button("Import").ClickAsync();
        await Expect(other.GetByText(Reason)).ToBeVisibleAsync();

        FilledDisk.GiveRoom(App.ProcessId);
        await Page.Button("Save rig").ClickAsync();
        await Expect(Page.Heading("Hook-up")).ToBeVisibleAsync();
        await other.Button("Import").ClickAsync();
        await Expect(other.GetByText("Imported more.json: 300 added, 0 changed, 0 left as they were.")).ToBeVisibleAsync();
    }

    private static string More(int leads) =>
        $$"""{"format":"gig-library/1","leads":[{{string.Join(',', Enumerable.Range(0, leads).Select(_ => $$"""{"id":"{{Guid.NewGuid()}}","name":"Patch","kind":"patch","length":150}"""))}}]}""";
}
