using GigRig.Browser.Tests.Harness;
using GigRig.Data;
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
        token = await library.GetRequiredService<ShareLinkStore>().CreateAsync(saved.Id, "band");
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
    public async Task It_prints_on_few_sheets()
    {
        await Page.GotoAsync(GigRigUrls.Shared(token));

        var pdf = System.Text.Encoding.Latin1.GetString(await Page.PdfAsync(new() { Format = "A4" }));

        Assert.InRange(pdf.Split("/Type /Page\n").Length - 1, 1, 2);
    }

    [Fact]
    public async Task A_wrong_token_shows_nothing()
    {
        var answer = await Page.GotoAsync(GigRigUrls.Shared(token[..^1] + (token[^1] == 'A' ? 'B' : 'A')));

        Assert.Equal(404, answer!.Status);
        Assert.DoesNotContain("Barn dance", await Page.ContentAsync(), StringComparison.Ordinal);
    }
}
