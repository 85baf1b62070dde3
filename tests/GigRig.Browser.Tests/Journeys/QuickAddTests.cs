using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Every line that is typed goes in once, in order and with nothing of another in it, however fast the fingers and however slow the page.</summary>
public sealed class QuickAddTests(Chromium chromium) : BrowserTest(chromium)
{
    /// <summary>Name, shape, what it does, draw.</summary>
    private static readonly string[][] Boxes =
    [
        .. FirstTenMinutesTests.Boxes,
        ["Ring of tin", "compact", "", ""],
        ["Last word", "compact", "boost", "5"],
    ];

    private static readonly string[][] Kinds =
    [
        ["Board", "Plank", "60 x 30 cm"],
        ["Supply", "Brick", "8 outlets 9 V 100 mA + 2 x 9 V 500 mA"],
        ["Amp", "Red combo", "clean, drive"],
        ["Lead", "Patch", "6 x 15 cm", "angled"],
        ["Device", "Meadow", "compact", "overdrive", "9"],
    ];

    private ILocator Open => Page.Locator(".gr-quickrow").Last;

    [Theory]
    [InlineData(1, true)]
    [InlineData(1, false)]
    [InlineData(20, false)]
    public async Task Ten_lines_without_a_pause_all_go_in(int slower, bool alive)
    {
        await OpenAsync(alive);
        var keys = await Page.Context.NewCDPSessionAsync(Page);
        await keys.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = slower });
        await Name(Open).FocusAsync();
        await ScanAsync(keys, Boxes);

        await ExpectAddedLastAsync("Last word");
        Assert.Equal(Boxes.Select(box => box[0]), await NamesInOrderAsync());
        await ExpectEmptyAsync();
        Assert.Empty(ConsoleErrors());
    }

    [Fact]
    public async Task A_line_with_a_fault_stays_by_itself_while_the_next_ones_go_in()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        var keys = await Page.Context.NewCDPSessionAsync(Page);
        // So that the next line is begun before the fault can be seen.
        await keys.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = 20 });
        await Name(Open).FocusAsync();
        await ScanAsync(keys, [Boxes[0], ["Hungry", "compact", "echo", "a lot"], Boxes[1], ["Odd", "huge", "echo", "5"], Boxes[2]]);

        await ExpectAddedLastAsync("Meadow");
        Assert.Equal(["Bench tuner", "Soft squash", "Meadow"], await NamesInOrderAsync());
        await ExpectEmptyAsync();
        await Expect(Page.GetByText("2 lines are not added yet.")).ToBeVisibleAsync();
        var hungry = Page.GetByRole(AriaRole.Form, new() { Name = "Not added yet: Hungry" });
        Assert.Equal(["Hungry", "compact", "echo", "a lot"], await TextsAsync(hungry));
        await Expect(hungry).ToContainTextAsync("\"a lot\" is not a current");
        await Expect(Page.GetByRole(AriaRole.Form, new() { Name = "Not added yet: Odd" })).ToContainTextAsync("\"huge\" is neither a size nor a usual one");

        // Kept like anything that is typed.
        await Page.ReloadAsync();
        await Expect(Page.GetByText("What you had typed here and not saved is back.")).ToBeVisibleAsync();
        Assert.Equal(["Hungry", "compact", "echo", "a lot"], await TextsAsync(hungry));
        await Expect(hungry).ToContainTextAsync("\"a lot\" is not a current");
        await hungry.GetByLabel("Draw", new() { Exact = true }).FillAsync("90");
        await Page.Keyboard.PressAsync("Enter");
        await ExpectAddedLastAsync("Hungry");
        await Expect(Name(Open)).ToBeFocusedAsync();
        await Page.Button("Leave out Odd").ClickAsync();
        await Expect(Page.Locator(".gr-quickrow")).ToHaveCountAsync(1);
        await Page.Button("Undo").ClickAsync();
        await Expect(Name(Page.Locator(".gr-quickrow").First)).ToHaveValueAsync("Odd");
        await Page.Button("Leave out Odd").ClickAsync();
        await Expect(Page.Locator(".gr-quickrow")).ToHaveCountAsync(1);
        await ExpectEmptyAsync();
        Assert.Equal(["Bench tuner", "Soft squash", "Meadow", "Hungry"], await NamesInOrderAsync());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    public async Task The_next_kind_is_picked_as_soon_as_the_last_line_is_said_to_be_added(int slower)
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        await (await Page.Context.NewCDPSessionAsync(Page)).SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = slower });
        foreach (var line in Kinds)
        {
            await Page.GetByRole(AriaRole.Radio, new() { Name = line[0], Exact = true }).CheckAsync();
            await Name(Open).ClickAsync();
            foreach (var cell in line.Skip(1))
            {
                await Page.Keyboard.TypeAsync(cell);
                await Page.Keyboard.PressAsync("Tab");
            }

            await Page.Keyboard.PressAsync("Enter");
            await ExpectAddedLastAsync(line[1]);
        }

        Assert.Equal(Kinds.Select(line => line[1]), await NamesInOrderAsync());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Kinds_are_picked_by_keys_without_a_pause(bool alive)
    {
        await OpenAsync(alive);
        var keys = await Page.Context.NewCDPSessionAsync(Page);
        await Name(Open).FocusAsync();
        // Board and supply are one and two further than device; amp follows them.
        await Task.WhenAll([.. Kinds.Take(3).SelectMany(line => (string[])["\b", "→", "\t", .. Cells(line[1..])]).Select(key => PressAsync(keys, key))]);

        await ExpectAddedLastAsync("Red combo");
        Assert.Equal(["Plank", "Brick", "Red combo"], await NamesInOrderAsync());
    }

    [Fact]
    public async Task Pasted_rows_are_lines()
    {
        await Page.OpenAsync(GigRigUrls.Gear);
        await Name(Open).FocusAsync();
        await Page.EvaluateAsync(
            """
            text => {
              const data = new DataTransfer();
              data.setData("text/plain", text);
              document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
            }
            """,
            string.Join("\r\n", Boxes.Select(box => string.Join('\t', box))) + "\r\n\r\n");

        await ExpectAddedLastAsync("Last word");
        Assert.Equal(Boxes.Select(box => box[0]), await NamesInOrderAsync());
        await ExpectEmptyAsync();
    }

    private static ILocator Name(ILocator line) => line.GetByLabel("Name", new() { Exact = true });

    private static Task ScanAsync(ICDPSession keys, IEnumerable<string[]> lines) => Task.WhenAll([.. lines.SelectMany(Cells).Select(key => PressAsync(keys, key))]);

    /// <summary>The keys of one line.</summary>
    private static IEnumerable<string> Cells(string[] cells) => string.Join('\t', cells).Append('\r').Select(key => key.ToString());

    /// <summary>Sent in order, without waiting for the page: faster than any hand, as fast as a scanner. A backspace stands for Tab with Shift.</summary>
    private static Task PressAsync(ICDPSession keys, string key)
    {
        var (name, code, text) = key switch
        {
            "\t" or "\b" => ("Tab", 9, ""),
            "\r" => ("Enter", 13, "\r"),
            "→" => ("ArrowRight", 39, ""),
            _ => (key, 0, key),
        };
        var press = new Dictionary<string, object> { ["type"] = "keyDown", ["key"] = name, ["windowsVirtualKeyCode"] = code, ["modifiers"] = key == "\b" ? 8 : 0 };
        if (text.Length > 0)
            press["text"] = text;
        else
            press["type"] = "rawKeyDown";
        return Task.WhenAll(
            keys.SendAsync("Input.dispatchKeyEvent", press),
            keys.SendAsync("Input.dispatchKeyEvent", new() { ["type"] = "keyUp", ["key"] = name, ["windowsVirtualKeyCode"] = code }));
    }

    private static async Task<IReadOnlyList<string>> TextsAsync(ILocator line) => await line.EvaluateAsync<string[]>("line => [...line.querySelectorAll('input[data-field]')].map(entry => entry.value)");

    /// <param name="alive">Whether to wait until the page answers: it can be seen long before.</param>
    private Task OpenAsync(bool alive) => alive ? Page.OpenAsync(GigRigUrls.Gear) : Page.GotoAsync(GigRigUrls.Gear, new() { WaitUntil = WaitUntilState.Commit });

    private async Task ExpectAddedLastAsync(string name) =>
        await Expect(Page.Locator(".gr-quickdone")).ToContainTextAsync($"Added {name}", new() { Timeout = 2 * PatienceMs });

    private async Task ExpectEmptyAsync()
    {
        await Expect(Name(Open)).ToHaveValueAsync("");
        Assert.All(await TextsAsync(Open), text => Assert.Equal("", text));
    }

    /// <summary>All that is owned, by when it was added: a stored thing's id begins with its time.</summary>
    private Task<List<string>> NamesInOrderAsync() => App.LookIntoAsync(async library =>
    {
        var all = await library.GetRequiredService<GearStore>().AllAsync();
        return all.Devices.Select(thing => (thing.Id, thing.Item.Thing.Name))
            .Concat(all.Boards.Select(thing => (thing.Id, thing.Item.Thing.Name)))
            .Concat(all.Supplies.Select(thing => (thing.Id, thing.Item.Thing.Name)))
            .Concat(all.Amps.Select(thing => (thing.Id, thing.Item.Thing.Name)))
            .Concat(all.Leads.Select(thing => (thing.Id, thing.Item.Thing.Name)))
            .OrderBy(thing => thing.Id.ToString(), StringComparer.Ordinal)
            .Select(thing => thing.Name)
            .ToList();
    });
}
