using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Hands on the board: by mouse, by touch, by keys, in two tabs, and through a power cut.</summary>
public sealed class WorkbenchTests(Chromium chromium) : BrowserTest(chromium)
{
    private Guid id;

    protected override Func<IServiceProvider, Task> Fill => async library =>
    {
        var problem = A.Draft(A.Board(460, 140))
            .With(A.Device("tuner").Sized(50, 100).Doing("tuner"), A.Device("echo").Sized(70, 120).Doing("delay").Turning(Turn.None, Turn.Quarter), A.Device("hall").Sized(60, 110).Doing("reverb"))
            .Problem();
        id = (await library.GetRequiredService<RigStore>().AddAsync("Friday", "", problem, A.Rig().Placing("tuner", 10, 0).Placing("echo", 100, 0))).Id;
    };

    private ILocator Echo => Thing(Page, "echo");

    private ILocator Said => Page.Locator(".bench-said");

    [Fact]
    public async Task A_box_is_dragged_snaps_to_its_neighbour_and_is_heard_of_once()
    {
        var frames = 0;
        Page.WebSocket += (_, socket) =>
        {
            socket.FrameSent += Count;
            socket.FrameReceived += Count;
        };
        await OpenAsync(Page);
        var (before, after) = (0, 0);
        await DragAsync(Echo, -37, 3, held: () => before = frames, done: () => after = frames);

        await Expect(Said).ToHaveTextAsync("echo moved to 60, 0 mm.");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(60 20)");
        // Sixty steps, and no word of them; the beat of the connection itself may fall between.
        Assert.InRange(after - before, 0, 2);

        void Count(object? sender, IWebSocketFrame frame) => frames++;
    }

    [Fact]
    public async Task With_alt_held_it_goes_exactly_where_the_pointer_puts_it()
    {
        await OpenAsync(Page);

        await Page.Keyboard.DownAsync("Alt");
        await DragAsync(Echo, -37, -4);
        await Page.Keyboard.UpAsync("Alt");

        await Expect(Said).ToHaveTextAsync("echo moved to 63, 4 mm.");
    }

    [Fact]
    public async Task Escape_puts_it_back()
    {
        await OpenAsync(Page);

        await DragAsync(Echo, 80, 0, key: "Escape");

        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(100 20)");
        await Expect(Page.Button("Undo")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task A_locked_box_is_not_dragged_and_says_so()
    {
        await OpenAsync(Page);
        await Page.Button("Lock echo").ClickAsync();
        await Expect(Echo).ToHaveAttributeAsync("data-locked", "true");

        await DragAsync(Echo, 80, 0);

        await Expect(Said).ToHaveTextAsync("echo is locked. Unlock it first.");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(100 20)");
    }

    [Fact]
    public async Task The_whole_board_is_worked_by_keys()
    {
        await OpenAsync(Page);
        await Thing(Page, "tuner").FocusAsync();
        await Page.Keyboard.PressAsync("PageDown");
        await Expect(Echo).ToBeFocusedAsync();

        await Page.Keyboard.PressAsync("ArrowLeft");
        await Page.Keyboard.PressAsync("ArrowLeft");
        await Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Page.Keyboard.PressAsync("ArrowUp");
        await Expect(Said).ToHaveTextAsync("echo moved to 108, 1 mm.");
        await Page.Keyboard.PressAsync("r");
        await Expect(Said).ToHaveTextAsync("echo turned to 90°.");
        await Page.Keyboard.PressAsync("l");
        await Expect(Said).ToHaveTextAsync("echo locked where it stands.");
        await Page.Keyboard.PressAsync("l");
        await Page.Keyboard.PressAsync("Delete");
        await Expect(Said).ToHaveTextAsync("echo removed.");
        await Expect(Thing(Page, "tuner")).ToBeFocusedAsync();

        for (var i = 0; i < 5; i++)
            await Page.Keyboard.PressAsync("Control+z");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(100 20)");
        await Expect(Said).ToHaveTextAsync("Undone: echo moved to 108, 1 mm.");
        await Page.Keyboard.PressAsync("Control+Shift+z");
        await Expect(Said).ToHaveTextAsync("Done again: echo moved to 108, 1 mm.");
    }

    [Fact]
    public async Task A_box_on_another_is_marked_and_saved_as_it_is()
    {
        await OpenAsync(Page);
        await Page.GetByLabel("From left, echo").FillAsync("57");
        await Page.Keyboard.PressAsync("Tab");

        await Expect(Said).ToContainTextAsync("overlap by 3 mm");
        await Expect(Page.Locator(".bench-clashes rect")).ToHaveCountAsync(1);
        await Page.Button("Save as it is").ClickAsync();
        await Expect(Page.GetByText("Saved as it is, with 1 broken rule.")).ToBeVisibleAsync();

        await Page.OpenAsync(GigRigUrls.Rig(id));
        await Expect(Page.Locator(".rig-violations")).ToContainTextAsync("overlap by 3 mm");
    }

    [Fact]
    public async Task A_second_tab_never_overwrites_the_first()
    {
        await OpenAsync(Page);
        var second = await Page.Context.NewPageAsync();
        await OpenAsync(second);

        await Page.GetByLabel("From left, echo").FillAsync("200");
        await Page.Keyboard.PressAsync("Tab");
        await Page.Button("Save").ClickAsync();
        await Expect(Page.GetByText("Saved.", new() { Exact = true })).ToBeVisibleAsync();
        await second.GetByLabel("From left, echo").FillAsync("300");
        await second.Keyboard.PressAsync("Tab");
        await second.Button("Save").ClickAsync();

        await Expect(second.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Nothing was overwritten");
        await second.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Keep mine as a copy" }).ClickAsync();
        await Expect(second.Heading("Friday (copy): the board")).ToBeVisibleAsync();
        await Expect(second.GetByLabel("From left, echo")).ToHaveValueAsync("300 mm");
        await Page.ReloadAsync();
        await Expect(Page.GetByLabel("From left, echo")).ToHaveValueAsync("200 mm");
    }

    [Fact]
    public async Task What_was_moved_and_not_saved_survives_a_power_cut_of_the_app()
    {
        await OpenAsync(Page);
        await DragAsync(Echo, 90, 0);
        await Expect(Said).ToContainTextAsync("echo moved to 190, 0 mm.");
        await Page.WaitForFunctionAsync("() => Object.keys(localStorage).some(key => key.includes('board:'))");

        await App.RestartAsync();
        await Page.Button("Load again").ClickAsync();

        await Expect(Page.GetByText("What you had moved here and not saved is back.")).ToBeVisibleAsync();
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(190 20)");
        await Page.Button("Discard it").ClickAsync();
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(100 20)");
    }

    [Fact]
    public async Task Each_tab_keeps_its_own_draft_and_what_a_closed_one_left_is_taken_over()
    {
        await OpenAsync(Page);
        var second = await Page.Context.NewPageAsync();
        await OpenAsync(second);
        await TypeAsync(Page, "200");
        await TypeAsync(second, "300");

        await Page.ReloadAsync();
        await Expect(Page.GetByLabel("From left, echo")).ToHaveValueAsync("200 mm");
        await second.ReloadAsync();
        await Expect(second.GetByLabel("From left, echo")).ToHaveValueAsync("300 mm");

        await second.CloseAsync();
        var third = await Page.Context.NewPageAsync();
        await OpenAsync(third);
        await Expect(third.GetByLabel("From left, echo")).ToHaveValueAsync("300 mm");
    }

    [Fact]
    public async Task What_was_put_down_while_the_connection_was_gone_is_told_when_the_page_is_back()
    {
        await OpenAsync(Page);
        await Page.Context.SetOfflineAsync(true);
        await Page.EvaluateAsync("() => Blazor._internal.forceCloseConnection()");
        await Page.EvaluateAsync("() => document.getElementById('components-reconnect-modal').close()");
        await Echo.FocusAsync();
        await Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Page.WaitForFunctionAsync("() => Object.keys(sessionStorage).some(key => key.startsWith('gigrig-unheard:'))");
        await Expect(Said).ToBeEmptyAsync();

        await Page.Context.SetOfflineAsync(false);
        await Page.ReloadAsync();

        await Expect(Said).ToHaveTextAsync("echo moved to 110, 0 mm.");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(110 20)");
    }

    [Fact]
    public async Task The_rest_is_fitted_around_what_is_locked()
    {
        await OpenAsync(Page);
        await TypeAsync(Page, "40");
        await Page.Button("Lock echo").ClickAsync();
        await Page.Button("Fit around locked").ClickAsync();

        await Expect(Said).ToContainTextAsync("Fitted the rest around what is locked.");
        await Expect(Page.GetByLabel("From left, echo")).ToHaveValueAsync("40 mm");
        await Expect(Page.Locator(".bench-clean")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_finger_drags_as_a_mouse_does()
    {
        var phone = await NewVisitorAsync(390, 844);
        await OpenAsync(phone);
        var echo = Thing(phone, "echo");
        await echo.ScrollIntoViewIfNeededAsync();
        await echo.EvaluateAsync(
            """
            thing => {
              const box = thing.getBoundingClientRect(), svg = thing.ownerSVGElement, scale = svg.getScreenCTM().a;
              svg.setPointerCapture = () => {};
              const at = (type, mm) => thing.dispatchEvent(new PointerEvent(type, { bubbles: true, pointerId: 7, pointerType: "touch", isPrimary: true, clientX: box.x + 20 + mm * scale, clientY: box.y + 20 }));
              at("pointerdown", 0); at("pointermove", 40); at("pointermove", 90); at("pointerup", 90);
            }
            """);

        await Expect(phone.Locator(".bench-said")).ToHaveTextAsync("echo moved to 190, 0 mm.");
    }

    private static ILocator Thing(IPage page, string name) => page.Locator($"[data-thing={name}]");

    private static async Task TypeAsync(IPage page, string fromLeft)
    {
        await page.GetByLabel("From left, echo").FillAsync(fromLeft);
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".bench-said")).ToContainTextAsync($"echo moved to {fromLeft}, 0 mm");
        await page.WaitForFunctionAsync("place => Object.entries(localStorage).some(([key, text]) => key.includes('board:') && text.includes(place))", $": {fromLeft},");
    }

    private async Task OpenAsync(IPage page)
    {
        await page.OpenAsync(GigRigUrls.RigBoard(id));
        await page.WaitForSelectorAsync(".bench-scene[data-ready]");
    }

    /// <summary>By millimetres of the board, in sixty steps.</summary>
    /// <param name="held">Called once it is held.</param>
    /// <param name="done">Called before it is let go.</param>
    private async Task DragAsync(ILocator thing, double right, double down, Action? held = null, Action? done = null, string? key = null)
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
        done?.Invoke();
        if (key is not null)
            await Page.Keyboard.PressAsync(key);
        await Page.Mouse.UpAsync();
    }
}
