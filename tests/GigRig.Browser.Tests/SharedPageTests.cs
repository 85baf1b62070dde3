using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests;

/// <summary>What somebody gets who only has a link: no cookies, no script, nothing to press.</summary>
public sealed class SharedPageTests(Chromium chromium) : BrowserTest(chromium)
{
    private string token = "";
    private string frozen = "";
    private string expired = "";
    private string revoked = "";
    private Guid rigId;

    protected override Func<IServiceProvider, Task>? Fill => async library =>
    {
        var problem = A.Draft(A.Board(460, 140))
            .With(A.Device("Lantern").Sized(70, 122).WithAudioJacks().Doing("drive").Drawing(20), A.Device("Well").Sized(70, 122).WithAudioJacks().Doing("delay").Drawing(60))
            .FedBy(A.Outlet("1"), A.Outlet("2"))
            .Through(A.Amp())
            .Needing("drive", "delay")
            .Problem();
        var rig = A.Rig().Placing("Well", 60, 0).Placing("Lantern", 200, 0).Feeding("Well", "1").Feeding("Lantern", "2").Chained("Lantern Well");
        var saved = await library.GetRequiredService<RigStore>().AddAsync("Barn dance", "the note is nobody's business", problem, rig);
        var links = library.GetRequiredService<ShareLinkStore>();
        rigId = saved.Id;
        token = await links.CreateAsync(saved.Id, new("band"));
        frozen = await links.CreateAsync(saved.Id, new("engineer", Content: new(Places: true, Unit: LengthUnit.Inches), Frozen: saved.Version));
        revoked = await links.CreateAsync(saved.Id, new("leaked"));
        await links.RevokeAsync((await links.ForRigAsync(saved.Id)).Single(link => link.Name == "leaked").Id);
        expired = await links.CreateAsync(saved.Id, new("yesterday", DateTime.UtcNow.AddMilliseconds(200)));
        await Task.Delay(250);
        var other = problem.Draft with { Event = problem.Event with { Name = "Second night" } };
        await library.GetRequiredService<RigStore>().SaveAsync(saved with { Item = saved.Item with { Problem = other.Problem() } });
    };

    [Fact]
    public async Task It_draws_the_rig_without_script_circuit_or_cookie()
    {
        var asked = new List<string>();
        Page.Request += (_, request) => asked.Add(request.Url);

        var answer = await Page.GotoAsync(GigRigUrls.Shared(token));

        Assert.Equal(200, answer!.Status);
        await Expect(Page.Heading("Barn dance")).ToBeVisibleAsync();
        await Expect(Page.GetByRole(AriaRole.Img).First).ToBeVisibleAsync();
        await Expect(Page.Locator("main")).ToContainTextAsync("Lantern");
        Assert.Equal(0, await Page.Locator("script").CountAsync());
        Assert.DoesNotContain(asked, url => url.Contains("_blazor", StringComparison.Ordinal) || url.EndsWith(".js", StringComparison.Ordinal));
        Assert.Empty(await Page.Context.CookiesAsync());
        Assert.Empty(ConsoleErrors());
    }

    [Fact]
    public async Task It_offers_nothing_that_edits_and_no_way_into_the_app()
    {
        await Page.GotoAsync(GigRigUrls.Shared(token));

        Assert.Equal(0, await Page.Locator("button, input, select, textarea, form, [contenteditable], a[href]").CountAsync());
        Assert.DoesNotContain("nobody's business", await Page.ContentAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task It_reads_well_without_script_on_a_desk_and_on_a_phone(int width, ColorScheme colours)
    {
        var visitor = await NewVisitorAsync(width, 844, colours);
        await visitor.GotoAsync(GigRigUrls.Shared(token));

        Assert.Empty(await Axe.FaultsAsync(visitor, "shared rig"));
        Assert.Equal(0, await visitor.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
    }

    [Fact]
    public async Task It_prints_on_one_sheet()
    {
        await Page.GotoAsync(GigRigUrls.Shared(token));

        var pdf = System.Text.Encoding.Latin1.GetString(await Page.PdfAsync(new() { Format = "A4" }));

        Assert.Equal(1, pdf.Split("/Type /Page\n").Length - 1);
    }

    [Fact]
    public async Task It_works_for_somebody_whose_browser_runs_no_script()
    {
        var visitor = await NewVisitorAsync(390, 844, script: false);
        await visitor.GotoAsync(GigRigUrls.Shared(token));

        await Expect(visitor.Heading("Barn dance")).ToBeVisibleAsync();
        await Expect(visitor.GetByRole(AriaRole.Img).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_frozen_link_stays_with_its_version_and_tells_places_in_the_owners_unit()
    {
        await Page.GotoAsync(GigRigUrls.Shared(token));
        await Expect(Page.Locator(".shared-head")).ToContainTextAsync("Second night");
        Assert.Equal(0, await Page.Heading("Where everything stands").CountAsync());

        await Page.GotoAsync(GigRigUrls.Shared(frozen));
        await Expect(Page.Locator(".shared-head")).Not.ToContainTextAsync("Second night");
        await Expect(Page.Locator("main")).ToContainTextAsync("7.87 in");
    }

    [Fact]
    public async Task An_expired_link_and_a_revoked_one_show_the_same_nothing()
    {
        var pages = new List<string>();
        foreach (var gone in new[] { expired, revoked })
        {
            var answer = await Page.GotoAsync(GigRigUrls.Shared(gone));
            Assert.Equal(404, answer!.Status);
            pages.Add(await answer.TextAsync());
        }

        Assert.Equal(pages[0], pages[1]);
        Assert.Contains("No rig here", pages[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_picture_in_its_head_can_be_had_from_outside_the_page()
    {
        await Page.GotoAsync(GigRigUrls.Shared(token));
        var address = await Page.Locator("meta[property='og:image']").GetAttributeAsync("content");

        var picture = await Page.Context.APIRequest.GetAsync(address!);

        Assert.Equal((200, "image/png"), (picture.Status, picture.Headers["content-type"]));
    }

    [Fact]
    public async Task The_copy_in_one_file_opens_from_a_disk_and_asks_the_network_for_nothing()
    {
        await Page.OpenAsync(GigRigUrls.Rig(rigId));
        await Page.GetByRole(AriaRole.Checkbox, new() { Name = "Where everything stands, in numbers" }).CheckAsync();
        var download = await Page.RunAndWaitForDownloadAsync(() => Page.Button("Download as one file").ClickAsync());
        Assert.Equal("Barn-dance.html", download.SuggestedFilename);
        var folder = Directory.CreateTempSubdirectory("gigrig-copy-");
        var file = Path.Combine(folder.FullName, download.SuggestedFilename);
        await download.SaveAsAsync(file);
        var reader = await NewVisitorAsync(390, 844);
        var asked = new List<string>();
        reader.Request += (_, request) => asked.Add(request.Url);

        await reader.GotoAsync(new Uri(file).AbsoluteUri);

        await Expect(reader.Heading("Barn dance")).ToBeVisibleAsync();
        await Expect(reader.Heading("Where everything stands")).ToBeVisibleAsync();
        await Expect(reader.GetByRole(AriaRole.Img).First).ToBeVisibleAsync();
        Assert.StartsWith("file:", Assert.Single(asked), StringComparison.Ordinal);
        Assert.Equal("nowrap", await reader.Locator(".sheet-whole").First.EvaluateAsync<string>("cell => getComputedStyle(cell).whiteSpace"));
        Assert.Empty(ConsoleErrors());
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_wrong_token_shows_nothing()
    {
        var answer = await Page.GotoAsync(GigRigUrls.Shared(token[..^1] + (token[^1] == 'A' ? 'B' : 'A')));

        Assert.Equal(404, answer!.Status);
        Assert.DoesNotContain("Barn dance", await Page.ContentAsync(), StringComparison.Ordinal);
    }
}
