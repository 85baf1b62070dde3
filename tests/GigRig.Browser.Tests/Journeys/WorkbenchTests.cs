using System.Text;
using System.Text.RegularExpressions;
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
        var (sent, received) = (new List<string>(), new List<int>());
        Page.WebSocket += (_, socket) =>
        {
            socket.FrameSent += (_, frame) => sent.Add(Encoding.Latin1.GetString(frame.Binary ?? []));
            socket.FrameReceived += (_, frame) => received.Add(frame.Binary?.Length ?? 0);
        };
        await OpenAsync(Page);
        await DragAsync(Echo, -37, 3, held: Forget, done: () =>
        {
            // Sixty steps, and of each question only the answer comes back, never a drawing; the beat of the connection itself may fall between.
            Assert.DoesNotContain(sent, frame => frame.Contains("PutDown"));
            Assert.True(sent.Count(frame => frame.Contains("FaultsAt")) < 60, $"{sent.Count} messages for sixty steps.");
            Assert.All(received, length => Assert.InRange(length, 0, 1000));
            Forget();
            return Task.CompletedTask;
        });

        await Expect(Said).ToHaveTextAsync("echo moved to 60, 0 mm.");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(60 20)");
        Assert.Single(sent, frame => frame.Contains("PutDown"));

        void Forget()
        {
            sent.Clear();
            received.Clear();
        }
    }

    [Fact]
    public async Task While_it_is_held_it_says_what_would_be_wrong_there()
    {
        await OpenAsync(Page);
        var hint = Page.Locator(".bench-readout-faults");

        await Page.Keyboard.DownAsync("Alt");
        await DragAsync(Echo, -50, 0, done: async () =>
        {
            await Expect(hint).ToContainTextAsync("tuner");
            await Expect(hint).ToContainTextAsync("10 mm");
            await Expect(Echo).ToHaveClassAsync(new Regex("bench-warned"));
        }, key: "Escape");

        await Expect(hint).ToHaveTextAsync("");
        await Expect(Echo).Not.ToHaveClassAsync(new Regex("bench-warned"));
        await Expect(Page.Button("Undo")).ToBeDisabledAsync();
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
    public async Task A_box_that_was_added_has_the_keys_and_undoing_works_wherever_they_are()
    {
        await OpenAsync(Page);

        await Page.Button("Add hall").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Thing(Page, "hall")).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("ArrowRight");
        await Expect(Said).ToContainTextAsync("hall moved to");

        await Page.Locator("h1").FocusAsync();
        await Page.Keyboard.PressAsync("Control+z");
        await Expect(Said).ToContainTextAsync("Undone: hall moved");
        await Page.Keyboard.PressAsync("Control+z");
        await Expect(Thing(Page, "hall")).ToHaveCountAsync(0);
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
