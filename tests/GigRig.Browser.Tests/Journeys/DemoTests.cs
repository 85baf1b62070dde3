using GigRig.Browser.Tests.Harness;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

public sealed class DemoTests(Chromium chromium) : BrowserTest(chromium)
{
    [Theory]
    [InlineData("Jam night")]
    [InlineData("Van tour")]
    [InlineData("Wedding function")]
    public async Task Each_ready_event_type_gets_a_proved_rig_drawn_to_scale(string eventType)
    {
        await Page.LookAroundAsync();

        await Page.ProposeAsync(eventType);

        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();
        Assert.Empty(ConsoleErrors());
    }
}
