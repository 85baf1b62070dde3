using System.Diagnostics;
using System.Text.RegularExpressions;
using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.TestKit.Instances;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>A search that takes its time: the pieces of a published instance, turned as they like.</summary>
public sealed class StopTests(Chromium chromium) : BrowserTest(chromium)
{
    protected override Func<IServiceProvider, Task>? Fill => async library =>
    {
        var hard = PublishedKnapsacks.Oriented.Single(instance => instance.Name == "okp1").ToProblem();
        var gear = library.GetRequiredService<GearStore>();
        await gear.AddAsync(hard.Board, new Ownership());
        foreach (var device in hard.Devices)
            await gear.AddAsync(device with { Turns = [Turn.None, Turn.Quarter] }, new Ownership());
        await library.GetRequiredService<EventTypeStore>().AddAsync(hard.Event);
    };

    [Fact]
    public async Task A_search_stops_at_once_and_claims_nothing_it_has_not_proved()
    {
        await Page.OpenAsync(GigRigUrls.Plan);
        await Page.Button("Propose a rig").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Status)).ToBeVisibleAsync();

        var stopping = Stopwatch.StartNew();
        await Page.Button("Stop").ClickAsync();

        // Which of the two depends on how far it came; what it must not say is that anything was proved.
        var verdict = Page.GetByRole(AriaRole.Heading, new() { NameRegex = new Regex("^(Best so far|Undecided)$") });
        await Expect(verdict).ToBeVisibleAsync();
        // Left alone it would go on to its time limit of ten seconds.
        Assert.InRange(stopping.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(5));
        await Expect(Page.Button("Propose again")).ToBeEnabledAsync();
        Assert.Empty(ConsoleErrors());
    }
}
