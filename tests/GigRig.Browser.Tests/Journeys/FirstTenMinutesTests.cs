using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Somebody with eight boxes, a board and a supply, from an empty library to a link in a friend's hands; once by mouse and once by keyboard alone.</summary>
public sealed class FirstTenMinutesTests(Chromium chromium) : BrowserTest(chromium)
{
    /// <summary>Name, shape, what it does, draw, as one would type them.</summary>
    internal static readonly string[][] Boxes =
    [
        ["Bench tuner", "small", "tuner", "30"],
        ["Soft squash", "compact", "compressor", ""],
        ["Meadow", "compact", "overdrive", "9"],
        ["Lift", "mini", "clean boost", "8"],
        ["Slow tide", "compact", "chorus", ""],
        ["Tower", "120 x 95 mm", "echo", ""],
        ["Stone barn", "2 3/4 x 4 3/4 in", "reverb", "120"],
        ["Long glide", "rocker", "volume", "none"],
    ];

    [Fact]
    public async Task Eight_boxes_become_a_shared_rig()
    {
        await Page.OpenAsync(GigRigUrls.Home);
        await Page.Button("Start empty").ClickAsync();
        await Expect(Page.Heading("Gear")).ToBeVisibleAsync();
        await Expect(Page.Heading("No gear yet")).ToBeVisibleAsync();

        await ChooseAsync("Board");
        await AddAsync("Plank", ("Size", "60 x 30 cm"));
        await ChooseAsync("Supply");
        await AddAsync("Brick", ("Outlets", "8 outlets 9 V 100 mA + 2 x 9 V 500 mA"));
        await ChooseAsync("Device");
        foreach (var box in Boxes)
            await AddAsync(box[0], ("Shape", box[1]), ("Does", box[2]), ("Draw", box[3]));
        await ChooseAsync("Amp");
        await AddAsync("Red combo", ("Does", "clean, drive"));

        await Page.OpenAsync(GigRigUrls.Home);
        await Page.Link("Plan Wedding function").ClickAsync();
        await Page.Button("Propose a rig").ClickAsync();
        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();
        await Expect(Page.Locator(".gr-guesses summary")).ToContainTextAsync("guesses about your gear");

        await Page.Button("Save rig").ClickAsync();
        await Expect(Page.Heading("Wedding function")).ToBeVisibleAsync();
        await Page.Button("Make a link").ClickAsync();
        var link = await Page.GetByLabel("Link", new() { Exact = true }).InputValueAsync();
        var friend = await NewVisitorAsync(width: 390, script: false);
        Assert.Equal(200, (await friend.GotoAsync(link))!.Status);
        await Expect(friend.Locator("body")).ToContainTextAsync("Meadow");
        Assert.DoesNotContain("guess", await friend.ContentAsync(), StringComparison.OrdinalIgnoreCase);
        Assert.Empty(ConsoleErrors());
    }

    [Fact]
    public async Task The_same_goes_without_a_mouse()
    {
        await Page.OpenAsync(GigRigUrls.Home);
        await PressAsync("Start empty");
        await Expect(Page.Heading("Quick add")).ToBeVisibleAsync();

        await TabToRadiosAsync();
        await TypeLineAsync(1, "Plank", "60 x 30 cm");
        await TypeLineAsync(1, "Brick", "8 outlets 9 V 100 mA + 2 x 9 V 500 mA");
        await TypeLineAsync(1, "Red combo", "clean, drive");
        // Past off-board items, leads and instruments round to the first kind; from the second box on the cursor is in the name already.
        await TypeLineAsync(4, Boxes[0]);
        foreach (var box in Boxes.Skip(1))
            await TypeLineAsync(0, box);

        await Page.OpenAsync(GigRigUrls.Home);
        await PressAsync("Plan Wedding function");
        await Expect(Page.Heading("Plan a rig")).ToBeVisibleAsync();
        await PressAsync("Propose a rig");
        await Expect(Page.Heading("Proved best")).ToBeVisibleAsync();
        await PressAsync("Save rig");
        await Expect(Page.Heading("Wedding function")).ToBeVisibleAsync();
        // Not a main action of its page: behind the drawing and the sheets.
        await PressAsync("Make a link", mostTabs: 100);
        var link = await Page.GetByLabel("Link", new() { Exact = true }).InputValueAsync();

        var friend = await NewVisitorAsync(script: false);
        Assert.Equal(200, (await friend.GotoAsync(link))!.Status);
        await Expect(friend.Locator("body")).ToContainTextAsync("Stone barn");
    }

    [Fact]
    public async Task Fast_typing_over_a_slow_page_goes_into_the_right_lines()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        var slow = await Page.Context.NewCDPSessionAsync(Page);
        await slow.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = 20 });
        var line = Page.Locator(".gr-quickrow");
        await line.GetByLabel("Name", new() { Exact = true }).FocusAsync();
        foreach (var box in Boxes.Take(3))
        {
            await TypeCellsAsync(box);
            await Page.Keyboard.PressAsync("Enter");
            // Not waiting for the answer.
            await TypeCellsAsync("Next after " + box[0], "mini");
            await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync($"Added {box[0]}");
            await Expect(line.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("Next after " + box[0]);
            await Expect(line.GetByLabel("Shape", new() { Exact = true })).ToHaveValueAsync("mini");
            await Expect(line.GetByLabel("Shape", new() { Exact = true })).ToBeFocusedAsync();
            await Page.Keyboard.PressAsync("Enter");
            await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync($"Added Next after {box[0]}");
            await Expect(line.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("");
            await Expect(line.GetByLabel("Name", new() { Exact = true })).ToBeFocusedAsync();
        }
    }

    [Fact]
    public async Task A_line_with_faults_keeps_what_was_typed_and_leads_to_the_first_of_them()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        var line = Page.Locator(".gr-quickrow");
        await line.GetByLabel("Name", new() { Exact = true }).FocusAsync();
        await TypeCellsAsync("Stone barn", "compact", "reverb", "a lot");
        await Page.Keyboard.PressAsync("Shift+Tab");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(line.GetByLabel("Draw", new() { Exact = true })).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("Control+A");
        await Page.Keyboard.TypeAsync("120");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync("Added Stone barn");
    }

    private async Task AddAsync(string name, params (string Label, string Text)[] entries)
    {
        var line = Page.Locator(".gr-quickrow");
        await line.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        foreach (var (label, text) in entries)
            await line.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync($"Added {name}");
        await Expect(line.GetByLabel("Name", new() { Exact = true })).ToBeFocusedAsync();
    }

    private Task ChooseAsync(string kind) => Page.GetByRole(AriaRole.Radio, new() { Name = kind, Exact = true }).CheckAsync();

    private async Task PressAsync(string name, int mostTabs = 20)
    {
        Assert.True(await Page.TabToAsync(name, mostTabs), $"\"{name}\" is not reached by Tab.");
        await Page.Keyboard.PressAsync("Enter");
    }

    private async Task TabToRadiosAsync()
    {
        for (var presses = 0; presses < 20; presses++)
        {
            await Page.Keyboard.PressAsync("Tab");
            if (await Page.EvaluateAsync<bool>("document.activeElement?.name === 'quick-kind'"))
                return;
        }

        Assert.Fail("The kinds are not reached by Tab.");
    }

    /// <param name="kindsOn">How many kinds further; the cursor is on the kinds or, after a line was added, in the name behind them.</param>
    private async Task TypeLineAsync(int kindsOn, params string[] cells)
    {
        if (kindsOn > 0 && !await Page.EvaluateAsync<bool>("document.activeElement?.name === 'quick-kind'"))
            await Page.Keyboard.PressAsync("Shift+Tab");
        for (var i = 0; i < kindsOn; i++)
        {
            await Page.Keyboard.PressAsync("ArrowRight");
            // The entries of a kind are on the page once the app has answered.
            await Page.Locator($".gr-quickrow[data-kind='{await Page.EvaluateAsync<string>("document.activeElement.value")}']").WaitForAsync();
        }

        if (kindsOn > 0)
            await Page.Keyboard.PressAsync("Tab");
        await TypeCellsAsync(cells);
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync($"Added {cells[0]}");
        var name = Page.Locator(".gr-quickrow").GetByLabel("Name", new() { Exact = true });
        await Expect(name).ToHaveValueAsync("");
        await Expect(name).ToBeFocusedAsync();
    }

    private async Task TypeCellsAsync(params string[] cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            if (i > 0)
                await Page.Keyboard.PressAsync("Tab");
            await Page.Keyboard.TypeAsync(cells[i]);
        }
    }
}
