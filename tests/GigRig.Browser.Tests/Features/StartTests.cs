using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Xunit;

namespace GigRig.Browser.Tests.Features;

public sealed class StartTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task The_first_page_answers_and_comes_alive()
    {
        await OpenAsync(GigRigUrls.Home);

        Assert.Contains("Fit for the Gig", await Page.TitleAsync());
        Assert.Empty(ConsoleErrors());
    }
}
