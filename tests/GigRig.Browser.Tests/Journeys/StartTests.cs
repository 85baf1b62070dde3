using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Xunit;

namespace GigRig.Browser.Tests.Journeys;

public sealed class StartTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task The_first_page_answers_and_comes_alive()
    {
        await Page.OpenAsync(GigRigUrls.Home);

        Assert.Contains("Fit for the Gig", await Page.TitleAsync());
        Assert.Empty(ConsoleErrors());
    }
}
