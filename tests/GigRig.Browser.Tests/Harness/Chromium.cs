using Microsoft.Playwright;
using Xunit;

[assembly: AssemblyFixture(typeof(GigRig.Browser.Tests.Harness.Chromium))]

namespace GigRig.Browser.Tests.Harness;

/// <summary>One browser for all tests. <c>GIGRIG_CHROMIUM</c> names another one than Debian's.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;

    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(BrowserTest.PatienceMs);
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("GIGRIG_CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
            await Browser.DisposeAsync();
        playwright?.Dispose();
    }
}
