using GigRig.Browser.Tests.Harness;
using GigRig.Web;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>What hands have done is kept: in two tabs, without a connection, through a power cut.</summary>
public sealed class WorkbenchKeepingTests(Chromium chromium) : BenchTest(chromium)
{
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

        await Page.OpenAsync(GigRigUrls.Rig(Rig));
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
        // For a while nobody notices that a connection is gone; here, for good.
        await Page.EvaluateAsync("() => { document.getElementById('components-reconnect-modal').showModal = () => {}; }");
        await Page.EvaluateAsync("() => Blazor._internal.forceCloseConnection()");
        await Echo.FocusAsync();
        await Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Page.WaitForFunctionAsync("() => Object.keys(sessionStorage).some(key => key.startsWith('gigrig-unheard:'))");
        await Expect(Said).ToBeEmptyAsync();

        await Page.Context.SetOfflineAsync(false);
        await Page.ReloadAsync();

        await Expect(Said).ToHaveTextAsync("echo moved to 110, 0 mm.");
        await Expect(Echo).ToHaveAttributeAsync("transform", "translate(110 20)");
    }
}
