using GigRig.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Hands on the board: by mouse, by finger, by keys.</summary>
public sealed class WorkbenchTests(Chromium chromium) : BenchTest(chromium)
{
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
}
