using System.Collections.Concurrent;
using Microsoft.Playwright;
using Xunit;
using Xunit.Sdk;

namespace GigRig.Browser.Tests.Harness;

/// <summary>A musician at a browser, and the app that was started for this test alone. What was seen is kept when the test fails.</summary>
public abstract class BrowserTest(Chromium chromium) : IAsyncLifetime
{
    /// <summary>Two cores under load; a page that needs longer than this hangs.</summary>
    internal const float PatienceMs = 30_000;

    private readonly ConcurrentQueue<string> console = new();
    private readonly List<IBrowserContext> contexts = [];

    private protected RunningApp App { get; private set; } = null!;

    protected IPage Page { get; private set; } = null!;

    /// <summary>What is in the library before the app starts; null for a first start.</summary>
    protected virtual Func<IServiceProvider, Task>? Fill => null;

    public virtual async ValueTask InitializeAsync()
    {
        App = await RunningApp.StartAsync(Fill);
        Page = await NewVisitorAsync();
    }

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        if (TestContext.Current.TestState?.Result == TestResult.Failed)
            await KeepEvidenceAsync();
        foreach (var context in contexts)
            await context.DisposeAsync();
        await App.DisposeAsync();
    }

    /// <summary>A page of somebody without cookies.</summary>
    protected async Task<IPage> NewVisitorAsync(int width = 1280, int height = 900, ColorScheme colours = ColorScheme.Light, bool script = true)
    {
        var context = await chromium.Browser.NewContextAsync(new()
        {
            BaseURL = App.Address,
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = colours,
            JavaScriptEnabled = script,
            ServiceWorkers = ServiceWorkerPolicy.Block,
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(PatienceMs);
        contexts.Add(context);
        var page = await context.NewPageAsync();
        page.Console += (_, message) => console.Enqueue($"{message.Type}: {message.Text}");
        page.PageError += (_, error) => console.Enqueue($"error: {error}");
        return page;
    }

    /// <summary>Script errors and content the page's own policy turned away, of all pages of this test.</summary>
    protected IEnumerable<string> ConsoleErrors() => console.Where(line => line.StartsWith("error", StringComparison.Ordinal));

    private async Task KeepEvidenceAsync()
    {
        var name = string.Concat(TestContext.Current.Test!.TestDisplayName.Select(c => char.IsLetterOrDigit(c) ? c : '_'));
        var folder = Directory.CreateDirectory(Path.GetFullPath(Path.Combine("../../../../../TestResults/evidence", name[..Math.Min(name.Length, 120)]), AppContext.BaseDirectory));
        await File.WriteAllLinesAsync(Path.Combine(folder.FullName, "console.txt"), console);
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "app.txt"), App.Log);
        var number = 0;
        foreach (var page in contexts.SelectMany(context => context.Pages))
        {
            number++;
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder.FullName, $"page-{number}.png"), FullPage = true });
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, $"page-{number}.html"), $"<!-- {page.Url} -->{Environment.NewLine}{await page.ContentAsync()}");
        }

        TestContext.Current.SendDiagnosticMessage($"Kept in {folder.FullName}");
    }
}
