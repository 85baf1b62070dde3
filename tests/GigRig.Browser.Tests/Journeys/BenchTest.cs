using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Geometry;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>A rig with a tuner and an echo on its board and a hall on its shelf, on the workbench of a musician.</summary>
public abstract class BenchTest(Chromium chromium) : BrowserTest(chromium)
{
    protected Guid Rig { get; private set; }

    protected override Func<IServiceProvider, Task> Fill => async library =>
    {
        var problem = A.Draft(A.Board(460, 140))
            .With(A.Device("tuner").Sized(50, 100).Doing("tuner"), A.Device("echo").Sized(70, 120).Doing("delay").Turning(Turn.None, Turn.Quarter), A.Device("hall").Sized(60, 110).Doing("reverb"))
            .Problem();
        Rig = (await library.GetRequiredService<RigStore>().AddAsync("Friday", "", problem, A.Rig().Placing("tuner", 10, 0).Placing("echo", 100, 0))).Id;
    };

    protected ILocator Echo => Thing(Page, "echo");

    protected ILocator Said => Page.Locator(".bench-said");

    protected static ILocator Thing(IPage page, string name) => page.Locator($"[data-thing={name}]");

    protected static async Task TypeAsync(IPage page, string fromLeft)
    {
        await page.GetByLabel("From left, echo").FillAsync(fromLeft);
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".bench-said")).ToContainTextAsync($"echo moved to {fromLeft}, 0 mm");
        await page.WaitForFunctionAsync("place => Object.entries(localStorage).some(([key, text]) => key.includes('board:') && text.includes(place))", $": {fromLeft},");
    }

    protected async Task OpenAsync(IPage page)
    {
        await page.OpenAsync(GigRigUrls.RigBoard(Rig));
        await page.WaitForSelectorAsync(".bench-scene[data-ready]");
    }

    /// <summary>By millimetres of the board, in sixty steps.</summary>
    /// <param name="held">Called once it is held.</param>
    /// <param name="done">Called before it is let go.</param>
    protected async Task DragAsync(ILocator thing, double right, double down, Action? held = null, Func<Task>? done = null, string? key = null)
    {
        await thing.ScrollIntoViewIfNeededAsync();
        var box = (await thing.BoundingBoxAsync())!;
        var scale = await thing.EvaluateAsync<float>("thing => thing.ownerSVGElement.getScreenCTM().a");
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Expect(thing).ToHaveAttributeAsync("aria-current", "true");
        held?.Invoke();
        await Page.Mouse.MoveAsync(x + (float)(right * scale), y + (float)(down * scale), new() { Steps = 60 });
        if (done is not null)
            await done();
        if (key is not null)
            await Page.Keyboard.PressAsync(key);
        await Page.Mouse.UpAsync();
    }
}
